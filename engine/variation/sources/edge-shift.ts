import type { Edge } from '../../design/design.ts'
import { addShift, type SetSizes } from './varying.ts'

interface Shifted {
  /** Of the edge. */
  readonly place: string
  readonly edge: Edge
  /** Away from the solid. */
  readonly outwards_mm: number
}

/** Moves an edge along its normal. The solid of a straight edge lies to the right of from → to: outwards is to the left. */
export function edgeShift(sizes: SetSizes, { place, edge, outwards_mm }: Shifted): void {
  if (edge.kind === 'arc') {
    addShift(sizes, `${place}.radius`, edge.solid === 'inside' ? outwards_mm : -outwards_mm)
    return
  }
  const [dx, dy] = [edge.to.x_mm - edge.from.x_mm, edge.to.y_mm - edge.from.y_mm]
  const length_mm = Math.hypot(dx, dy)
  for (const end of ['from', 'to']) {
    addShift(sizes, `${place}.${end}.0`, (-dy / length_mm) * outwards_mm)
    addShift(sizes, `${place}.${end}.1`, (dx / length_mm) * outwards_mm)
  }
}
