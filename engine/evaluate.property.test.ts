import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Design } from './design/design.ts'
import { figureNames } from './design/figure-names.ts'
import { readDesign } from './design/read-design.ts'
import { evaluate, workingsOf } from './evaluate.ts'
import { forcesAt, postureAt } from './figures/at-posture.ts'
import type { Evaluation, Question } from './figures/evaluation.ts'
import { garbled } from './sketches/garbled-finger.ts'
import { seeded } from './sketches/seeded.ts'

function shown(name: string): Design {
  const { value } = readDesign(readFileSync(new URL(`../designs/${name}.json`, import.meta.url), 'utf8'), name)
  if (!value) throw new Error(`${name} is refused`)
  return value
}

/** Whether anything in a value is a number that is none, or without end. */
function hasBadNumber(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isFinite(value)
  if (typeof value !== 'object' || value === null) return false
  if (value instanceof Float64Array) return value.some((entry) => !Number.isFinite(entry))
  return Object.values(value).some(hasBadNumber)
}

function questionsOf({ loadCases }: Design): Question[] {
  return [
    { kind: 'return' },
    ...loadCases.flatMap(({ id }): Question[] => [
      { kind: 'hold', loadCase: id },
      { kind: 'close', loadCase: id },
    ]),
  ]
}

/** What is wrong with what is said of a design; nothing when all is well. */
function faultsOf({ design, figures, findings, problems, travel, ...rest }: Evaluation): string[] {
  const faults: string[] = []
  for (const [part, value] of Object.entries({ figures, findings, problems, travel, rest }))
    if (hasBadNumber(value)) faults.push(part)
  for (const { id, value, why } of figures) if (value === undefined && !why) faults.push(`${id} without value or reason`)
  if (findings.length !== design.requirements.length) faults.push('a requirement without a finding')
  for (const { verdict, why, figure, requirement } of findings) {
    if (verdict === 'undecided' && !why) faults.push(`${requirement.id} undecided without a reason`)
    if (verdict === 'met' && figure?.value === undefined && figure?.beyond === undefined)
      faults.push(`${requirement.id} met by nothing`)
  }
  return faults
}

/** What is wrong with how its figures come about. */
function workingFaultsOf({ design, figures }: Evaluation): string[] {
  const workings = workingsOf(design)
  return figures.flatMap(({ id }) => {
    const working = workings.get(id)
    if (!working?.method || !working.source) return [`${id} without method or source`]
    return hasBadNumber(working) ? [`${id} with a number that is none in its working`] : []
  })
}

/** Figures of the catalogue that a travelled design has not been given. */
function missingOf({ design, figures }: Evaluation): string[] {
  const found = new Set(figures.map((figure) => figure.id))
  const sideways = new Set(
    design.loadCases.filter(({ forces, couples }) => forces.length + couples.length === 0).map(({ id }) => id),
  )
  return figureNames(design).flatMap(({ id }) => {
    // Pins that join no two phalanges have no flexion, and a case that acts out of the plane has no shares.
    if (id.includes('.joint.') && id.endsWith('.flexion')) return []
    if (id.includes('.share.') && sideways.has(id.split('.')[1])) return []
    return found.has(id) ? [] : [id]
  })
}

describe('a design put out of order', () => {
  for (const [name, times] of [
    ['heron', 150],
    ['kestrel', 100],
    ['heron-jams', 40],
  ] as const) {
    it(`is evaluated without a throw or a number that is none: ${name}`, () => {
      // SOURCE property: whatever the document allows has an evaluation, and every figure a value or a reason
      const design = shown(name)
      let travelled = 0
      for (let seed = 1; seed <= times; seed++) {
        const changed = garbled(design, seeded(seed))
        const evaluation = evaluate(changed)
        expect(faultsOf(evaluation), `seed ${seed}`).toEqual([])
        if (!evaluation.travel) {
          expect(evaluation.problems.length, `seed ${seed}`).toBeGreaterThan(0)
          continue
        }
        expect(missingOf(evaluation), `seed ${seed}`).toEqual([])
        travelled++
        if (seed % 5 > 0) continue
        expect(workingFaultsOf(evaluation), `seed ${seed}`).toEqual([])
        for (const arc_ratio of [0, 0.7, 1, 1.3]) {
          expect(hasBadNumber(postureAt(evaluation, arc_ratio))).toBe(false)
          for (const question of questionsOf(changed)) expect(hasBadNumber(forcesAt(evaluation, arc_ratio, question))).toBe(false)
        }
      }
      // SOURCE property: more than half of them still move
      expect(travelled).toBeGreaterThan(times / 2)
    })
  }
})

describe('an evaluation', () => {
  it('is the same to the last byte a second time', () => {
    // SOURCE property: nothing but the design goes in
    for (const name of ['heron', 'kestrel', 'heron-jams', 'heron-stop-at-mcp']) {
      const [first, second] = [evaluate(shown(name)), evaluate(shown(name))].map((evaluation) => JSON.stringify(evaluation))
      expect(second).toBe(first)
    }
  })

  it('leaves the design as it was', () => {
    const design = shown('heron')
    const before = JSON.stringify(design)
    evaluate(design)
    expect(JSON.stringify(design)).toBe(before)
  })

  it('says the same whether another design was evaluated in between', () => {
    // SOURCE property: no state is kept from one design to the next
    const heron = shown('heron')
    const alone = JSON.stringify(evaluate(heron))
    evaluate(shown('kestrel'))
    expect(JSON.stringify(evaluate(heron))).toBe(alone)
  })
})
