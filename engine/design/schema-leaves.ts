/**
 * The smallest pieces of the document's structure: texts, ids and typed quantities.
 * `error` says what is needed there; the reader puts it behind `needed:`. `describe` is what an editor shows.
 */
import * as z from 'zod'
import { limits } from '../numbers/limits.ts'
import { kindWords, type QuantityKind } from '../numbers/quantity.ts'
import { meant, type PartSection } from './schema-meaning.ts'

// Without this, zod would compile its checks from text, which the page's content policy forbids.
z.config({ jitless: true })

/** What an id looks like; it holds no point, because a point joins part and hole. */
export const idPattern = /^[A-Za-z][A-Za-z0-9_-]{0,39}$/
/** A minus sign in the name of a dimension could not be told from a difference. */
export const dimensionPattern = /^[A-Za-z][A-Za-z0-9_]{0,39}$/
const rowPattern = /^[A-Za-z0-9][A-Za-z0-9 .,()/+_-]{0,119}$/
const partThingPattern = /^[A-Za-z][A-Za-z0-9_-]{0,39}\.[A-Za-z][A-Za-z0-9_-]{0,39}$/

/** What an id has to be, in words. */
export const idNeeded = `an id: a letter, then letters, digits, _ or -, at most ${limits.idLength} characters`
/** What the name of a dimension has to be, in words. */
export const dimensionNeeded = `a name: a letter, then letters, digits or _, at most ${limits.idLength} characters`
const rowNeeded = `a name of letters, digits, blanks and . , ( ) / + _ -, at most ${limits.nameLength} characters`

const pattern = (form: RegExp, needed: string) => z.string({ error: needed }).regex(form, { error: needed })

/** The id of a load case, a requirement and so on. */
export const id = pattern(idPattern, idNeeded)
/** The id of a part that stands elsewhere in the document. */
export const partId = meant(id, { is: 'name', of: 'parts' })
/** The id of a pin that stands elsewhere in the document. */
export const pinId = meant(id, { is: 'name', of: 'pins' })
/** The id of a load case that stands elsewhere in the document. */
export const loadCaseId = meant(id, { is: 'name', of: 'loadCases' })
/** The id of a spring that stands elsewhere in the document. */
export const springId = meant(id, { is: 'name', of: 'springs' })
/** The id of a stop that stands elsewhere in the document. */
export const stopId = meant(id, { is: 'name', of: 'stops' })
const wordsOfId = { part: partId, hole: thingOfPart('holes'), pad: thingOfPart('pads') }
/** The id of something by its word; of a hole or pad, it is one of the part that is named beside it. */
export const idOf = (thing: keyof typeof wordsOfId) => wordsOfId[thing].describe(`Id of a ${thing}.`)

function thingOfPart(of: PartSection) {
  return meant(id, { is: 'thingOfPart', of })
}

/** The key that tells alternatives apart. */
export const kind = <const Word extends string>(word: Word) => z.literal(word).describe(`What it is: ${word}.`)

/** The name of a material or of a friction pair, as in a table. */
export const rowName = pattern(rowPattern, rowNeeded)
/** A material that stands in the table or elsewhere in the document. */
export const materialName = meant(rowName, { is: 'name', of: 'materials' })
/** A coating that stands in the table or elsewhere in the document. */
export const coatingName = meant(rowName, { is: 'name', of: 'coatings' })
/** A rate of wear that stands in the table or elsewhere in the document. */
export const wearRateName = meant(rowName, { is: 'name', of: 'wearRates' })
/** A friction pair that stands elsewhere in the document. */
export const frictionName = meant(rowName, { is: 'name', of: 'friction' })

const text = (most: number, what: string) => {
  const needed = `${what}: text in quotation marks, 1 to ${most} characters`
  return z
    .string({ error: needed })
    .min(1, { error: needed })
    .max(most, { error: needed })
    .describe(`${what[0].toUpperCase()}${what.slice(1)}, in words.`)
}

/** A title or a name, of one line; `what` says whose. */
export const name = (what: string) => text(limits.nameLength, what)
/** A longer text; `what` says of what kind. */
export const note = (what: string) => text(limits.noteLength, what)

/** An object with these keys and no others. */
export const object = <const Shape extends z.core.$ZodLooseShape>(shape: Shape) =>
  z.strictObject(shape, { error: `an object with ${Object.keys(shape).join(', ')}` })

/** A typed quantity with its unit; whether it can be read is found later, by the reader of quantities. */
export const quantity = (kind: Exclude<QuantityKind, 'number'>) =>
  meant(z.string({ error: `${kindWords(kind)}, in quotation marks` }), { is: 'quantity', kind }).describe(
    `Typed with its unit, or an expression over dimensions: ${kindWords(kind)}.`,
  )

/** A plain number, typed as such or as text. */
export const plain = (example: string) =>
  meant(z.union([z.number(), z.string()], { error: `a number such as ${example}, or text such as "12 %"` }), {
    is: 'quantity',
    kind: 'number',
  }).describe(`A number such as ${example}, or text such as "12 %".`)

/** Part and one of its things by their ids, such as `middle.pip`. */
export const partThing = (thing: 'hole' | 'edge' | 'pad') =>
  meant(pattern(partThingPattern, `part and ${thing} by their ids, such as middle.${thing}`), {
    is: 'partThing',
    of: `${thing}s`,
  }).describe(`Part and ${thing} by their ids, with a point between.`)

/** One of a few words; `description` says what for. */
export const choice = <const T extends readonly [string, ...string[]]>(choices: T, description: string) =>
  z.enum(choices, { error: `one of ${choices.join(', ')}` }).describe(description)

/** Things by id. How many there may be is checked by `tooManyThings`. */
export const byId = <T extends z.ZodType>(
  thing: T,
  { what, description }: { readonly what: string; readonly description: string },
) => z.record(id, thing, { error: `an object of ${what}, each under its id` }).describe(`${description} Each under its id.`)

/** A list of ids of things, that may be left out; `what` says which. */
export const listOf = <T extends z.ZodType>(thing: T, what: string) =>
  z
    .array(thing, { error: `a list of ${what}` })
    .max(limits.thingsOfOrder, { error: `at most ${limits.thingsOfOrder} ${what}` })
    .optional()

/** An angle with its unit. */
export const angle = quantity('angle')
/** A length with its unit. */
export const length = quantity('length')
/** A force with its unit. */
export const force = quantity('force')
/** A couple with its unit. */
export const couple = quantity('couple')

const pairNeeded = 'a pair of lengths, such as ["12 mm", "-6 mm"]'
/** A point as a pair of lengths. */
export const pair = z.tuple([length, length], { error: pairNeeded }).describe('x and y in the part’s own frame.')

/** What a place on a part has to be, in words. */
export const partPointNeeded = 'part and hole, part and pad, or part, x and y'

/** A place on a part: one of its holes, one of its pads, or x and y in its own frame. */
export const partPoint = z
  .union(
    [
      object({ part: idOf('part'), hole: idOf('hole') }),
      object({ part: idOf('part'), pad: idOf('pad') }),
      object({ part: idOf('part'), x: length, y: length }),
    ],
    {
      error: partPointNeeded,
    },
  )
  .describe('A place on a part: one of its holes, one of its pads, or x and y in its own frame.')
