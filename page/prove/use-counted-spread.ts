import type { DesignSpread } from '../../engine/index.ts'
import { spreadRun } from '../spread/spread-run.ts'

/** The sets of this very text, as far as they are counted; those of another text prove nothing of it. */
export function useCountedSpread(text: string | undefined): DesignSpread | undefined {
  const run = spreadRun.use()
  return run !== undefined && run.text === text ? run.reached : undefined
}
