/** The postures in which a finger is leant on from the side: of each load case with a push out of the plane, closed or all the way. */
import type { Pressed } from '../strength/pressed.ts'
import { type Leant, leantIn } from '../strength/side-moment.ts'
import type { Survey } from './survey.ts'

/** Every push from the side in every posture that its load case acts in. */
export function leantStates({ design, path, nodes, drive }: Survey): readonly Leant[] {
  const { mechanism } = path
  const closed_mm = nodes[nodes.length - 1].arc_mm
  const none = new Float64Array(2 * mechanism.joints.length)
  return design.loadCases.flatMap(({ id, acts, sideways }) => {
    if (sideways.length === 0) return []
    const first = acts === 'travel' ? 0 : nodes.length - 1
    return nodes.slice(first).map(({ posture, arc_mm }, index) => {
      const arc_ratio = closed_mm > 0 ? arc_mm / closed_mm : 0
      const state: Pressed = { loadCase: id, doing: 'holding', drive: drive[first + index], arc_ratio, posture, forces: none }
      return leantIn(mechanism, state)
    })
  })
}
