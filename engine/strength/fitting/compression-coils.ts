import type { Spring } from '../../design/design.ts'
import { helicalRate } from '../../design/springs/coil.ts'
import type { CompressionWire } from '../../design/springs/spring-wire.ts'
import { wireModuli } from '../../design/springs/wire-rows.ts'
import { springStrength } from '../spring-strength.ts'
import { coilsBetween, HALF, leastOfChecks, leftAround, soldWires } from './candidates.ts'
import { NOWHERE } from './nowhere.ts'
import type { FittingSpring, WantedStraight } from './wanted-spring.ts'

/** Coils that do not give way between squared ends. */
const DEAD = 2

/** Compression springs with squared and ground ends that have the rate and the room, those of one wire and diameter together. */
export function compressionCoils(wanted: WantedStraight): readonly (readonly FittingSpring[])[] {
  const rate = (wanted.most_N - wanted.least_N) / (wanted.atLeast_mm - wanted.atMost_mm)
  return soldWires().map((sold) => {
    const { shearModulus_MPa } = wireModuli(sold.material, sold.wire_mm)
    const ofOne = { ...sold, mean_mm: 1, shearModulus_MPa }
    const meanFor = (turns: number) => Math.cbrt(helicalRate({ ...ofOne, activeTurns: turns - DEAD }) / rate)
    const room = { inside_mm: wanted.over_mm, outside_mm: wanted.outside_mm, step: HALF }
    const coils = coilsBetween(sold, room, (turns) => (turns > DEAD ? meanFor(turns) : Number.POSITIVE_INFINITY))
    return coils.flatMap(({ turns, mean_mm }) => {
      const rate_N_mm = helicalRate({ ...ofOne, mean_mm, activeTurns: turns - DEAD })
      const ends = {
        ends: 'squared ground',
        seats: wanted.over_mm > 0 ? 'guided' : (wanted.seats ?? 'between pivots'),
        setRemoved: false,
      } as const
      return judged({ ...sold, mean_mm, coils: turns, ...ends }, rate_N_mm, wanted)
    })
  })
}

function judged(wire: CompressionWire, rate_N_mm: number, wanted: WantedStraight): readonly FittingSpring[] {
  const ready = wanted.least_N / rate_N_mm
  const most = wanted.least_N + rate_N_mm * (wanted.atLeast_mm - wanted.atMost_mm)
  const freeLength_mm = wanted.atLeast_mm + ready
  const spring: Spring = { ...NOWHERE, kind: 'compression', rate_N_mm, freeLength_mm, initial_N: 0, wire }
  const range = { least: wanted.least_N, most, reverses: false }
  const checks = springStrength(spring, range, wanted.cycles)
  const least = leastOfChecks(Object.values(checks))
  if (least === undefined) return []
  return [{ spring, range, ready, checks, least, leftAround_mm: leftAround(wire, wanted.outside_mm) }]
}
