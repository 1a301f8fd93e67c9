import { type Evaluation, postureAt, readQuantity } from '../engine/index.ts'
import { WrongUse } from './terminal.ts'

/** Halvings of the stretch between two postures: more than a double can tell apart. */
const MOST_HALVINGS = 60

/**
 * Where on the travel a drawing is asked for.
 *
 * @param typed a share of the way from 0 (open) to 1 (closed), or a drive position with its unit, e.g. `60 deg` or `4 mm`
 * @returns share of the travel's arc; the first posture, from open, at which the drive stands there
 * @throws WrongUse when it is neither, or lies outside of the travel
 */
export function placeOnTravel(typed: string, evaluation: Evaluation): number {
  const travel = evaluation.travel
  if (travel === undefined) throw new WrongUse('--at: this finger does not move, so there is no posture to draw')
  if (/^\d*\.?\d+$/.test(typed) && Number(typed) <= 1) return Number(typed)
  const [kind, example] =
    travel.driveUnit === 'rad'
      ? (['angle', 'an angle such as "60 deg"'] as const)
      : (['length', 'a stroke such as "4 mm"'] as const)
  const read = readQuantity(typed, kind)
  if (read.problems !== undefined) throw new WrongUse(`--at "${typed}": needs a number from 0 to 1, or ${example}`)
  return arcAtDrive(read.value, evaluation)
}

function arcAtDrive(drive: number, evaluation: Evaluation): number {
  const postures = evaluation.travel?.postures ?? []
  const after = postures.findIndex((posture, index) => index > 0 && between(drive, postures[index - 1].drive, posture.drive))
  if (after < 0) throw new WrongUse('--at: the drive does not reach this position')
  let low = postures[after - 1].arc_ratio
  let high = postures[after].arc_ratio
  const rising = postures[after].drive >= postures[after - 1].drive
  for (let halving = 0; halving < MOST_HALVINGS; halving++) {
    const middle = (low + high) / 2
    if (postureAt(evaluation, middle).drive < drive === rising) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function between(value: number, one: number, other: number): boolean {
  return value >= Math.min(one, other) && value <= Math.max(one, other)
}
