/** What a new part is made of until somebody says otherwise: a plate of the material that the design uses already. */
import type { JsonValue } from '../../design/edit/change.ts'
import { type Ground, typedAt } from './ground.ts'

/** Material and thickness of the first part that has both, or a mass of nothing, so that weight can be asked for. */
export function firstMaterial(ground: Ground): { readonly [key: string]: JsonValue } {
  for (const { id } of ground.design.parts) {
    const material = typedAt(ground, 'parts', id, 'material')
    if (material !== undefined) return { material, thickness: '2 mm' }
  }
  return { mass: '0 g' }
}

/** A bar with chamfered ends around two holes on the x axis. @param length as typed, from hole to hole */
export function slenderOutline(length: string): JsonValue {
  const [half, chamfer] = ['2.6 mm', '1.85 mm']
  const beyond = (by: string) => `${length} + ${by}`
  return [
    [`-${half}`, '0 mm'],
    [`-${chamfer}`, `-${chamfer}`],
    ['0 mm', `-${half}`],
    [length, `-${half}`],
    [beyond(chamfer), `-${chamfer}`],
    [beyond(half), '0 mm'],
    [beyond(chamfer), chamfer],
    [length, half],
    ['0 mm', half],
    [`-${chamfer}`, chamfer],
  ]
}
