/** Pushes out of the plane: seen from behind, a circle with a cross as the feathers of an arrow, with the value beside it. */
import { say } from '../tables/value-text.ts'
import type { DrawnForces, ForcesOnSheet } from './forces-on-sheet.ts'
import { boxAt, type Label } from './labels.ts'
import { element, line, type Place, type Shape } from './svg.ts'
import { onSheet } from './view.ts'

const RADIUS_PX = 7
const LABEL_PX = 12.5

/** Every push from the side where it acts; nothing for a load in the plane. */
export function drawSidePushes({ forces, view, units }: ForcesOnSheet): DrawnForces {
  const places = (forces.sideways ?? []).map(({ at, force_N }) => ({ centre: onSheet(view, at), force_N }))
  const labels = places.map(({ centre, force_N }): Label => {
    const words = `${say(force_N, 'N', units)} from the side`
    return {
      words,
      anchor: centre,
      clear_px: RADIUS_PX + 4,
      prefers_rad: Math.PI / 2,
      className: 'value load',
      size_px: LABEL_PX,
    }
  })
  const shapes = places.flatMap(({ centre }) => feathers(centre))
  return { shapes, labels, obstacles: places.map(({ centre }) => boxAt(centre, RADIUS_PX)) }
}

function feathers({ x, y }: Place): readonly Shape[] {
  const arm = RADIUS_PX * Math.SQRT1_2
  return [
    element('circle', { cx: x, cy: y, r: RADIUS_PX, class: 'pin load' }),
    line({ x: x - arm, y: y - arm }, { x: x + arm, y: y + arm }, 'force shaft load'),
    line({ x: x - arm, y: y + arm }, { x: x + arm, y: y - arm }, 'force shaft load'),
  ]
}
