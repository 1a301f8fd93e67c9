import { limits } from '../numbers/limits.ts'
import type { Document } from './document.ts'
import type { Problem } from './problem.ts'

/** Things of which there are more than the program takes on. With any of these nothing more is read. */
export function tooManyThings(document: Document): readonly Problem[] {
  const problems: Problem[] = []
  const check = (place: string, things: object | undefined, most: number) => {
    const count = Object.keys(things ?? {}).length
    if (count > most) problems.push({ code: 'too many', place, found: `${count}`, needed: `at most ${most}` })
  }
  check('dimensions', document.dimensions, limits.dimensions)
  check('materials', document.materials, limits.materials)
  check('friction', document.friction, limits.frictionPairs)
  check('parts', document.parts, limits.parts)
  check('pins', document.pins, limits.pins)
  check('stops', document.stops, limits.stops)
  check('springs', document.springs, limits.springs)
  check('loadCases', document.loadCases, limits.loadCases)
  check('toggles', document.toggles, limits.toggles)
  check('requirements', document.requirements, limits.requirements)
  for (const [id, part] of Object.entries(document.parts ?? {})) {
    check(`parts.${id}.holes`, part.holes, limits.holesOfPart)
    check(`parts.${id}.edges`, part.edges, limits.edgesOfPart)
    check(`parts.${id}.pads`, part.pads, limits.padsOfPart)
    check(`parts.${id}.outline`, part.outline, limits.outlinePoints)
  }
  return problems
}
