/** Bench tests as the bench book keeps them, turned into what is compared with the prediction and into runs. */
import type { BenchTest, FigureName, Run } from '../../../engine/index.ts'
import type { TestKind } from '../entries/read-test.ts'
import type { ToldTest } from '../kept-words.ts'

/** A test with the serial number that it was done on, as it is kept; one that another corrects does not stand. */
export interface SerialTest extends ToldTest {
  readonly serial: string
  readonly correctedBy?: number
}

const standing = (tests: readonly SerialTest[], kind: TestKind): readonly SerialTest[] =>
  tests.filter(({ test, correctedBy }) => test === kind && correctedBy === undefined)

/** What a rig measured where it was said of which figure, as tests of that; without a word the rig counts as exact. */
export function figuredTests(tests: readonly SerialTest[]): readonly BenchTest[] {
  return tests.flatMap(({ serial, value, figure, uncertainty = 0, correctedBy }) =>
    figure === undefined || correctedBy !== undefined ? [] : [{ serial, figure, found: value, uncertainty }],
  )
}

/** What was measured of one kind without a word of which figure. */
export const unnamedTests = (tests: readonly SerialTest[], kind: TestKind): readonly SerialTest[] =>
  standing(tests, kind).filter(({ outcome, figure }) => outcome === 'measured' && figure === undefined)

/** The same as tests of a figure that is chosen for them. @param uncertainty expanded (k = 2), in the figure's unit */
export function measuredTests(
  tests: readonly SerialTest[],
  { kind, figure, uncertainty }: { readonly kind: TestKind; readonly figure: string; readonly uncertainty: number },
): readonly BenchTest[] {
  return unnamedTests(tests, kind).map(({ serial, value }) => ({ serial, figure, found: value, uncertainty }))
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
