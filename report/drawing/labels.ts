/**
 * Places labels so that none covers another: each tries places around its anchor, nearest first, and takes the one that covers
 * least of what stands already. Widths are estimated from the number of characters, a little too wide on purpose.
 */
import { lettering, line, type Place, px, type Shape } from './svg.ts'

/** Average width of a character as a share of the type size, generous for figures and capitals. */
const CHARACTER_WIDTH_RATIO = 0.57
const LINE_HEIGHT_RATIO = 1.2
const DIRECTIONS = 12
const RINGS = 5
const RING_PX = 13
/** A label farther from its anchor than this gets a thin leader line. */
const LEADER_FROM_PX = 22

/** Upright box on the sheet. */
export interface Rectangle {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

/** A label before it has a place. */
export interface Label {
  readonly words: string
  readonly anchor: Place
  /** Room to keep from the anchor, px. */
  readonly clear_px: number
  /** Direction that it would like best, rad on the sheet (0 right, positive down). */
  readonly prefers_rad: number
  readonly className: string
  readonly size_px: number
}

/** A label with its place. */
export interface PlacedLabel extends Label {
  readonly box: Rectangle
}

/** Everything that labels must keep off, and the sheet they must stay on. */
export interface Ground {
  readonly sheet: Rectangle
  /** Covering one of these is bad, e.g. pins and arrows. */
  readonly obstacles: readonly Rectangle[]
}

/** Places labels in the order given; the first has the first choice. */
export function placeLabels(labels: readonly Label[], ground: Ground): readonly PlacedLabel[] {
  const placed: PlacedLabel[] = []
  for (const label of labels) {
    const taken = placed.map((other) => other.box)
    placed.push({ ...label, box: cheapest(label, { taken, ground }) })
  }
  return placed
}

/** Tries the candidates by how near and how well they lie, and stops where no later one can be cheaper: covering only adds to the cost. */
function cheapest(label: Label, about: { readonly taken: readonly Rectangle[]; readonly ground: Ground }): Rectangle {
  const choices = candidates(label)
    .map((box) => ({ box, lies: lyingCost(box, label) }))
    .sort((one, other) => one.lies - other.lies)
  let best = { box: choices[0].box, cost: Number.POSITIVE_INFINITY }
  for (const { box, lies } of choices) {
    if (lies >= best.cost) break
    const cost = lies + coveringCost(box, about)
    if (cost < best.cost) best = { box, cost }
  }
  return best.box
}

/** A placed label, with a leader line where it had to stand apart. */
export function drawLabel(label: PlacedLabel): readonly Shape[] {
  const { box, anchor, size_px } = label
  const baseline = { x: box.left + box.width / 2, y: box.top + box.height / 2 + 0.35 * size_px }
  const text = lettering(label.words, baseline, { class: label.className, 'text-anchor': 'middle', 'font-size': px(size_px) })
  const near = nearestOf(box, anchor)
  const apart = Math.hypot(near.x - anchor.x, near.y - anchor.y)
  if (apart < label.clear_px + LEADER_FROM_PX) return [text]
  return [line(near, anchor, 'leader'), text]
}

/** Estimated box of a text of that size with its upper left corner at 0, 0. */
export function textSize(words: string, size_px: number): { readonly width: number; readonly height: number } {
  return { width: words.length * size_px * CHARACTER_WIDTH_RATIO, height: size_px * LINE_HEIGHT_RATIO }
}

/** Small boxes along a line, for obstacles. */
export function boxesAlong(from: Place, to: Place, half_px: number): readonly Rectangle[] {
  const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 8))
  return Array.from({ length: count + 1 }, (_, index) => {
    const share = index / count
    return boxAt({ x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) }, half_px)
  })
}

/** Square box about a place. */
export function boxAt(place: Place, half_px: number): Rectangle {
  return { left: place.x - half_px, top: place.y - half_px, width: 2 * half_px, height: 2 * half_px }
}

/** Area that two boxes share, px². */
export function overlap(one: Rectangle, other: Rectangle): number {
  const width = Math.min(one.left + one.width, other.left + other.width) - Math.max(one.left, other.left)
  const height = Math.min(one.top + one.height, other.top + other.height) - Math.max(one.top, other.top)
  return width > 0 && height > 0 ? width * height : 0
}

function candidates(label: Label): readonly Rectangle[] {
  const size = textSize(label.words, label.size_px)
  const boxes: Rectangle[] = []
  for (let index = 0; index < DIRECTIONS; index += 1) {
    const angle = label.prefers_rad + ((index % 2 === 0 ? 1 : -1) * Math.ceil(index / 2) * 2 * Math.PI) / DIRECTIONS
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
    for (let ring = 0; ring < RINGS; ring += 1) {
      const reach = label.clear_px + ring * RING_PX
      const left = label.anchor.x + cos * (reach + size.width / 2) - size.width / 2
      const top = label.anchor.y + sin * (reach + size.height / 2) - size.height / 2
      boxes.push({ left, top, width: size.width, height: size.height })
    }
  }
  return boxes
}

/** How far from its anchor and how far off its wished direction a box lies. */
function lyingCost(box: Rectangle, label: Label): number {
  const near = nearestOf(box, label.anchor)
  const apart = Math.hypot(near.x - label.anchor.x, near.y - label.anchor.y)
  const centre = { x: box.left + box.width / 2, y: box.top + box.height / 2 }
  const bearing = Math.atan2(centre.y - label.anchor.y, centre.x - label.anchor.x)
  return 4 * apart + 12 * (1 - Math.cos(bearing - label.prefers_rad))
}

/** What a box would cover: another label is worst, leaving the sheet next, an obstacle least. */
function coveringCost(
  box: Rectangle,
  { taken, ground }: { readonly taken: readonly Rectangle[]; readonly ground: Ground },
): number {
  const room = grown(box, 2)
  let covered = 0
  for (const other of taken) covered += overlap(room, other)
  let crossed = 0
  for (const other of ground.obstacles) crossed += overlap(box, other)
  const outside = box.width * box.height - overlap(box, ground.sheet)
  return 1e6 * Math.sign(covered) + 1000 * covered + 1000 * outside + crossed
}

function grown(box: Rectangle, by: number): Rectangle {
  return { left: box.left - by, top: box.top - by, width: box.width + 2 * by, height: box.height + 2 * by }
}

function nearestOf(box: Rectangle, place: Place): Place {
  return {
    x: Math.min(Math.max(place.x, box.left), box.left + box.width),
    y: Math.min(Math.max(place.y, box.top), box.top + box.height),
  }
}
