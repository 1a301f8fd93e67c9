/** Requirements against figures: met, short or undecided. */
import type { Requirement } from '../design/design.ts'
import type { Figure, Finding, Verdict } from './evaluation.ts'

/** Figures whose value hangs on a stiffness that nobody has stated, with the reason. */
export type Doubts = ReadonlyMap<string, string>

/** One finding a requirement, in the same order. A figure without a value, or in doubt, is undecided unless it lies beyond any bound. */
export function findingsOf(requirements: readonly Requirement[], figures: readonly Figure[], doubts: Doubts): Finding[] {
  const byId = new Map(figures.map((figure) => [figure.id, figure]))
  return requirements.map((requirement) => findingOf(requirement, byId.get(requirement.figure), doubts))
}

function findingOf(requirement: Requirement, figure: Figure | undefined, doubts: Doubts): Finding {
  if (!figure)
    return {
      requirement,
      verdict: 'undecided',
      why: 'this design has no such figure, or the finger could not be worked out that far',
    }
  if (figure.value === undefined) return withoutValue(requirement, figure)
  const doubt = doubts.get(figure.id)
  if (doubt !== undefined) return { requirement, figure, verdict: 'undecided', why: doubt }
  const { bound } = requirement
  if (bound.kind === 'is') return { requirement, figure, verdict: figure.value === bound.value ? 'met' : 'short' }
  if (typeof figure.value !== 'number') return { requirement, figure, verdict: 'undecided', why: 'this figure is not a number' }
  const margin = bound.kind === 'atLeast' ? figure.value - bound.value : bound.value - figure.value
  return { requirement, figure, verdict: margin >= 0 ? 'met' : 'short', margin }
}

/** A figure without a value decides a bound all the same where what is known of it is enough. */
function withoutValue(requirement: Requirement, figure: Figure): Finding {
  const [least, most] = knownRange(figure)
  const verdict = verdictWithin(requirement.bound, { least, most })
  return { requirement, figure, verdict, ...(figure.why !== undefined && { why: figure.why }) }
}

/** Between what a figure without a value is known to lie. */
function knownRange({ beyond, noMoreThan }: Figure): readonly [least: number, most: number] {
  if (beyond === 'above any') return [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
  if (beyond === 'below any') return [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  return [Number.NEGATIVE_INFINITY, noMoreThan ?? Number.POSITIVE_INFINITY]
}

function verdictWithin(bound: Requirement['bound'], { least, most }: { least: number; most: number }): Verdict {
  if (bound.kind === 'is') return 'undecided'
  if (bound.kind === 'atLeast') return least >= bound.value ? 'met' : most < bound.value ? 'short' : 'undecided'
  return most <= bound.value ? 'met' : least > bound.value ? 'short' : 'undecided'
}
