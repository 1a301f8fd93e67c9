import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { readVariation } from '../sources/read-variation.ts'
import { drawing } from './drawn-sets.ts'
import type { NoSurface, SurfaceProblem } from './surface-problem.ts'
import { surfaceProblemOf } from './surface-problem-of.ts'

const [heron, kestrel] = ['heron', 'kestrel'].map((name) =>
  readFileSync(join(import.meta.dirname, `../../../designs/${name}.json`), 'utf8'),
)

function problemOf(text: string): SurfaceProblem | NoSurface {
  const { value, problems } = readVariation(text)
  if (!value) throw new Error(JSON.stringify(problems))
  return surfaceProblemOf(value)
}

function servedBy(text: string): SurfaceProblem {
  const problem = problemOf(text)
  if ('why' in problem) throw new Error(problem.why)
  return problem
}

it('gives numbers that say of each set of the example whether its requirements are met, and the same ones asked for alone', () => {
  const { sources, numbers, judge } = servedBy(heron)
  const sets = drawing(sources, 5).firstValues(48)
  const contact = numbers.findIndex(({ words }) => words === 'Margin of stop shelf against a dent')
  const seen = new Set<string>()
  for (let set = 0; set < 48; set += 4) {
    const { numbers: found, verdicts = [] } = judge(sets[set])
    for (const [requirement, verdict] of verdicts.entries()) {
      const own = numbers.flatMap((behind, place) => (behind.requirement === requirement ? [found[place]] : []))
      expect(own.length).toBeGreaterThan(0)
      // SOURCE property: above nothing in all, or below in one
      expect(own.every((number) => number > 0)).toBe(verdict === 'met')
      seen.add(verdict)
    }
    expect(judge(sets[set], [contact]).numbers[contact]).toBe(found[contact])
  }
  expect(seen).toEqual(new Set(['met', 'short']))
})

it('has every number above nothing for a finger that is met as drawn, also where it closes past dead centre', () => {
  const { sources, numbers, judge } = servedBy(kestrel)
  const { numbers: found, verdicts = [] } = judge(sources.map(({ nominal }) => nominal))
  expect(new Set(verdicts)).toEqual(new Set(['met']))
  expect(numbers.map(({ words }) => words)).toContain('Dead-centre margin of toggle knee, closed')
  for (const number of Array.from(found)) expect(number).toBeGreaterThan(0)
})

it('names the requirement that no number stands behind', () => {
  const document = JSON.parse(heron)
  document.requirements.backHolds.is = false
  expect(problemOf(JSON.stringify(document))).toEqual({
    why: 'no number stands behind “Holds by itself, Push on the back of the distal phalanx”',
  })
})
