/** Finds figures of an evaluation by their id. */
import type { Evaluation, Figure } from '../../engine/index.ts'

/** The figure of that id, when the evaluation has one. */
export function figureOf(evaluation: Evaluation, id: string): Figure | undefined {
  return evaluation.figures.find((figure) => figure.id === id)
}

/** Its value when it is a finite number, in the figure's unit. */
export function numberOf(evaluation: Evaluation, id: string): number | undefined {
  const value = figureOf(evaluation, id)?.value
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined
}

/** Its value when it is yes or no. */
export function answerOf(evaluation: Evaluation, id: string): boolean | undefined {
  const value = figureOf(evaluation, id)?.value
  return typeof value === 'boolean' ? value : undefined
}

/** Its value when it is words. */
export function wordsOf(evaluation: Evaluation, id: string): string | undefined {
  const value = figureOf(evaluation, id)?.value
  return typeof value === 'string' && value !== '' ? value : undefined
}
