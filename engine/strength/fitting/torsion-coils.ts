import type { Spring } from '../../design/design.ts'
import { activeTurns, bodyTurnsUnder, torsionRate } from '../../design/springs/coil.ts'
import type { TorsionWire } from '../../design/springs/spring-wire.ts'
import { wireModuli } from '../../design/springs/wire-rows.ts'
import { springStrength } from '../spring-strength.ts'
import { coilsBetween, leastOfChecks, leftAround, QUARTER, type SoldWire, soldWires } from './candidates.ts'
import type { FittingSpring, WantedTorsion } from './wanted-spring.ts'

/** Torsion springs that have the rate and the room, those of one wire and diameter together. */
export function torsionCoils(wanted: WantedTorsion): readonly (readonly FittingSpring[])[] {
  const rate_Nmm_rad = (wanted.most_Nmm - wanted.least_Nmm) / wanted.apart_rad
  return soldWires().map((sold) => {
    const { modulus_MPa } = wireModuli(sold.material, sold.wire_mm)
    const meanFor = (turns: number) => meanOf({ ...sold, modulus_MPa, legs_mm: wanted.legs_mm, rate_Nmm_rad }, turns)
    const coils = coilsBetween(sold, { inside_mm: wanted.over_mm, outside_mm: wanted.outside_mm, step: QUARTER }, meanFor)
    return coils.flatMap(({ turns, mean_mm }) => {
      const wire = { ...sold, mean_mm, bodyTurns: turns, legs_mm: wanted.legs_mm, springs_count: 1, arbour_mm: wanted.over_mm }
      return judged(wire, modulus_MPa, wanted)
    })
  })
}

/** The rate asks for D (N_b + l/(3π D)) = D N_b + l/(3π) to have one value: that of a coil of 1 mm without legs has as many turns. */
function meanOf(
  { wire_mm, modulus_MPa, legs_mm, rate_Nmm_rad }: SoldWire & { modulus_MPa: number; legs_mm: number; rate_Nmm_rad: number },
  turns: number,
): number {
  const product_mm = torsionRate({ wire_mm, modulus_MPa, mean_mm: 1, bodyTurns: 1, legs_mm: 0 }) / rate_Nmm_rad
  return (product_mm - activeTurns({ wire_mm, mean_mm: 1, bodyTurns: 0, legs_mm })) / turns
}

function judged(wire: TorsionWire, modulus_MPa: number, wanted: WantedTorsion): readonly FittingSpring[] {
  const coil = { ...wire, modulus_MPa }
  const rate_Nmm_rad = torsionRate(coil)
  const ready = wanted.least_Nmm / rate_Nmm_rad
  const most = wanted.least_Nmm + rate_Nmm_rad * wanted.apart_rad
  // Every turn that it is wound up by adds a wire to its length.
  const long_mm = wire.wire_mm * (wire.bodyTurns + 1 + bodyTurnsUnder(coil, most))
  const spring: Spring = {
    id: 'proposed',
    kind: 'torsion',
    pin: 0,
    on: 0,
    against: 0,
    rate_Nmm_rad,
    preload_Nmm: wanted.least_Nmm,
    ownFriction_ratio: 0,
    wire,
  }
  const range = { least: wanted.least_Nmm, most, reverses: false }
  const checks = springStrength(spring, range, wanted.cycles)
  const least = leastOfChecks(Object.values(checks))
  if (long_mm > wanted.width_mm || least === undefined) return []
  const leftAround_mm = leftAround(wire, wanted.outside_mm)
  return [{ spring, range, ready, checks, least, leftAround_mm, leftAlong_mm: wanted.width_mm - long_mm }]
}
