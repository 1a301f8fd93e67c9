/** What is noted while a finger wears: points of the curves, films that go, and when each requirement turns. */
import type { Verdict } from '../../figures/evaluation.ts'
import type { Mechanism } from '../../motion/mechanism.ts'
import { limits } from '../../numbers/limits.ts'
import { type Inspected, letsGo, pointOf } from './inspect.ts'
import type { BareAt, Wear, WearFinding, WearPoint } from './wear.ts'
import type { WornThrough } from './wear-state.ts'
import { type FirstClosing, wornPlaces } from './worn-places.ts'

/** See `keepDiary`. */
export interface Diary {
  /** The latest entry. */
  readonly last: Inspected
  readonly letGoAsNew: boolean
  /** What rubs in a closing, and what that takes off; the first is kept, the finger as new. */
  rubs: (closing: FirstClosing) => void
  /** A step of wear. @param between the finger after part of the closings of that step */
  step: (from: Inspected, to: Inspected, between: (closings: number) => Inspected) => void
  /** Films that went at the latest entry, and the finger without them. */
  bared: (films: readonly WornThrough[], bare: Inspected) => void
  /** Nothing that was met as new is met any more. */
  isDone: () => boolean
  told: (mechanism: Mechanism) => Pick<Wear, 'points' | 'findings' | 'films' | 'places'>
}

/** Begins with the finger as new. */
export function keepDiary(asNew: Inspected): Diary {
  const points: WearPoint[] = [pointOf(asNew)]
  const films: BareAt[] = []
  const turned = new Map<string, Turned>()
  let last = asNew
  let first: FirstClosing | undefined
  return {
    get last() {
      return last
    },
    letGoAsNew: letsGo(asNew),
    rubs: (closing) => {
      first ??= closing
    },
    step: (from, to, between) => {
      noteTurns(turned, { asNew, to }, (requirement) => turningPoint(from, { to, between, requirement }))
      points.push(pointOf(to))
      last = to
    },
    bared: (gone, bare) => {
      const { closings } = bare.state
      films.push(...gone.map((film) => ({ ...film, closings })))
      noteTurns(turned, { asNew, to: bare }, () => closings)
      points.push(pointOf(bare))
      last = bare
    },
    isDone: () => asNew.evaluation.findings.every(({ requirement, verdict }) => verdict !== 'met' || turned.has(requirement.id)),
    told: (mechanism) => ({
      points,
      films,
      findings: asNew.evaluation.findings.map(({ requirement: { id, figure }, verdict }): WearFinding => {
        return { requirement: id, figure, asNew: verdict, ...turned.get(id) }
      }),
      places: first ? wornPlaces(mechanism, last, first) : [],
    }),
  }
}

interface Turned {
  readonly until: number
  readonly becomes: Verdict
}

/** Requirements that were met as new and have just turned, with when. */
function noteTurns(
  turned: Map<string, Turned>,
  { asNew, to }: { readonly asNew: Inspected; readonly to: Inspected },
  untilOf: (requirement: string) => number,
): void {
  for (const { requirement, verdict } of to.evaluation.findings) {
    if (verdict === 'met' || turned.has(requirement.id) || verdictOf(asNew, requirement.id) !== 'met') continue
    turned.set(requirement.id, { until: untilOf(requirement.id), becomes: verdict })
  }
}

function verdictOf({ evaluation }: Inspected, requirement: string): Verdict | undefined {
  return evaluation.findings.find((finding) => finding.requirement.id === requirement)?.verdict
}

interface Turn {
  readonly to: Inspected
  readonly between: (closings: number) => Inspected
  readonly requirement: string
}

/** Closings at which a requirement that is met at the beginning of a step and not at its end turns: it is not met there. */
function turningPoint(from: Inspected, { to, between, requirement }: Turn): number {
  let [low, high] = [0, to.state.closings - from.state.closings]
  for (let halving = 0; halving < limits.wearHalvings; halving++) {
    const middle = (low + high) / 2
    if (verdictOf(between(middle), requirement) === 'met') low = middle
    else high = middle
  }
  return from.state.closings + high
}
