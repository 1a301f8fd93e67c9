/** What goes to the shop, as files: the parts list, and a solid for every part and pin that has a shape. */
import { type Design, partsList } from '../../engine/index.ts'
import { partBodies, pinBody } from '../solids/flat-body.ts'
import { stepFile } from '../solids/step-file.ts'
import { partsFile } from './parts-file.ts'

export interface ShopFile {
  readonly name: string
  readonly text: string
}

/** The files, and what has none and why. The same design gives the same bytes. */
export interface ShopFiles {
  readonly files: readonly ShopFile[]
  readonly left: readonly string[]
}

/** @param design as it goes to the shop */
export function shopFiles(design: Design): ShopFiles {
  const solids = [...partSolids(design), ...pinSolids(design)]
  return {
    files: [
      { name: 'parts-list.csv', text: partsFile(design) },
      ...solids.flatMap(({ file }) => (file === undefined ? [] : [file])),
    ],
    left: solids.flatMap(({ why }) => (why === undefined ? [] : [why])),
  }
}

interface Solid {
  readonly file?: ShopFile
  readonly why?: string
}

function partSolids({ parts }: Design): readonly Solid[] {
  return parts.map((part) => {
    const bodies = partBodies(part)
    const name = `part-${part.id}`
    if (bodies.length > 0) return { file: { name: `${name}.step`, text: stepFile(name, bodies) } }
    return { why: `parts.${part.id} has no ${part.outline.length === 0 ? 'outline' : 'thickness'}, so that it has no solid` }
  })
}

function pinSolids(design: Design): readonly Solid[] {
  const lengths = new Map(
    partsList(design).items.flatMap(({ kind, id, size }) => (kind === 'pin' ? [[id, size?.length_mm] as const] : [])),
  )
  return design.pins.map((pin) => {
    const length_mm = lengths.get(pin.id)
    const name = `pin-${pin.id}`
    if (length_mm !== undefined) return { file: { name: `${name}.step`, text: stepFile(name, [pinBody(pin, length_mm)]) } }
    return { why: `the length of pins.${pin.id} is not known: its parts do not say where they lie across the finger` }
  })
}
