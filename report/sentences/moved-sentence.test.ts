import { expect, it } from 'vitest'
import { whatMoved } from '../../engine/index.ts'
import { linesApart, movedSentence } from '../index.ts'
import { inventedEvaluation, inventedFinding } from '../test-support/invented-finger.ts'

const RAD = Math.PI / 180
const at = (margin_deg: number) =>
  inventedEvaluation({ findings: [withMargin(inventedFinding(margin_deg >= 0 ? 'met' : 'short', margin_deg * RAD), margin_deg)] })

/** The finding with its figure where the margin says that it is. */
function withMargin(finding: ReturnType<typeof inventedFinding>, margin_deg: number) {
  const figure = finding.figure!
  return { ...finding, figure: { ...figure, value: (7 + margin_deg) * RAD } }
}

it('names the figure with its value before and after', () => {
  const words = movedSentence(whatMoved(at(1.72), at(1.5)))
  // SOURCE hand (7° and the margins, three digits)
  expect(words).toContain('8.72° → 8.50°')
  expect(words).not.toContain('now')
  expect(words).toMatch(/^[A-Z].*\.$/)
})

it('says which requirement falls short now', () => {
  expect(movedSentence(whatMoved(at(1), at(-1)))).toContain('8.00° → 6.00°, now short')
  expect(movedSentence(whatMoved(at(-1), at(1)))).toContain('6.00° → 8.00°, now met')
})

it('takes as many digits as it needs to tell two values apart', () => {
  // SOURCE hand (0.02° of 12.5° shows in the fourth digit)
  expect(movedSentence(whatMoved(at(5.5), at(5.52)))).toContain('12.50° → 12.52°')
})

it('says that nothing moved', () => {
  expect(movedSentence(whatMoved(at(1), at(1)))).toMatch(/^Nothing moved/)
})

it('shows the lines in which two texts differ, whole', () => {
  expect(linesApart('{\n  "a": 1,\n  "b": 2\n}', '{\n  "a": 3,\n  "b": 2\n}')).toEqual(['  "a": 1,', '  "a": 3,'])
  expect(linesApart('same', 'same')).toEqual(['', ''])
  expect(linesApart('a', '')).toEqual(['a', ''])
})
