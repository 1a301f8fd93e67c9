/**
 * Faces of a part by names: what a coater can keep bare.
 *
 *     holes, holes.mcp           all holes, or one by its id
 *     edges, edges.shelf         all edges that stops run against, with the round ends of stops; or one by its id
 *     outline                    the narrow side all around, but for those edges
 *     faces, faces.front         both flat sides; the front is the one that the drawing shows, x to the right and y up, the back the other
 *     threads, threads.rear      the threads of all screws that are turned into the part, or of one of them by its id
 */
import type { FaceKind, FaceName, Part } from './sections/parts.ts'

/** The flat sides. */
const SIDES = ['front', 'back'] as const

/** Ids of what a part has. */
export interface OfPart {
  readonly holes: readonly string[]
  readonly edges: readonly string[]
  /** Screws that are turned into it. */
  readonly threads: readonly string[]
}

/** Every name of a face that a part has. */
export function facesOf({ holes, edges, threads }: OfPart): readonly FaceName[] {
  return [...named('holes', holes), ...named('edges', edges), 'outline', ...named('faces', SIDES), ...named('threads', threads)]
}

function named(kind: FaceKind, ids: readonly string[]): readonly FaceName[] {
  return ids.length === 0 ? [] : [kind, ...ids.map((id): FaceName => `${kind}.${id}`)]
}

/** All that is of one kind with a face. */
export function kindOfFace(face: FaceName): FaceKind {
  return face.split('.')[0] as FaceKind
}

/** Whether the coater keeps a face bare: by its own name, or with all of its kind. */
export function isMasked({ masked = [] }: Pick<Part, 'masked'>, face: FaceName): boolean {
  return masked.includes(face) || masked.includes(kindOfFace(face))
}
