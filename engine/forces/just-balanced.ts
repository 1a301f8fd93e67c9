/** Friction that gives just what is asked of it, where it could give more. */
import { limits } from '../numbers/limits.ts'
import { rootBetween } from '../numbers/root.ts'
import { amplitudeIn, type Balance, balanceIn, type FillLevers, type Prepared } from './balance.ts'

/**
 * The state, on the way from no friction to a state that holds, at which nothing is left for the port to do: its amplitude is zero.
 *
 * @param enough a state of the question whose amplitude is zero or below, while without friction it is positive
 * @returns undefined when no such state was found on that way
 */
export function justBalanced(prepared: Prepared, enough: Balance): Balance | undefined {
  const stateAt =
    (share: number): FillLevers =>
    (_, out) => {
      for (let joint = 0; joint < out.length; joint++) out[joint] = share * enough.levers[joint]
    }
  const share = rootBetween(
    (candidate) => amplitudeIn(prepared, stateAt(candidate)),
    { low: 0, high: 1, atLow: prepared.freeAmplitude, atHigh: enough.amplitude },
    limits.effortWidth_ratio,
  )
  return share === undefined ? undefined : balanceIn(prepared, stateAt(share))
}
