/** What goes to the shop, as files: drawings, a solid for every part and pin that has a shape, parts list, inspection plan, note to the coater. */
import { type Design, partsList, type ShopDesign } from '../../engine/index.ts'
import { svgText } from '../drawing/svg.ts'
import { type DrawingsAsked, drawingSheets, drawingsJob, usualDrawings } from '../drawings/drawing-sheets.ts'
import { sheetShape } from '../drawings/sheet-file.ts'
import { type FlatBody, partBodies, pinBody } from '../solids/flat-body.ts'
import { stepFile } from '../solids/step-file.ts'
import { stlFile } from '../solids/stl-file.ts'
import type { TypesetJob } from '../typeset/typeset-job.ts'
import { coatingNote } from './coating-note.ts'
import { partsFile } from './parts-file.ts'
import { planFile } from './plan-file.ts'

export interface ShopFile {
  readonly name: string
  readonly text: string
}

/** The files, the drawings to be typeset beside them, and what has none and why. The same design gives the same bytes. */
export interface ShopFiles {
  readonly files: readonly ShopFile[]
  /** All drawings, to be one PDF. */
  readonly drawings: TypesetJob
  readonly left: readonly string[]
}

/** What is made next, and how much of all files is made by then. */
export interface ShopFilesStep {
  readonly doing: string
  readonly share: number
}

/** Of the time that the files take the drawings need so much, by what the example took; the solids need the rest, each the same. */
const DRAWINGS_share = 0.4

/**
 * Makes the files piece by piece, so that whoever asks can tell how far it is and leave off.
 *
 * @param shop as it goes to the shop
 */
export function* shopFiles(shop: ShopDesign, asked: DrawingsAsked = usualDrawings): Generator<ShopFilesStep, ShopFiles> {
  const { variation } = shop
  const { design } = variation
  yield { doing: 'drawings', share: 0 }
  const { sheets, left } = drawingSheets(shop, asked)
  const makers = [...partSolids(design), ...pinSolids(design)]
  const solids: Solid[] = []
  for (const [index, make] of makers.entries()) {
    yield { doing: 'solids', share: DRAWINGS_share + ((1 - DRAWINGS_share) * index) / makers.length }
    solids.push(make())
  }
  return {
    files: [
      { name: 'parts-list.csv', text: partsFile(design) },
      { name: 'inspection-plan.csv', text: planFile(variation) },
      { name: 'coating-note.txt', text: coatingNote(shop) },
      ...sheets.map((sheet) => ({ name: `drawing-${sheet.name}.svg`, text: `${svgText(sheetShape(sheet))}\n` })),
      ...solids.flatMap(({ files = [] }) => files),
    ],
    drawings: drawingsJob(`${design.title}: shop drawings`, sheets),
    left: [...left, ...solids.flatMap(({ why }) => (why === undefined ? [] : [why]))],
  }
}

interface Solid {
  readonly files?: readonly ShopFile[]
  readonly why?: string
}

function solid(name: string, bodies: readonly FlatBody[]): Solid {
  const step = { name: `${name}.step`, text: stepFile(name, bodies) }
  const stl = stlFile(name, bodies)
  if (stl !== undefined) return { files: [step, { name: `${name}.stl`, text: stl }] }
  return { files: [step], why: `${name} has no STL file: two of its holes run into each other, or its outline crosses itself` }
}

function partSolids({ parts, screws = [] }: Design): readonly (() => Solid)[] {
  return parts.map((part, index) => () => {
    const bodies = partBodies(part)
    if (bodies.length === 0) {
      return { why: `parts.${part.id} has no ${part.outline.length === 0 ? 'outline' : 'thickness'}, so that it has no solid` }
    }
    const made = solid(`part-${part.id}`, bodies)
    if (!screws.some((screw) => screw.part === index)) return made
    const plain = `part-${part.id} is solid where its threads go: they stand on its drawing and are not in its STEP and STL files`
    return { ...made, why: made.why === undefined ? plain : `${made.why}; ${plain}` }
  })
}

function pinSolids(design: Design): readonly (() => Solid)[] {
  const lengths = new Map(
    partsList(design).items.flatMap(({ kind, id, size }) => (kind === 'pin' ? [[id, size?.length_mm] as const] : [])),
  )
  return design.pins.map((pin) => () => {
    const length_mm = lengths.get(pin.id)
    if (length_mm !== undefined) return solid(`pin-${pin.id}`, [pinBody(pin, length_mm)])
    return { why: `the length of pins.${pin.id} is not known: its parts do not say where they lie across the finger` }
  })
}
