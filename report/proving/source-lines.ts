import type { Design } from '../../engine/index.ts'

/** Sources of what a design is calculated from, each once, with what it is of; requirements name theirs beside them. */
export function sourceLines({ frictionPairs, parts, pins }: Design): readonly string[] {
  const named = [...parts, ...pins]
  const lines = [
    ...frictionPairs.flatMap(({ name, source, wear }) => [
      `Friction, ${name}: ${source}`,
      ...(wear === undefined ? [] : [`Wear, ${wear.rate.name}: ${wear.rate.source}`]),
    ]),
    ...named.flatMap(({ material }) => (material === undefined ? [] : [`Material ${material.name}: ${material.source}`])),
    ...named.flatMap(({ coating }) => (coating === undefined ? [] : [`Coating, ${coating.name}: ${coating.source}`])),
  ]
  return [...new Set(lines)]
}
