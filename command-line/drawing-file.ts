import { writeFile } from 'node:fs/promises'
import { type Evaluation, forcesAt, postureAt } from '../engine/index.ts'
import { cautionedFile, drawPosture, firstToGive, joined, layoutSheet, setValue } from '../report/index.ts'
import { asWrongUse } from './design-file.ts'
import type { Scope } from './exit-status.ts'
import { placeOnTravel } from './place-on-travel.ts'
import { WrongUse } from './terminal.ts'

/** Width of a drawing in a file: that of a printed column at 96 px to the inch. */
const SHEET_px = 960

/** Share of the way at which a finger stands closed. */
const CLOSED = 1

/** Where a drawing goes, the posture as it was typed after `--at`, and the question that it is drawn for. */
export interface DrawingAsked {
  readonly file: string
  readonly at: string | undefined
  readonly scope: Scope
}

/**
 * Writes the finger at one posture as an SVG that carries its own style: closed and with the forces of the return, unless told otherwise; for
 * Strength with the load of what gives first, where it does.
 *
 * @throws WrongUse when the finger has no travel, `at` is not on it, or the file cannot be written
 */
export async function writeDrawing({ file, at, scope }: DrawingAsked, evaluation: Evaluation): Promise<void> {
  const { design, travel } = evaluation
  if (travel === undefined) throw new WrongUse('--drawing: this finger does not move, so there is no posture to draw')
  const first = scope === 'strength' ? firstToGive(evaluation) : undefined
  const arc_ratio = at === undefined ? (first?.arc_ratio ?? CLOSED) : placeOnTravel(at, evaluation)
  const posture = postureAt(evaluation, arc_ratio)
  const drive = setValue(posture.drive, travel.driveUnit)
  const sheet = layoutSheet({ design, travel, width_px: SHEET_px })
  const options = { sheet, idPrefix: 'finger', title: `${design.title}, drive at ${joined(drive)}` }
  const forces = forcesAt(evaluation, arc_ratio, first?.question ?? { kind: 'return' })
  const { svg } = drawPosture({ design, travel, posture, forces }, options)
  try {
    await writeFile(file, cautionedFile(svg))
  } catch (error) {
    throw asWrongUse(error, file)
  }
}
