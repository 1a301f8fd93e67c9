/** The finger at any posture of an evaluation as an SVG file that carries its own style. */
import { type Evaluation, forcesAt, postureAt, type Question } from '../../engine/index.ts'
import { drawPosture } from './draw-posture.ts'
import { fileText } from './file-text.ts'
import { layoutSheet } from './layout-finger.ts'
import { element } from './svg.ts'

const PAPER = '#fbf9f3'

/** Width of the sheet in px, 960 when absent; the forces that are shown, none when absent. */
export interface FingerFileOptions {
  readonly width_px?: number
  readonly question?: Question
}

/**
 * @param arc_ratio share of the travel, 0 open to 1 closed
 * @returns an SVG document; absent when the evaluation has no travel, because then there is no posture to draw
 */
export function drawFinger(evaluation: Evaluation, arc_ratio: number, options: FingerFileOptions = {}): string | undefined {
  const { design, travel } = evaluation
  if (travel === undefined) return undefined
  const sheet = layoutSheet({ design, travel, width_px: options.width_px ?? 960 })
  const { question } = options
  const forces = question === undefined ? {} : { forces: forcesAt(evaluation, arc_ratio, question), question }
  const picture = { design, travel, posture: postureAt(evaluation, arc_ratio), ...forces }
  const { svg } = drawPosture(picture, { sheet, idPrefix: 'f-', title: design.title })
  const paper = element('rect', { x: 0, y: 0, width: '100%', height: '100%', fill: PAPER })
  return fileText(svg, [paper])
}
