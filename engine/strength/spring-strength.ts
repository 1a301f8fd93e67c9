/**
 * A spring whose wire is known, over its travel: does it take a set, does it break in its life, has it room, does it stay upright?
 *
 * Only the least and the largest action on the travel count: stresses grow with the action and with nothing else.
 */
import type { Spring } from '../design/design.ts'
import { bodyTurnsUnder, solidLength, springIndex } from '../design/springs/coil.ts'
import { COIL_SEATS, type CompressionWire, type TensionWire, type TorsionWire } from '../design/springs/spring-wire.ts'
import { wireModuli, wireStrength } from '../design/springs/wire-rows.ts'
import { bergstraesser, bucklingDeflection, coilShear, directShear } from './compression-spring.ts'
import type { Swing } from './fatigue.ts'
import { type Limit, leastMargin } from './margin.ts'
import { lifeLimit, strengthMissing, type WireInUse } from './spring-life.ts'
import { type Strength, type StrengthStep, UNPRESSED } from './strength.ts'
import { hookBending, hookShear } from './tension-hook.ts'
import { arbourClearance, torsionStress, turnsToArbour } from './torsion-spring.ts'

/** Actions of a spring on the travel: torque in N·mm or force in N, both ways positive. */
export interface SpringRange {
  readonly least: number
  readonly most: number
  /** Its action changes its sense on the way. */
  readonly reverses: boolean
}

/** By how much the strength against a set must exceed the largest stress: Shigley asks for 1.2 or more, from memory. */
export const SET_FACTOR = 1.2
/** Travel to touching coils over the travel used: at least 15 % are left, so that coils do not clash (Shigley, from memory). */
const CLASH_FACTOR = 1.15

/** Checks of a spring by their names; which there are depends on its kind. */
export type SpringChecks = Readonly<Partial<Record<SpringCheckName, Strength>>>
/** A way in which a spring fails. */
export type SpringCheckName = 'set' | 'fatigue' | 'room' | 'buckling' | 'hook'

/** Checks of each kind of spring, in the order in which they are told. */
export const SPRING_CHECKS: Readonly<Record<Spring['kind'], readonly SpringCheckName[]>> = {
  torsion: ['set', 'fatigue', 'room'],
  compression: ['set', 'fatigue', 'room', 'buckling'],
  tension: ['set', 'fatigue', 'hook'],
}

/** All checks of a spring that states its wire; none of one that does not. @param cycles of its life; absent: without end */
export function springStrength(spring: Spring, range: SpringRange, cycles?: number): SpringChecks {
  if (!spring.wire) return {}
  if (range.reverses) {
    const why = `spring ${spring.id} changes its sense on the travel, for which its coil is not made`
    return Object.fromEntries(SPRING_CHECKS[spring.kind].map((name) => [name, { why }]))
  }
  switch (spring.kind) {
    case 'torsion':
      return torsionChecks({ ...spring.wire, cycles }, range)
    case 'compression':
      return compressionChecks({ ...spring.wire, cycles }, { free_mm: spring.freeLength_mm, rate_N_mm: spring.rate_N_mm, range })
    case 'tension':
      return tensionChecks({ ...spring.wire, cycles }, range)
  }
}

type InUse<W> = W & { readonly cycles?: number | undefined }

function torsionChecks(wire: InUse<TorsionWire>, { least, most }: SpringRange): SpringChecks {
  const share = wire.springs_count
  const stresses: Swing = { least_MPa: torsionStress(wire, least / share), most_MPa: torsionStress(wire, most / share) }
  const coil = { ...wire, modulus_MPa: wireModuli(wire.material, wire.wire_mm).modulus_MPa }
  const under = { moment_Nmm: most / share, arbour_mm: wire.arbour_mm }
  const steps = rangeSteps('N·mm', { least: least / share, most: most / share })
  const room = {
    says: 'binds on what it sits on',
    stress: bodyTurnsUnder(coil, under.moment_Nmm),
    allowable: turnsToArbour(coil, wire.arbour_mm),
    factor: 1,
    unit: '1',
  } as const
  return {
    set: checked([setLimit(wire, stresses.most_MPa, wire.material.bendingYield)], [...steps, ...stressSteps(stresses)]),
    fatigue: checked([lifeLimit(wire, 'coil bent', stresses)], [...steps, ...stressSteps(stresses)]),
    room: checked(
      [room],
      [...steps, { name: 'clearance all round, wound up most', value: arbourClearance(coil, under), unit: 'mm' }],
    ),
  }
}

interface Pressed {
  readonly free_mm: number
  readonly rate_N_mm: number
  readonly range: SpringRange
}

function compressionChecks(wire: InUse<CompressionWire>, { free_mm, rate_N_mm, range }: Pressed): SpringChecks {
  const { least, most } = range
  const index = springIndex(wire)
  const stresses = coilStresses(wire, range)
  const { shear } = wire.material
  // Once its set is pressed out, the peak at the inner side has yielded and only the direct shear counts.
  const steady = wire.setRemoved ? coilShear(wire, most, directShear(index)) : stresses.most_MPa
  const pressed_mm = most / rate_N_mm
  const solid_mm = solidLength(wire.wire_mm, wire)
  const steps = rangeSteps('N', { least, most })
  const lengths: readonly StrengthStep[] = [
    ...steps,
    { name: 'length when pressed most', value: free_mm - pressed_mm, unit: 'mm' },
    { name: 'length with its coils touching', value: solid_mm, unit: 'mm' },
  ]
  const room = {
    says: 'is pressed solid',
    stress: pressed_mm,
    allowable: free_mm - solid_mm,
    factor: CLASH_FACTOR,
    unit: 'mm',
  } as const
  return {
    set: checked(
      [setLimit(wire, steady, wire.setRemoved ? shear.setRemoved : shear.asWound)],
      [...steps, ...stressSteps(stresses)],
    ),
    fatigue: checked([lifeLimit(wire, 'coil twisted', stresses)], [...steps, ...stressSteps(stresses)]),
    room: checked([room], lengths),
    buckling: buckling(wire, { free_mm, pressed_mm, steps: lengths }),
  }
}

function buckling(
  wire: CompressionWire,
  {
    free_mm,
    pressed_mm,
    steps,
  }: { readonly free_mm: number; readonly pressed_mm: number; readonly steps: readonly StrengthStep[] },
): Strength {
  const ends = COIL_SEATS[wire.seats]
  if (ends === undefined) return { why: 'it is guided over its whole length', spared: true }
  const allowable = bucklingDeflection({ ...wire, ...wireModuli(wire.material, wire.wire_mm), ends }, free_mm)
  if (allowable === undefined) return { why: 'it is too short to buckle, however far it is pressed', spared: true }
  return checked([{ says: 'buckles', stress: pressed_mm, allowable, factor: SET_FACTOR, unit: 'mm' }], steps)
}

function tensionChecks(wire: InUse<TensionWire>, range: SpringRange): SpringChecks {
  const { hook, material } = wire
  const stresses = coilStresses(wire, range)
  const steps = rangeSteps('N', range)
  const body = {
    set: checked([setLimit(wire, stresses.most_MPa, material.shear.asWound)], [...steps, ...stressSteps(stresses)]),
    fatigue: checked([lifeLimit(wire, 'coil twisted', stresses)], [...steps, ...stressSteps(stresses)]),
  }
  if (!hook) return { ...body, hook: { why: 'its wire states no hook: loop and bend' } }
  const hooked = { ...wire, ...hook }
  const bent = { least_MPa: hookBending(hooked, range.least), most_MPa: hookBending(hooked, range.most) }
  const twisted = { least_MPa: hookShear(hooked, range.least), most_MPa: hookShear(hooked, range.most) }
  const limits = [
    setLimit(wire, bent.most_MPa, material.hook.bending),
    setLimit(wire, twisted.most_MPa, material.hook.shear),
    lifeLimit(wire, 'hook bent', bent),
    lifeLimit(wire, 'hook twisted', twisted),
  ]
  return { ...body, hook: checked(limits, [...steps, ...stressSteps(bent)]) }
}

function coilStresses(wire: CompressionWire | TensionWire, { least, most }: SpringRange): Swing {
  const correction = bergstraesser(springIndex(wire))
  return { least_MPa: coilShear(wire, least, correction), most_MPa: coilShear(wire, most, correction) }
}

/** Stress that leaves a set. @param share of the tensile strength */
function setLimit(wire: WireInUse, stress: number, share: number): Limit | string {
  const tensile = wireStrength(wire.material, wire.wire_mm)
  return tensile === undefined
    ? strengthMissing(wire)
    : { says: 'takes a set', stress, allowable: share * tensile, material: wire.material, factor: SET_FACTOR }
}

/** The least margin of limits that are all known; one that is not known leaves it open, unless another falls short by itself. */
function checked(limits: readonly (Limit | string)[], steps: readonly StrengthStep[]): Strength {
  const margin = leastMargin(limits.filter((limit) => typeof limit !== 'string'))
  const missing = limits.find((limit) => typeof limit === 'string')
  if (margin && !Number.isFinite(margin.value)) return UNPRESSED
  if (margin && (missing === undefined || margin.value < 0)) return { margin, steps }
  return { why: missing ?? 'nothing is known of it' }
}

function rangeSteps(
  unit: 'N' | 'N·mm',
  { least, most }: { readonly least: number; readonly most: number },
): readonly StrengthStep[] {
  const what = unit === 'N' ? 'force' : 'torque of one spring'
  return [
    { name: `least ${what} on the travel`, value: least, unit },
    { name: `largest ${what} on the travel`, value: most, unit },
  ]
}

function stressSteps({ least_MPa, most_MPa }: Swing): readonly StrengthStep[] {
  return [
    { name: 'least stress at the inner side', value: least_MPa, unit: 'MPa' },
    { name: 'largest stress at the inner side', value: most_MPa, unit: 'MPa' },
  ]
}
