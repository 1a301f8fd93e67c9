import type { BenchTest, Design, Problem, Run } from '../../../engine/index.ts'
import { fileRows, isRunsTable, readBenchTests, readRuns, type SerialTest } from '../../../report/index.ts'
import { sharedState, useShared } from '../../state/shared-state.ts'
import { fetchBench, fetchSerial } from '../bench/bench.ts'
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

/** Takes every test that the bench book keeps of a design. @returns how many. @throws Error in words */
export async function takeKeptTests(design: string): Promise<number> {
  const { lots } = await fetchBench(design)
  const serials = lots.flatMap((lot) => lot.serials.map(({ serial }) => serial))
  const found = await Promise.all(serials.map((serial) => fetchSerial(design, serial)))
  const kept = found.flatMap(({ serial, tests }) => tests.map((test): SerialTest => ({ ...test, serial })))
  testsNow.set({ ...NOTHING, from: 'the bench', kept })
  return kept.length
}
