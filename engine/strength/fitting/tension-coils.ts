import type { Spring } from '../../design/design.ts'
import { helicalRate, springIndex, tensionTurns, windableInitial } from '../../design/springs/coil.ts'
import type { TensionWire } from '../../design/springs/spring-wire.ts'
import { wireModuli } from '../../design/springs/wire-rows.ts'
import { coilForce } from '../compression-spring.ts'
import { springStrength } from '../spring-strength.ts'
import { coilsBetween, HALF, leastOfChecks, leftAround, soldWires } from './candidates.ts'
import { NOWHERE } from './nowhere.ts'
import type { FittingSpring, WantedStraight } from './wanted-spring.ts'

/** Mean radius of the bend into a full loop, in mean radii of the coil: as wide as the loop can be turned up without a kink. */
const BEND_OF_COIL = 0.5

/** Close-wound tension springs with full loops that have the rate and the room, those of one wire and diameter together. */
export function tensionCoils(wanted: WantedStraight): readonly (readonly FittingSpring[])[] {
  const rate = (wanted.most_N - wanted.least_N) / (wanted.atMost_mm - wanted.atLeast_mm)
  return soldWires().map((sold) => {
    const moduli = wireModuli(sold.material, sold.wire_mm)
    const rateOf = (turns: number, mean_mm: number) =>
      helicalRate({ ...sold, ...moduli, mean_mm, activeTurns: tensionTurns(turns, moduli) })
    const meanFor = (turns: number) => Math.cbrt(rateOf(turns, 1) / rate)
    const coils = coilsBetween(sold, { inside_mm: wanted.over_mm, outside_mm: wanted.outside_mm, step: HALF }, meanFor)
    return coils.flatMap(({ turns, mean_mm }) => {
      const hook = { loop_mm: mean_mm / 2, bend_mm: (BEND_OF_COIL * mean_mm) / 2 }
      return judged({ ...sold, mean_mm, bodyTurns: turns, hook }, rateOf(turns, mean_mm), wanted)
    })
  })
}

/** Length between the insides of full loops, mm. */
function freeLengthOf({ wire_mm, mean_mm, bodyTurns }: TensionWire): number {
  return (bodyTurns + 1) * wire_mm + 2 * (mean_mm - wire_mm)
}

function judged(wire: TensionWire, rate_N_mm: number, wanted: WantedStraight): readonly FittingSpring[] {
  const freeLength_mm = freeLengthOf(wire)
  const ready = wanted.atLeast_mm - freeLength_mm
  const initial_N = wanted.least_N - rate_N_mm * ready
  const { least_MPa, most_MPa } = windableInitial(springIndex(wire))
  // The stress that winding leaves is stated without the curvature's correction.
  const windable = initial_N >= coilForce(wire, least_MPa, 1) && initial_N <= coilForce(wire, most_MPa, 1)
  if (ready < 0 || !windable) return []
  const most = wanted.least_N + rate_N_mm * (wanted.atMost_mm - wanted.atLeast_mm)
  const spring: Spring = { ...NOWHERE, kind: 'tension', rate_N_mm, freeLength_mm, initial_N, wire }
  const range = { least: wanted.least_N, most, reverses: false }
  const checks = springStrength(spring, range, wanted.cycles)
  const least = leastOfChecks(Object.values(checks))
  if (least === undefined) return []
  return [{ spring, range, ready, checks, least, leftAround_mm: leftAround(wire, wanted.outside_mm) }]
}
