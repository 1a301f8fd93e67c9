/** What is changed about the sets of a run: plain data, so that a worker can be handed it. */
import type { SpreadProblem } from './spread-problem.ts'

/** A tolerance changes under a set, which keeps its place in it: a value becomes `to` + `factor` × (value − `from`). */
export interface Move {
  readonly from: number
  readonly to: number
  readonly factor: number
}

/** Values of some sources that are moved, and a stop that stands elsewhere. */
export interface SetChange {
  readonly moves: readonly (Move & { readonly source: number })[]
  /** How far the stop is set back, mm; left out: it stays. */
  readonly stopSetBack_mm?: number
}

/** A value that was moved. */
export function movedBy({ from, to, factor }: Move, value: number): number {
  return to + factor * (value - from)
}

/** Values of the sources, those moved that a change names. */
export function movedValues(moves: SetChange['moves'], values: ArrayLike<number>): Float64Array {
  const out = Float64Array.from(values)
  for (const { source, ...move } of moves) out[source] = movedBy(move, values[source])
  return out
}

/** The same problem, whose judge sees every set changed. @throws where a stop is set back that does not end the travel */
export function changedProblem(problem: SpreadProblem, { moves, stopSetBack_mm }: SetChange): SpreadProblem {
  const standing = stopSetBack_mm === undefined ? problem : problem.window?.stopSetBack?.(stopSetBack_mm)
  if (!standing) throw new Error('a stop is set back that does not end the travel')
  return { ...standing, judge: (values) => standing.judge(movedValues(moves, values)) }
}
