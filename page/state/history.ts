/** What was done to a design's text, step by step, so that each step can be undone and done again. Values only: nothing here is changed in place. */
import { applySplice, inverseSplice, type Splice, spliceBetween } from '../../engine/index.ts'
import { fewWords } from './said.ts'

/** One thing that was done: how the text changed, and in a few words what it was. */
export interface Step {
  readonly splice: Splice
  readonly said: string
}

/** A text with its way there. Steps before `position` are done, those behind it were undone and wait. */
export interface History {
  readonly text: string
  readonly steps: readonly Step[]
  readonly position: number
}

/** What is done next: the text as it will be, in words. */
export interface Deed {
  readonly text: string
  readonly said: string
}

/** A text to which nothing was done. */
export function begun(text: string): History {
  return { text, steps: [], position: 0 }
}

/** One step more; steps that waited to be done again are given up. A deed that changes nothing is no step. */
export function taken(history: History, { text, said }: Deed): History {
  if (text === history.text) return history
  const done = history.steps.slice(0, history.position)
  const steps = [...done, { splice: spliceBetween(history.text, text), said: fewWords(said) }]
  return { text, steps, position: steps.length }
}

/** One step back; the same history where nothing was done. */
export function undone(history: History): History {
  const step = history.steps[history.position - 1]
  if (step === undefined) return history
  return { ...history, text: applySplice(history.text, inverseSplice(step.splice)), position: history.position - 1 }
}

/** One step forth; the same history where nothing waits. */
export function redone(history: History): History {
  const step = history.steps[history.position]
  if (step === undefined) return history
  return { ...history, text: applySplice(history.text, step.splice), position: history.position + 1 }
}

/** The history as it stood after so many of its steps; less than none are none, more than all are all. */
export function standing(history: History, steps_count: number): History {
  const position = Math.min(Math.max(0, steps_count), history.steps.length)
  let stood = history
  while (stood.position > position) stood = undone(stood)
  while (stood.position < position) stood = redone(stood)
  return stood
}
