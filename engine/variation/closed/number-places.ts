import type { Design } from '../../design/design.ts'

/** A number in a design, and the object that holds it. */
export interface NumberPlace {
  readonly holder: Record<string, number>
  readonly key: string
  readonly path: readonly string[]
}

/**
 * What the closed posture and its forces hang on. Outlines, limits of sizes and the rest of a document may follow the sources as they like.
 */
const roots = ['parts', 'pins', 'stops', 'springs', 'frictionPairs'] as const

/** Not read by motion or forces. */
const passedOver: ReadonlySet<string> = new Set(['tolerance', 'wire', 'room', 'within', 'across', 'material', 'coating'])

/** Of the drawn posture only the turns tell: a finger is put together from near it, wherever that is. */
const isDrawnPlace = (path: readonly string[], key: string): boolean => key === 'at' && path[path.length - 1] === 'drawn'

/** Every number in a design that motion and forces read, each once, however many roads lead to it. NaN and what is no number are left out. */
export function numberPlaces(design: Design): readonly NumberPlace[] {
  const seen = new Set<object>()
  const found: NumberPlace[] = []
  const walk = (holder: object, path: readonly string[]): void => {
    if (seen.has(holder)) return
    seen.add(holder)
    for (const [key, value] of Object.entries(holder)) {
      if (passedOver.has(key) || isDrawnPlace(path, key)) continue
      if (typeof value === 'number') found.push({ holder: holder as Record<string, number>, key, path: [...path, key] })
      else if (typeof value === 'object' && value !== null) walk(value, [...path, key])
    }
  }
  for (const root of roots) walk(design[root], [root])
  return found
}

/** The number at a place of another design of the same document; NaN where there is none. */
export function valueAt(design: Design, path: readonly string[]): number {
  const value = path.reduce((held: unknown, key) => (held as Record<string, unknown> | undefined)?.[key], design)
  return typeof value === 'number' ? value : Number.NaN
}
