/** Edges, roughness, threads, masks and racks as a drawing says them. */
import type { EdgeState, FaceKind, FaceName, Part, Point, Screw, Surface } from '../../engine/index.ts'
import { lengthText } from './size-words.ts'

const MICROMETRES = 1000

/** `−0.2 / −0.4`, `up to −0.3`, `±0.05`: after ISO 13715, where − is metal taken off and + is metal that may stand over. */
export function edgeWords({ from_mm, to_mm }: EdgeState): string {
  if (from_mm === -to_mm) return `±${lengthText(Math.abs(to_mm))}`
  return from_mm === 0 ? `up to ${signed(to_mm)}` : `${signed(from_mm)} / ${signed(to_mm)}`
}

const signed = (value_mm: number): string => (value_mm > 0 ? `+${lengthText(value_mm)}` : lengthText(value_mm))

/** `Ra 0.8`, in micrometres as the mark on a drawing means it. */
export function roughnessWords(roughness_mm: number): string {
  return `Ra ${lengthText(roughness_mm * MICROMETRES)}`
}

/** Roughness and edge of a hole or of a pin in one line; none where neither is stated. */
export function surfaceLines({ edge, roughness_mm }: Surface): readonly string[] {
  const words = [
    ...(roughness_mm === undefined ? [] : [roughnessWords(roughness_mm)]),
    ...(edge === undefined ? [] : [`edge ${edgeWords(edge)}`]),
  ]
  return words.length === 0 ? [] : [words.join(', ')]
}

/** Whether anything of a part states an edge: then the drawing says by which rule it is read. */
export function edgesOfPartWords({ outsideEdges, insideEdges }: Part): string | undefined {
  const words = [
    ...(outsideEdges === undefined ? [] : [`outside ${edgeWords(outsideEdges)}`]),
    ...(insideEdges === undefined ? [] : [`inside ${edgeWords(insideEdges)}`]),
  ]
  return words.length === 0 ? undefined : `Edges after ISO 13715, where nothing else is said: ${words.join(', ')}.`
}

/** `−14, 1`. */
export function placeText({ x_mm, y_mm }: Point): string {
  return `${lengthText(x_mm)}, ${lengthText(y_mm)}`
}

/** What is masked, in words; undefined where nothing is. */
export function maskedWords({ masked = [] }: Pick<Part, 'masked'>): string | undefined {
  const words = masked.map(faceWords)
  if (words.length < 2) return words[0]
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`
}

/** `all holes`, `hole mcp`, `the back face`. */
export function faceWords(face: FaceName): string {
  const [kind, id] = face.split('.')
  if (id === undefined) return ALL[kind as FaceKind]
  return kind === 'faces' ? `the ${id} face` : `${ONE[kind as keyof typeof ONE]} ${id}`
}

const ALL: Readonly<Record<FaceKind, string>> = {
  holes: 'all holes',
  edges: 'the stop edges',
  outline: 'the side all around',
  faces: 'both faces',
  threads: 'the threads',
}
const ONE = { holes: 'hole', edges: 'stop edge', threads: 'thread' } as const

/** `2 × M2.5-6H, 5.5 deep, drill Ø2.05, 8 deep`; what is not stated is said. */
export function threadWords({ thread, tapped, screws_count }: Screw): string {
  const { class: grade, drill_mm, drillDepth_mm, threadDepth_mm } = tapped
  const name = grade === undefined ? `${thread.name}, class not stated` : `${thread.name}-${grade}`
  const depth = threadDepth_mm === undefined ? 'depth of thread not stated' : `${lengthText(threadDepth_mm)} deep`
  const hole = drillDepth_mm === undefined ? 'through' : `${lengthText(drillDepth_mm)} deep`
  const drill = drill_mm === undefined ? 'drill not stated' : `drill Ø${lengthText(drill_mm)}, ${hole}`
  return `${screws_count} × ${name}, ${depth}, ${drill}`
}
