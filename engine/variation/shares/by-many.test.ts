import { expect, it } from 'vitest'
import { toleranceAdvice } from '../spread/advice.ts'
import { type Spread, spreadOf } from '../spread/spread.ts'
import { counted, judgeOf, smallProblem, standardNormals } from '../spread/test-support/small-problem.ts'
import { byMany, type Hands } from './by-many.ts'
import type { RunProgress } from './pieces.ts'
import type { SetsRun } from './sets-run.ts'

const problem = smallProblem({
  sources: standardNormals(3),
  figure: ([a, b, c]) => a + 2 * b + 0.01 * c,
  atLeast: -3,
})

/** Hands that answer late, the later the lower their number: shares come back out of order. */
const unlike: Hands = {
  count: 3,
  make: async (hand, asked) => {
    for (let waited = 0; waited < 40 - 13 * hand; waited++) await undefined
    return judgeOf(problem)(asked)
  },
}

/** A count with its advice, as a run over a design has them. */
function* countWithAdvice(): SetsRun<{ readonly spread: Spread; readonly advice: unknown }, never> {
  const run = spreadOf(problem, { seed: 2, samples: 1000 })
  let step = run.next([])
  while (step.done !== true) {
    const { reached: _, ...told } = step.value
    step = run.next(yield told)
  }
  return { spread: step.value, advice: yield* toleranceAdvice(problem, step.value) }
}

it('gives what one thread gives, whoever made the shares and in whatever order they come back', async () => {
  const told = await byMany(countWithAdvice(), { hands: unlike, tell: () => {}, isStopped: () => false })
  // SOURCE property
  expect(told).toEqual(counted(problem, countWithAdvice()))
  expect(told.advice).not.toEqual([])
})

it('keeps what it has reached when it is stopped, without a gap, and is that of a shorter count', async () => {
  const progress: RunProgress<Spread>[] = []
  const run = spreadOf(problem, { seed: 2, samples: 4000 })
  const told = await byMany(run, {
    hands: unlike,
    tell: (now) => void progress.push(now),
    isStopped: () => progress.some(({ doing, done }) => doing === 'samples' && done > 500),
  })
  const { to } = told.samples
  expect(to).toBeGreaterThan(500)
  expect(to).toBeLessThan(1000)
  // SOURCE property
  expect(told).toEqual(counted(problem, spreadOf(problem, { seed: 2, samples: to })))
  const reached = progress.at(-2)?.reached?.()
  expect(reached).toEqual(counted(problem, spreadOf(problem, { seed: 2, samples: reached?.samples.to ?? 0 })))
})

it('finishes what has reached nothing yet before it is left', async () => {
  // SOURCE property
  const told = await byMany(countWithAdvice(), { hands: unlike, tell: () => {}, isStopped: () => true })
  expect(told).toEqual(counted(problem, countWithAdvice()))
})
