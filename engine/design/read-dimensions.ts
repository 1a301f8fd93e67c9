import { functionNames } from '../numbers/functions.ts'
import { type Measured, namesIn } from '../numbers/measure.ts'
import { powersText } from '../numbers/powers.ts'
import { baseValue, insideUnit, insideValue, kindOf, type QuantityKind } from '../numbers/quantity.ts'
import { quoted } from '../numbers/quote.ts'
import { unitNames } from '../numbers/unit.ts'
import type { Dimension } from './design.ts'
import type { Document } from './document.ts'
import { readTolerance } from './read-tolerance.ts'
import type { Reading } from './reading.ts'

type TypedDimension = NonNullable<Document['dimensions']>[string]

const reserved: ReadonlySet<string> = new Set([...unitNames, ...functionNames, 'pi'])

/** Reads the named sizes in the order in which they need one another, and makes them known to later expressions. */
export function readDimensions(reading: Reading): readonly Dimension[] {
  const typed = new Map(Object.entries(reading.document.dimensions ?? {}))
  const values = new Map<string, Dimension>()
  for (const name of inOrderOfNeed(typed, reading)) {
    const dimension = readDimension(name, typed.get(name)!, reading)
    if (dimension) values.set(name, dimension)
  }
  return [...typed.keys()].flatMap((name) => values.get(name) ?? [])
}

function valueText(typed: TypedDimension): string | number {
  return typeof typed === 'object' ? typed.value : typed
}

function readDimension(name: string, typed: TypedDimension, reading: Reading): Dimension | undefined {
  const place = `dimensions.${name}`
  if (reserved.has(name)) {
    reading.report({
      code: 'wrong key',
      place,
      found: quoted(name),
      needed: 'a name that is no unit and no function',
      wayOut: 'Write it out.',
    })
    reading.setName(name, undefined)
    return undefined
  }
  const text = valueText(typed)
  const measured = shifted(reading.measured(typeof typed === 'object' ? `${place}.value` : place, text), reading.shift(place))
  reading.setName(name, measured)
  if (!measured) return undefined
  const kind = kindOf(measured.powers)
  const tolerance = typeof typed === 'object' && typed.tolerance !== undefined ? typed.tolerance : undefined
  const value = kind ? insideValue(measured, kind) : measured.value
  return {
    name,
    value,
    unit: kind ? insideUnit(kind) : powersText(measured.powers),
    typed: String(text),
    ...(tolerance !== undefined && { tolerance: toleranceOf(tolerance, { place, kind, value, reading }) }),
  }
}

/** A dimension as it is in this set. @param by in the inside unit of its kind */
function shifted(measured: Measured | undefined, by: number): Measured | undefined {
  const kind = measured && by !== 0 ? kindOf(measured.powers) : undefined
  return measured && kind ? { ...measured, value: measured.value + baseValue(by, kind) } : measured
}

interface Toleranced {
  readonly place: string
  readonly kind: QuantityKind | undefined
  readonly value: number
  readonly reading: Reading
}

function toleranceOf(typed: Parameters<typeof readTolerance>[0], { place, kind, value, reading }: Toleranced) {
  if (!kind)
    reading.report({
      code: 'wrong unit',
      place,
      found: 'a tolerance on a composed quantity',
      needed: 'a length, angle, force or other plain kind',
    })
  return readTolerance(typed, { place: `${place}.tolerance`, kind: kind ?? 'number', nominal: value, surface: 'any', reading })
}

/** Depth-first; a ring of names is reported once, at its first name, and its members have no value. */
function inOrderOfNeed(typed: ReadonlyMap<string, TypedDimension>, reading: Reading): readonly string[] {
  const ordered: string[] = []
  const state = new Map<string, 'open' | 'done'>()
  const needs = (name: string): readonly string[] => {
    const text = valueText(typed.get(name)!)
    const expression = typeof text === 'string' ? reading.expression(text).value : undefined
    return expression ? namesIn(expression).filter((needed) => typed.has(needed)) : []
  }
  const visit = (name: string, chain: readonly string[]): void => {
    if (state.get(name) === 'open') {
      const ring = [...chain.slice(chain.indexOf(name)), name]
      reading.report({
        code: 'ring',
        place: `dimensions.${name}`,
        found: ring.join(' → '),
        needed: 'sizes that do not need themselves',
        wayOut: 'Give one of them a value of its own.',
      })
      for (const member of ring) reading.setName(member, undefined)
    }
    if (state.has(name)) return
    state.set(name, 'open')
    for (const needed of needs(name)) visit(needed, [...chain, name])
    state.set(name, 'done')
    ordered.push(name)
  }
  for (const name of typed.keys()) visit(name, [])
  return ordered
}
