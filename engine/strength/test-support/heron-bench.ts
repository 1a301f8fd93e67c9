import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Design } from '../../design/design.ts'
import { readDesign } from '../../design/read-design.ts'
import { assemble } from '../../motion/assemble.ts'
import { mechanismOf } from '../../motion/mechanism.ts'
import { USUAL_FACTORS } from '../factors.ts'
import type { Pressed } from '../pressed.ts'
import type { StrengthBench } from '../strength-bench.ts'

const read = readDesign(readFileSync(join(import.meta.dirname, '../../../designs/heron.json'), 'utf8'), 'heron')
if (read.problems !== undefined) throw new Error('the example is refused')

/** The example finger with its upper link in the middle, between the cheeks, where it bends its pins most, and without factors of its own. */
export const heron: Design = withLinkBetween(read.value)

function withLinkBetween({ factors: _, ...design }: Design): Design {
  const across = [{ from_mm: -1, to_mm: 1 }]
  return { ...design, parts: design.parts.map((part) => (part.id === 'topLink' ? { ...part, across } : part)) }
}

/** Forces on part b of the joints of some pins, mount frame, N. */
export type ForcesOfPins = Readonly<Record<string, readonly [number, number]>>

/** A design as drawn under some states, each one a load case of its own unless named otherwise. */
export function heronBench(
  states: readonly { readonly forces: ForcesOfPins; readonly loadCase?: string }[],
  design: Design = heron,
): StrengthBench {
  const mechanism = mechanismOf(design)
  const { posture } = assemble(mechanism)
  if (!posture) throw new Error('the example does not go together')
  const pressed = states.map(({ forces, loadCase = 'carry' }): Pressed => {
    const all = mechanism.joints.flatMap(({ pin }) => forces[design.pins[pin].id] ?? [0, 0])
    return { loadCase, doing: 'holding', drive: 0, arc_ratio: 1, posture, forces: Float64Array.from(all) }
  })
  return { mechanism, states: pressed, factors: USUAL_FACTORS }
}
