/**
 * The closings of a life under different loads, taken together (Palmgren and Miner).
 *
 *     n_i closings at the amplitude A_i, of which N_i would crack it        Σ n_i / N_i = 1   at the crack
 *
 * On a straight line of strength against life N_i = N (S_N / A_i)^k, so that the sum is that of N closings at one amplitude:
 *
 *     A = (Σ s_i A_i^k)^(1/k)        s_i = n_i / N the share of the closings,   k = log(N_f / 10³) / log(S_3 / S_f)
 *
 * The line runs on at the same slope below what is known of it; where a real one bends the other way this counts small loads for too much.
 * Above the strength at 10³ nothing is claimed for any number of closings.
 *
 * Source: M. A. Miner, Cumulative Damage in Fatigue, J. Appl. Mech. 12 (1945), and Shigley, Mechanical Engineering Design, section 6-15,
 * from memory.
 */
import { slope } from './endurance.ts'
import { amplitudeAlone, type Swing } from './fatigue.ts'
import type { Life } from './life.ts'

/** What one load case does to a place of the metal. */
export interface SwingUnder {
  readonly loadCase: string
  readonly swing: Swing
}

/** All closings of a life at one place of the metal. */
export interface Together<Under extends SwingUnder> {
  /** Amplitude that does as much harm when every closing has it, MPa. */
  readonly amplitude_MPa: number
  /** The load case that does most of the harm. */
  readonly worst: Under
  /** Of all closings those of that load case. */
  readonly share_ratio: number
}

/**
 * One amplitude for all closings. A load case without a share of them is counted as a thousand closings alone, which it has to bear all the same;
 * where no shares are stated every closing is under the worst load case.
 *
 * @param under at least one
 */
export function closingsTogether<Under extends SwingUnder>(life: Life, under: readonly Under[]): Together<Under> {
  const harms = under.map((one) => harmOf(life, one))
  let worst = 0
  for (let index = 1; index < harms.length; index++) if (harms[index].alone_MPa > harms[worst].alone_MPa) worst = index
  const { alone_MPa, share_ratio } = harms[worst]
  const found = { worst: under[worst], share_ratio }
  const k = slope(life.line)
  if (!life.shares || alone_MPa === 0 || !Number.isFinite(k)) return { ...found, amplitude_MPa: alone_MPa }
  const sum = harms.reduce((total, harm) => total + harm.share_ratio * (harm.amplitude_MPa / alone_MPa) ** k, 0)
  return { ...found, amplitude_MPa: Math.max(alone_MPa, alone_MPa * sum ** (1 / k)) }
}

interface Harm {
  readonly share_ratio: number
  /** Of its own closings. */
  readonly amplitude_MPa: number
  /** Of all closings, as bad as its own. */
  readonly alone_MPa: number
}

/** The mean counts with the strength that belongs to the load case's own closings alone, which is the safe side of what all of them leave. */
function harmOf(life: Life, { loadCase, swing }: SwingUnder): Harm {
  const share = life.shares?.get(loadCase)
  if (!share) return { share_ratio: 1, amplitude_MPa: amplitudeAlone(swing, life), alone_MPa: amplitudeAlone(swing, life) }
  const { share_ratio, strength_MPa } = share
  const amplitude_MPa = amplitudeAlone(swing, { strength_MPa, ultimate_MPa: life.ultimate_MPa })
  return { share_ratio, amplitude_MPa, alone_MPa: (amplitude_MPa * life.strength_MPa) / strength_MPa }
}

/** Σ n_i / N_i of an amplitude that stands for all closings. */
export function harmSum(life: Life, amplitude_MPa: number): number {
  return (amplitude_MPa / life.strength_MPa) ** slope(life.line)
}
