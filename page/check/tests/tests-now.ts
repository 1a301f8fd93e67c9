import { type BenchTest, bookFor, type Design, type Problem, type Run } from '../../../engine/index.ts'
import { figuredTests, fileRows, isRunsTable, readBenchTests, readRuns, type SerialTest } from '../../../report/index.ts'
import { sharedState, useShared } from '../../state/shared-state.ts'
import { fetchBook } from '../bench/bench.ts'
import { readTableFile } from '../read-table-file.ts'

/** Tests that were opened: as the bench book keeps them, or from a file with what they are of. */
export interface OpenedTests {
  /** A file by its name, or the bench in words. */
  readonly from: string
  readonly kept: readonly SerialTest[]
  readonly tests: readonly BenchTest[]
  readonly runs: readonly Run[]
  readonly problems: readonly Problem[]
}

const NOTHING = { kept: [], tests: [], runs: [], problems: [] }

const testsNow = sharedState<OpenedTests | undefined>(undefined)

/** The tests that the page last opened. */
export const useTests = (): OpenedTests | undefined => useShared(testsNow)

/** Takes a file of tests against figures, or of runs. */
export async function openTests(file: File, design: Design): Promise<void> {
  const from = file.name
  const rows = fileRows(await readTableFile(file))
  if (rows.problems !== undefined) return testsNow.set({ ...NOTHING, from, problems: rows.problems })
  const read = isRunsTable(rows.value) ? readRuns(rows.value) : readBenchTests(rows.value, design)
  if (read.problems !== undefined) return testsNow.set({ ...NOTHING, from, problems: read.problems })
  const runs = isRunsTable(rows.value) ? { runs: read.value as readonly Run[] } : { tests: read.value as readonly BenchTest[] }
  testsNow.set({ ...NOTHING, from, ...runs })
}

/**
 * Takes the tests that the bench book keeps of sets that were made to this finger; others prove nothing of it.
 *
 * @returns what was taken, in words. @throws Error in words
 */
export async function takeKeptTests(design: string, text: string): Promise<string> {
  const { tests } = bookFor(text, await fetchBook(design))
  const kept = tests.filter(({ isOfThisFinger }) => isOfThisFinger)
  testsNow.set({ ...NOTHING, from: 'the bench', kept, tests: figuredTests(kept) })
  if (tests.length === 0) return 'No test is kept at the bench.'
  const others = tests.length - kept.length
  const taken = `${kept.length} ${kept.length === 1 ? 'test is' : 'tests are'} taken from the bench.`
  return others === 0
    ? taken
    : `${taken} ${others} of sets that were made to another finger ${others === 1 ? 'is' : 'are'} left out.`
}
