import * as z from 'zod'
import { benchTest, demand, risk, riskScales } from './proving/schema-proving.ts'
import { coating } from './schema-coatings.ts'
import { greasePoint } from './schema-grease.ts'
import { drive, loadCase, release, requirement, stop, toggle, weight } from './schema-joints.ts'
import { byId, dimensionNeeded, dimensionPattern, name, note, partThing, rowName } from './schema-leaves.ts'
import { boughtItem, making, order } from './schema-making.ts'
import { dimension, frictionPair, material, part, pin, wearRate } from './schema-parts.ts'
import { generalTolerance, variation } from './schema-tolerance.ts'
import { factors, givesWay, use } from './schema-use.ts'
import { screw } from './screws/schema-screws.ts'
import { spring } from './springs/schema-springs.ts'

/** Version of the document; a later one gets another name and a reader of its own. */
export const designFormat = 'fingerwright-design/1'

const dimensionName = z.string({ error: dimensionNeeded }).regex(dimensionPattern, { error: dimensionNeeded })

/**
 * Structure of the design document: the one definition behind the reader and the published JSON Schema.
 * It says which keys there are and of what type; whether quantities, references and geometry make sense is found by the readers.
 */
export const documentSchema = z.strictObject(
  {
    $schema: z
      .string({ error: 'text in quotation marks' })
      .optional()
      .describe('Where an editor finds the schema of this document.'),
    format: z.literal(designFormat, { error: `"${designFormat}"` }).describe('Name and version of this format.'),
    title: name('the title'),
    note: note('the note').optional().describe('What a reader of the design should know.'),
    generalTolerance: generalTolerance.optional(),
    variation: variation.optional(),
    dimensions: z
      .record(dimensionName, dimension, { error: 'an object of dimensions, each under its name' })
      .optional()
      .describe('Named sizes for expressions. Each under its name.'),
    materials: z
      .record(rowName, material, { error: 'an object of materials, each under its name' })
      .optional()
      .describe('Materials that the table does not have. Each under its name.'),
    coatings: z
      .record(rowName, coating, { error: 'an object of coatings, each under its name' })
      .optional()
      .describe('Coatings that the table does not have. Each under its name.'),
    friction: z
      .record(rowName, frictionPair, { error: 'an object of friction pairs, each under its name' })
      .describe('Pairs of surfaces with their coefficients of friction.'),
    wearRates: z
      .record(rowName, wearRate, { error: 'an object of rates of wear, each under its name' })
      .optional()
      .describe('Rates of wear that the table does not have. Each under its name.'),
    parts: byId(part, {
      what: 'parts',
      description: 'Rigid bodies. x towards the fingertip with the finger straight, y towards the back of the hand.',
    }),
    pins: byId(pin, { what: 'pins', description: 'Round pins, each through holes of different parts.' }),
    stops: byId(stop, {
      what: 'stops',
      description: 'One-sided contacts: a round end of one part against an edge of another.',
    }).optional(),
    springs: byId(spring, { what: 'springs', description: 'Springs that open the finger, or help to close it.' }).optional(),
    drive,
    release: release.optional(),
    loadCases: byId(loadCase, { what: 'load cases', description: 'Loads that act together.' }).optional(),
    toggles: byId(toggle, {
      what: 'toggles',
      description: 'Chains of three pins whose dead-centre margin is watched.',
    }).optional(),
    weight: weight.optional(),
    screws: byId(screw, {
      what: 'screws',
      description: 'Screws in threads of parts, such as those that hold the mount.',
    }).optional(),
    grease: byId(greasePoint, {
      what: 'grease points',
      description: 'Where the finger is greased when it is put together.',
    }).optional(),
    use: use.optional(),
    givesWay: givesWay.optional(),
    factors: factors.optional(),
    tip: partThing('pad').optional().describe('The pad that is watched as the tip of the finger.'),
    requirements: byId(requirement, {
      what: 'requirements',
      description: 'What the finger has to do, each with its reason.',
    }).optional(),
    orders: byId(order, { what: 'orders', description: 'What is ordered from a shop.' }).optional(),
    bought: byId(boughtItem, { what: 'bought items', description: 'Things that are bought ready.' }).optional(),
    making: making.optional(),
    demands: byId(demand, { what: 'demands', description: 'What is asked of the finger that no figure says.' }).optional(),
    benchTests: byId(benchTest, { what: 'bench tests', description: 'Tests on the bench or by eye.' }).optional(),
    riskScales: riskScales.optional(),
    risks: byId(risk, { what: 'risks', description: 'What may go wrong, what is done about it, what is left.' }).optional(),
  },
  { error: 'an object' },
)

/** The document as typed, with whatever is missing or was taken out because its structure is at fault. */
export type Document = {
  readonly [Key in keyof z.infer<typeof documentSchema>]?: z.infer<typeof documentSchema>[Key] | undefined
}

/** The JSON Schema (draft 2020-12) of the document, with a description of every key, for editors. */
export function designSchema(): object {
  const schema = z.toJSONSchema(documentSchema, { target: 'draft-2020-12', io: 'input' })
  return { ...schema, title: 'A finger for Fingerwright', description: `Design document, format ${designFormat}.` }
}
