/** Bench tests as the bench book keeps them, turned into what is compared with the prediction and into runs. */
import type { BenchTest, FigureName, Run } from '../../../engine/index.ts'
import type { TestEntry, TestKind } from '../entries/read-entry.ts'

/** A test with the serial number that it was done on, as it is kept; one that another corrects does not stand. */
export interface SerialTest extends Omit<TestEntry, 'kind'> {
  readonly correctedBy?: number
}

const standing = (tests: readonly SerialTest[], kind: TestKind): readonly SerialTest[] =>
  tests.filter(({ test, correctedBy }) => test === kind && correctedBy === undefined)

/** What a rig measured of one kind, as tests of a figure. @param uncertainty expanded (k = 2), in the figure's unit */
export function measuredTests(
  tests: readonly SerialTest[],
  { kind, figure, uncertainty }: { readonly kind: TestKind; readonly figure: string; readonly uncertainty: number },
): readonly BenchTest[] {
  return standing(tests, kind)
    .filter(({ outcome }) => outcome === 'measured')
    .map(({ serial, value }) => ({ serial, figure, found: value, uncertainty }))
}

/** What did and what did not, of one kind. */
export function testRuns(tests: readonly SerialTest[], kind: TestKind): readonly Run[] {
  return standing(tests, kind)
    .filter(({ outcome }) => outcome !== 'measured')
    .map(({ serial, value, outcome }) => ({ serial, reached: value, failed: outcome === 'did not' }))
}

/** The shortest run, or the least load: whatever passed it is counted there. @param runs at least one */
export const leastReached = (runs: readonly Run[]): number => Math.min(...runs.map(({ reached }) => reached))

/** The figure that a rig is mostly held against: what the keeper sustains. */
const SUSTAINS = /^loadCase\..*\.sustainingLoad$/

/** Figures that a rig can be held against, in N; the likeliest first. */
export function riggedFigures(names: readonly FigureName[]): readonly FigureName[] {
  const forces = names.filter(({ unit }) => unit === 'N')
  return [...forces.filter(({ id }) => SUSTAINS.test(id)), ...forces.filter(({ id }) => !SUSTAINS.test(id))]
}
