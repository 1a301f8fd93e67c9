/**
 * The verdict marks. Met: a pin that fills its hole. Undecided: a pin half in. Short: a wedge that points down at what is missing. Not asked:
 * a dash. Each has a shape of its own, so that none depends on colour, and a word that stands beside it.
 */
import { element, type Shape } from '../drawing/svg.ts'
import type { Answer } from './overall-verdict.ts'

/** A mark's word and its one-character form for a terminal. */
export interface Mark {
  readonly word: string
  readonly character: string
}

/** Marks by answer. */
export const marks: Readonly<Record<Answer, Mark>> = {
  met: { word: 'met', character: '●' },
  short: { word: 'short', character: '▼' },
  undecided: { word: 'undecided', character: '◐' },
  notAsked: { word: 'not asked', character: '–' },
}

/** The mark in a box of 16 px; it is decoration, the word beside it is read. */
export function drawMark(answer: Answer): Shape {
  const box = { class: `mark mark-${answer}`, viewBox: '0 0 16 16', width: 16, height: 16, 'aria-hidden': 'true' }
  return element('svg', { ...box, xmlns: 'http://www.w3.org/2000/svg' }, SHAPES[answer])
}

const ring = element('circle', { cx: 8, cy: 8, r: 6.5, fill: 'none', stroke: 'currentColor', 'stroke-width': 1.3 })
const SHAPES: Readonly<Record<Answer, readonly Shape[]>> = {
  met: [ring, element('circle', { cx: 8, cy: 8, r: 4.2, fill: 'currentColor' })],
  undecided: [ring, element('path', { d: 'M8 3.8A4.2 4.2 0 0 0 8 12.2Z', fill: 'currentColor' })],
  short: [element('path', { d: 'M1.5 2.5H14.5L8 14.5Z', fill: 'currentColor' })],
  notAsked: [element('path', { d: 'M3 8H13', stroke: 'currentColor', 'stroke-width': 1.5 })],
}
