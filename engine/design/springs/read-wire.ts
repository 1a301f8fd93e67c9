/** Wire and coil of a spring; what cannot be wound is refused. */
import type { Document } from '../document.ts'
import type { Reading } from '../reading.ts'
import { COIL_ENDS, type CoiledWire, solidLength, springIndex, windableInitial } from './coil.ts'
import type { CompressionWire, TensionWire, TorsionWire } from './spring-wire.ts'
import { type Wire, wires } from './wire-rows.ts'

type TypedSpring = NonNullable<Document['springs']>[string]
type TypedWire<Kind extends TypedSpring['kind']> = NonNullable<(TypedSpring & { readonly kind: Kind })['wire']>

/** Below it the coil cracks on its inner side while it is wound: common practice of the trade without one published source. */
const INDEX_LEAST = 3
/** A spring that is less than one turn is a bent wire, and the formulas of a coil do not hold for it. */
const TURNS_LEAST = 1

const shown = (value: number): string => `${Number(value.toPrecision(4))}`

interface Wanted {
  readonly place: string
  readonly reading: Reading
}

/** Wire and coil of a torsion spring. @param pin_mm diameter of the pin that it sits on, unless an arbour is stated */
export function readTorsionWire(typed: TypedWire<'torsion'>, pin_mm: number, wanted: Wanted): TorsionWire {
  const { place, reading } = wanted
  const common = readCommon(typed, wanted)
  const legs = typed.legs
  const leg = (end: 'on' | 'against') =>
    legs === undefined ? 0 : reading.atLeast(`${place}.legs.${end}`, legs[end], { kind: 'length', least: 0 })
  const arbour_mm = typed.arbour === undefined ? pin_mm : reading.size(`${place}.arbour`, typed.arbour)
  const inside_mm = common.mean_mm - common.wire_mm
  if (inside_mm <= arbour_mm) {
    const found = `a coil of ${shown(inside_mm)} mm inside over ${shown(arbour_mm)} mm`
    reading.report({ code: 'too small', place, found, needed: 'a coil that goes over what it sits on' })
  }
  return {
    ...common,
    bodyTurns: readTurns(typed.turns, { ...wanted, place: `${place}.turns` }),
    legs_mm: leg('on') + leg('against'),
    springs_count: typed.springs === undefined ? 1 : readCount(typed.springs, { ...wanted, place: `${place}.springs` }),
    arbour_mm,
  }
}

/** Wire and coil of a compression spring. */
export function readCompressionWire(typed: TypedWire<'compression'>, free_mm: number, wanted: Wanted): CompressionWire {
  const { place, reading } = wanted
  const { ends } = typed
  const common = readCommon(typed, wanted)
  const coils = readTurns(typed.coils, { ...wanted, place: `${place}.coils` })
  const dead = activeCoils({ coils, ends }) < TURNS_LEAST
  if (dead) {
    const found = `${shown(coils)} coils with ends ${ends}, which leaves ${shown(activeCoils({ coils, ends }))} that give way`
    reading.report({ code: 'too small', place: `${place}.coils`, found, needed: 'at least 1 that gives way' })
  }
  const solid_mm = solidLength(common.wire_mm, { coils, ends })
  if (solid_mm >= free_mm) {
    const found = `${shown(solid_mm)} mm with its coils touching, ${shown(free_mm)} mm free`
    reading.report({ code: 'too large', place, found, needed: 'a free length above that of the touching coils' })
  }
  return { ...common, coils, ends, seats: typed.seats ?? 'between pivots', setRemoved: typed.setRemoved ?? false }
}

/** Wire and coil of a tension spring. @param spring its free length between the hooks, mm, and initial force, N */
export function readTensionWire(
  typed: TypedWire<'tension'>,
  spring: { readonly free_mm: number; readonly initial_N: number },
  wanted: Wanted,
): TensionWire {
  const { place, reading } = wanted
  const { hook } = typed
  const common = readCommon(typed, wanted)
  const bodyTurns = readTurns(typed.turns, { ...wanted, place: `${place}.turns` })
  const body_mm = common.wire_mm * (bodyTurns + 1)
  if (body_mm > spring.free_mm) {
    const found = `a body of ${shown(body_mm)} mm in ${shown(spring.free_mm)} mm between its hooks`
    reading.report({ code: 'too large', place, found, needed: 'a free length above that of the closed body' })
  }
  reportInitial(common, spring.initial_N, wanted)
  const read = (key: 'loop' | 'bend', typedRadius: string) => reading.size(`${place}.hook.${key}`, typedRadius)
  return {
    ...common,
    bodyTurns,
    ...(hook && { hook: { loop_mm: read('loop', hook.loop), bend_mm: read('bend', hook.bend) } }),
  }
}

/** Turns of a compression spring that give way. */
export function activeCoils({ coils, ends }: Pick<CompressionWire, 'coils' | 'ends'>): number {
  return coils - COIL_ENDS[ends].dead
}

function reportInitial(coil: CoiledWire, initial_N: number, { place, reading }: Wanted): void {
  const { most_MPa } = windableInitial(springIndex(coil))
  const stress = (8 * initial_N * coil.mean_mm) / (Math.PI * coil.wire_mm ** 3)
  if (!(stress > most_MPa)) return
  const found = `an initial force of ${shown(initial_N)} N, a shear of ${shown(stress)} MPa in the unloaded coil`
  const needed = `at most the ${shown(most_MPa)} MPa that can be wound in at an index of ${shown(springIndex(coil))}`
  reading.report({ code: 'too large', place: place.replace(/wire$/, 'initial'), found, needed })
}

function readCommon(typed: TypedWire<'torsion' | 'tension' | 'compression'>, wanted: Wanted) {
  const { place, reading } = wanted
  const wire_mm = reading.size(`${place}.diameter`, typed.diameter)
  const mean_mm = readMean(typed, wire_mm, wanted)
  const index = mean_mm / wire_mm
  if (index < INDEX_LEAST) {
    const found = `an index of ${shown(index)}: ${shown(mean_mm)} mm mean diameter of the coil over ${shown(wire_mm)} mm of wire`
    const wayOut = 'Take a thinner wire or a wider coil.'
    reading.report({
      code: 'too small',
      place,
      found,
      needed: `an index of at least ${INDEX_LEAST}, below which it cannot be wound`,
      wayOut,
    })
  }
  return { material: wireNamed(typed.material), wire_mm, mean_mm, peened: typed.peened ?? false }
}

/** The structure lets only names of the table through. */
function wireNamed(name: string): Wire {
  const wire = wires.find((row) => row.name === name)
  if (!wire) throw new Error(`wire ${name} is not in the table`)
  return wire
}

/** One of three diameters, each a wire apart from the next. */
const FROM_MEAN_wires = { mean: 0, outside: -1, inside: 1 } as const

function readMean(typed: TypedWire<'torsion' | 'tension' | 'compression'>, wire_mm: number, { place, reading }: Wanted): number {
  const stated = (['mean', 'outside', 'inside'] as const).filter((key) => typed[key] !== undefined)
  const [key] = stated
  if (stated.length !== 1) {
    const found = stated.length === 0 ? 'no diameter of the coil' : `${stated.join(' and ')} of the coil`
    reading.report({
      code: stated.length === 0 ? 'missing' : 'too many',
      place,
      found,
      needed: 'one of mean, outside and inside',
    })
    return Number.NaN
  }
  return reading.size(`${place}.${key}`, typed[key] ?? '') + FROM_MEAN_wires[key] * wire_mm
}

function readTurns(typed: string | number, { place, reading }: Wanted): number {
  return reading.atLeast(place, typed, { kind: 'number', least: TURNS_LEAST })
}

function readCount(typed: string | number, { place, reading }: Wanted): number {
  const count = reading.atLeast(place, typed, { kind: 'number', least: 1 })
  if (!Number.isNaN(count) && !Number.isInteger(count)) {
    reading.report({ code: 'wrong value', place, found: String(typed), needed: 'a whole number' })
  }
  return count
}
