import type { QuantityKind } from '../numbers/quantity.ts'
import { quoted } from '../numbers/quote.ts'
import type { Requirement } from './design.ts'
import type { Document } from './document.ts'
import { type FigureName, type FigureScope, type FigureUnit, figureNames } from './figure-names.ts'
import { type ProvingBench, readShownBy } from './proving/read-shown-by.ts'
import type { Reading } from './reading.ts'

type TypedRequirement = NonNullable<Document['requirements']>[string]

/** What has to be typed as the bound of a figure in each unit. */
export const kindOfUnit: Readonly<Record<Exclude<FigureUnit, 'yes or no' | 'words'>, QuantityKind>> = {
  rad: 'angle',
  mm: 'length',
  N: 'force',
  N·mm: 'couple',
  'N·mm per pin': 'couple',
  MPa: 'pressure',
  '1': 'number',
}

/** @param scope of what the document names; where it was at fault and taken out, requirements on it are not judged. */
export function readRequirements(bench: ProvingBench, scope: FigureScope): readonly Requirement[] {
  const { reading } = bench
  const known = new Map(figureNames(scope).map((name) => [name.id, name]))
  const requirements = Object.entries(reading.document.requirements ?? {})
  return requirements.map(([id, typed]) => readRequirement(id, typed, { ...bench, known }))
}

interface Catalogue extends ProvingBench {
  readonly known: ReadonlyMap<string, FigureName>
}

/** Sections that give figures their names and units. */
const namingSections = ['drive', 'release', 'pins', 'parts', 'stops', 'toggles', 'loadCases', 'tip']

function readRequirement(id: string, typed: TypedRequirement, { reading, tests, known }: Catalogue): Requirement {
  const place = `requirements.${id}`
  const figure = known.get(typed.figure)
  const isSure = !namingSections.some((section) => reading.hasBrokenIn(section))
  if (!figure && isSure) {
    reading.unknownName(`${place}.figure`, { typed: typed.figure, what: 'a figure of this design', known: [...known.keys()] })
  }
  return {
    id,
    figure: typed.figure,
    bound: readBound(place, typed, { reading, figure: isSure ? figure : undefined }),
    reason: reading.text(`${place}.reason`, typed.reason),
    source: reading.text(`${place}.source`, typed.source),
    ...(typed.shownBy && { shownBy: readShownBy(`${place}.shownBy`, typed.shownBy, { reading, tests }) }),
  }
}

interface BoundReading {
  readonly reading: Reading
  /** Undefined when it has been reported, or when its unit is not known for sure. */
  readonly figure: FigureName | undefined
}

function readBound(place: string, typed: TypedRequirement, { reading, figure }: BoundReading): Requirement['bound'] {
  if ('is' in typed) {
    if (figure && figure.unit !== 'yes or no') reportWrongBound(`${place}.is`, { reading, figure, found: `is: ${typed.is}` })
    return { kind: 'is', value: typed.is }
  }
  const kind = 'atLeast' in typed ? 'atLeast' : 'atMost'
  const text = 'atLeast' in typed ? typed.atLeast : typed.atMost
  const bound = { kind, typed: String(text) } as const
  if (!figure) return { ...bound, value: Number.NaN, unit: '1' }
  if (figure.unit === 'yes or no' || figure.unit === 'words') {
    reportWrongBound(`${place}.${kind}`, { reading, figure, found: `${kind}: ${quoted(String(text))}` })
    return { ...bound, value: Number.NaN, unit: figure.unit }
  }
  return { ...bound, value: reading.quantity(`${place}.${kind}`, text, kindOfUnit[figure.unit]), unit: figure.unit }
}

function reportWrongBound(
  place: string,
  { reading, figure, found }: { reading: Reading; figure: FigureName; found: string },
): void {
  const needed = {
    'yes or no': `is: true or false, because ${figure.id} is yes or no`,
    words: `another figure: ${figure.id} is a word and has no bound`,
  } as const
  const unit = figure.unit
  reading.report({
    code: 'wrong value',
    place,
    found,
    needed: unit === 'yes or no' || unit === 'words' ? needed[unit] : `atLeast or atMost, because ${figure.id} is a number`,
  })
}
