import { writeFile } from 'node:fs/promises'
import { type Evaluation, forcesAt, postureAt } from '../engine/index.ts'
import { drawPosture, fileText, layoutSheet, setValue } from '../report/index.ts'
import { joined } from './columns.ts'
import { asWrongUse } from './design-file.ts'
import { placeOnTravel } from './place-on-travel.ts'
import { WrongUse } from './terminal.ts'

/** Width of a drawing in a file: that of a printed column at 96 px to the inch. */
const SHEET_px = 960

/** Where a drawing goes, and the posture as it was typed after `--at`. */
export interface DrawingAsked {
  readonly file: string
  readonly at: string
}

/**
 * Writes the finger at one posture, with the forces of the return, as an SVG that carries its own style.
 *
 * @throws WrongUse when the finger has no travel, `at` is not on it, or the file cannot be written
 */
export async function writeDrawing({ file, at }: DrawingAsked, evaluation: Evaluation): Promise<void> {
  const { design, travel } = evaluation
  if (travel === undefined) throw new WrongUse('--drawing: this finger does not move, so there is no posture to draw')
  const arc_ratio = placeOnTravel(at, evaluation)
  const posture = postureAt(evaluation, arc_ratio)
  const drive = setValue(posture.drive, travel.driveUnit)
  const sheet = layoutSheet({ design, travel, width_px: SHEET_px })
  const options = { sheet, idPrefix: 'finger', title: `${design.title}, drive at ${joined(drive)}` }
  const forces = forcesAt(evaluation, arc_ratio, { kind: 'return' })
  const { svg } = drawPosture({ design, travel, posture, forces }, options)
  try {
    await writeFile(file, fileText(svg))
  } catch (error) {
    throw asWrongUse(error, file)
  }
}
