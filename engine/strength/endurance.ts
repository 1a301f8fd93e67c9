/**
 * What a material bears when the stress comes and goes.
 *
 *     log S │╲  S at 10³ cycles                   S = S₃ (N / 10³)^b,   b = log(S_long / S₃) / log(N_long / 10³)
 *           │  ╲
 *           │     ╲                               S_long = k_a k_b k_c k_e · S of a polished specimen
 *           │        ╲  S_long at N_long
 *           └──────────────────── log N
 *
 * A straight line (Basquin) from 10³ cycles to the number for which the specimen's strength is known. Beyond that number nothing is claimed:
 * aluminium has no limit below which it lasts for ever, and that steel has one is doubted.
 *
 * Source: Shigley, Mechanical Engineering Design, sections 6-7 to 6-9 (after Marin), from memory; the line, the surface factor and that of
 * reliability read in worked examples of Bhandari, Design of Machine Elements, ch. 5, which use them.
 */
import type { Material } from '../design/design.ts'

/** Where the line begins. */
const SHORT_cycles = 1000
/** Strength there over the ultimate strength: the lower of what texts give (0.75 pulled, 0.9 bent; from memory), for both. */
const SHORT_ratio = 0.75
/** Of a pulled section against a bent one, all of which stands at the largest stress (Shigley, table of load factors, from memory). */
const PULLED_ratio = 0.85
/** What 99 of 100 specimens bear over what half of them bear, 1 − 0.08 × 2.326 (Shigley, table 6-5, from memory). */
const NINETY_NINE_OF_100_ratio = 0.814
/** a and b of k_a = a S_ut^b, MPa: measured on steel, used for all metals (Shigley, table 6-2, from memory; `machined` read). */
const FINISHES = { ground: [1.58, -0.085], machined: [4.51, -0.265] } as const

export type Finish = keyof typeof FINISHES

/** Of a surface against a polished one, at most 1. @param ultimate_MPa of the material */
export function surfaceFactor(finish: Finish, ultimate_MPa: number): number {
  const [a, b] = FINISHES[finish]
  return Math.min(1, a * ultimate_MPa ** b)
}

/** Diameters between which the small formula of size was fitted, mm. */
const SMALL_TO_mm = 51

/**
 * Of a bent round against a specimen of 7.62 mm, at most 1: small things gain nothing here.
 *
 * @param diameter_mm of a round that turns; of one that does not, 0.370 of its diameter
 */
export function sizeFactor(diameter_mm: number): number {
  return Math.min(1, diameter_mm <= SMALL_TO_mm ? 1.24 * diameter_mm ** -0.107 : 1.51 * diameter_mm ** -0.157)
}

/** Share of a round's diameter that counts where it is bent and does not turn. */
const STILL_ratio = 0.37

/** How a stress comes about that comes and goes. */
export type Cycled =
  | { readonly how: 'bent'; readonly finish: Finish; readonly diameter_mm: number }
  | { readonly how: 'pulled'; readonly finish: Finish }

/** A straight line of strength against life. */
export interface LifeLine {
  /** Amplitude borne for 10³ cycles, MPa. */
  readonly short_MPa: number
  /** Amplitude borne for `long_cycles`, MPa. */
  readonly long_MPa: number
  readonly long_cycles: number
}

/** The line of a material, with its ultimate strength. */
export type MaterialLine = LifeLine & { readonly ultimate_MPa: number }

/** The line of a material, or what the material does not state. */
export function lifeLine(material: Material, cycled: Cycled): MaterialLine | { readonly missing: string } {
  const { name, ultimate_MPa, fatigue_MPa, fatigueCycles_count } = material
  if (ultimate_MPa === undefined) return { missing: `material ${name} states no ultimate strength` }
  if (fatigue_MPa === undefined || fatigueCycles_count === undefined) {
    return { missing: `material ${name} states no fatigue strength` }
  }
  const of = cycled.how === 'bent' ? sizeFactor(STILL_ratio * cycled.diameter_mm) : PULLED_ratio
  const factors = surfaceFactor(cycled.finish, ultimate_MPa) * of * NINETY_NINE_OF_100_ratio
  const short_MPa = SHORT_ratio * ultimate_MPa
  // No line rises with the number of cycles, whatever a document states.
  const long_MPa = Math.min(short_MPa, factors * fatigue_MPa)
  return { short_MPa, long_MPa, long_cycles: fatigueCycles_count, ultimate_MPa }
}

/** How steep a line is, k of N ∝ S^−k; infinite for one without a slope. */
export function slope({ short_MPa, long_MPa, long_cycles }: LifeLine): number {
  return Math.log(long_cycles / SHORT_cycles) / Math.log(short_MPa / long_MPa)
}

/** Amplitude that is borne for a number of cycles, MPa; that of 10³ for fewer, undefined for more than the line is known for. */
export function strengthAfter({ short_MPa, long_MPa, long_cycles }: LifeLine, cycles: number): number | undefined {
  if (cycles > long_cycles) return undefined
  if (cycles <= SHORT_cycles) return short_MPa
  const share = Math.log(cycles / SHORT_cycles) / Math.log(long_cycles / SHORT_cycles)
  return short_MPa * (long_MPa / short_MPa) ** share
}
