import { describe, expect, it } from 'vitest'
import { exampleText } from '../design/edit/test-support/example-texts.ts'
import { readDesign } from '../design/read-design.ts'
import { evaluate } from '../evaluate.ts'

/** SOURCE standard (the inch is 25.4 mm and the pound-force 4.4482216152605 N by definition: NIST SP 811, from memory) */
const MM_PER_IN = 25.4
const N_PER_LBF = 4.4482216152605

/** Every quantity of a document in inches and pounds instead of millimetres and newtons. */
function inInches(text: string): string {
  const units = [
    ['N\\*mm', 'lbf*in', N_PER_LBF * MM_PER_IN],
    ['N/mm', 'lbf/in', N_PER_LBF / MM_PER_IN],
    ['N(?![*/\\w])', 'lbf', N_PER_LBF],
    ['mm(?![*/^\\w])', 'in', MM_PER_IN],
  ] as const
  return units.reduce(
    (changed, [unit, other, size]) =>
      changed.replaceAll(
        new RegExp(`(?<=["( ])(-?\\d+(?:\\.\\d+)?) ${unit}`, 'g'),
        (_, number) => `${Number(number) / size} ${other}`,
      ),
    text,
  )
}

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
