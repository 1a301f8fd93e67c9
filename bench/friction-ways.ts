/**
 * The two ways to the joint forces of a finger with bare links, on the same questions: 61 postures, a load on each phalanx, holding
 * and closing. This file looks behind the engine's door, because through the door one way hides the other.
 */
import {
  againstMotion,
  amplitudeIn,
  amplitudeInClosedForm,
  generalWay,
  type Prepared,
  prepare,
} from '../engine/forces/balance.ts'
import { framesAt } from '../engine/forces/force-frame.ts'
import { DEG, finger } from '../engine/sketches/finger.ts'
import { atDrive, coupleOn, forceOn, partNamed, scene } from '../engine/sketches/force-scene.ts'
import type { Way } from './compare.ts'

const POSTURES = 61
const CLOSED_deg = 75
const PHALANGES = ['proximal', 'middle', 'distal']
/** Beyond this share the two would be two results and their rates not worth comparing. */
const AGREES_ratio = 1e-9

const here = scene(finger({ friction: 0.12 }))
const { mechanism, bench } = here
const port = coupleOn(mechanism, partNamed(mechanism, 'proximal'), -1)
const fill = againstMotion(bench.leversOf('moving', 'most'))
const places = Array.from({ length: POSTURES }, (_, index) => {
  const node = atDrive(here, (CLOSED_deg * DEG * index) / (POSTURES - 1))
  const loads = PHALANGES.map((id) =>
    forceOn(mechanism, node.posture, { part: partNamed(mechanism, id), at: [13, -6], force: [20, 80] }),
  )
  return { node, loads }
})

/** Sum of all efforts; NaN where a way does not answer. */
function effortsBy(way: (prepared: Prepared) => number | undefined): number {
  let sum = 0
  for (const { node, loads } of places) {
    const frames = framesAt(bench.room, node)
    for (const load of loads) {
      for (const frame of frames ? [frames.opening, frames.closing] : []) {
        const prepared = prepare(frame, { port, load })
        sum += (prepared && way(prepared)) ?? Number.NaN
      }
    }
  }
  return sum
}

const byGeneralWay = (): number => effortsBy((prepared) => amplitudeIn(generalWay(prepared), fill))
const byClosedForm = (): number => effortsBy((prepared) => amplitudeInClosedForm(prepared, fill))

/** Both ways as work to be timed. Throws when they do not agree. */
export function frictionWays(): readonly Way[] {
  const apart = Math.abs(byClosedForm() / byGeneralWay() - 1)
  if (!(apart < AGREES_ratio)) throw new Error(`the two ways to the joint forces are ${apart} apart`)
  const count = POSTURES * PHALANGES.length * 2
  return [
    { name: `${count} efforts, general way`, run: byGeneralWay },
    { name: `${count} efforts, closed form`, run: byClosedForm },
  ]
}
