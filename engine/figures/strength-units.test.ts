import { describe, expect, it } from 'vitest'
import { exampleText } from '../design/edit/test-support/example-texts.ts'
import { readDesign } from '../design/read-design.ts'
import { evaluate } from '../evaluate.ts'
import { inInches } from './test-support/in-inches.ts'

describe('the margins of a design in other units', () => {
  it.each(['heron', 'kestrel'])('of %s are the same', (name) => {
    const text = exampleText(name)
    const other = inInches(text)
    expect(other.match(/ (in|lbf)\b/g)?.length).toBeGreaterThan(100)
    const [metric, inches] = [text, other].map((one) => evaluate(readDesign(one).value!).strength?.ranked ?? [])
    expect(metric.length).toBeGreaterThan(20)
    const byFigure = new Map(inches.map(({ figure, margin }) => [figure, margin]))
    // SOURCE property (units cancel; no margin is NaN)
    for (const { figure, margin } of metric) {
      const ratio = ((byFigure.get(figure) ?? Number.NaN) + 1) / (margin + 1)
      expect(Math.abs(ratio - 1), figure).toBeLessThan(1e-9)
    }
  })
})
