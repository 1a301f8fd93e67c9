import type { BenchTest } from '../design/design.ts'
import type { Book } from './book.ts'

/** What the bench book says of one kind of test, set by set. */
export interface TestsInBook {
  readonly tried_count: number
  readonly failed_count: number
  /** Serial numbers of the sets that were tried. */
  readonly serials: readonly string[]
  /** Day of the last of these tests. */
  readonly last: string
  /** Sets that were tried as well, but made to another finger than the one that is judged: they prove nothing of it. */
  readonly ofAnother_count: number
}

/**
 * Counts sets, not tests: one that failed once has failed. A set passes when it did it, or measured no less, at the asked value or more; it fails when it
 * did not, or measured less, at the asked value or less. What lies beside that (it did less, it did not do more) says nothing.
 *
 * @returns undefined for a test that names none in the book, and where the book has none
 */
export function testsInBook({ inBook }: BenchTest, book: Book | undefined): TestsInBook | undefined {
  if (!inBook || !book) return undefined
  const all = book.tests.filter(({ test }) => test === inBook.test)
  const own = all.filter(({ isOfThisFinger }) => isOfThisFinger)
  const failed = new Set(own.filter((test) => fails(test, inBook.least)).map(({ serial }) => serial))
  const passed = own.filter((test) => passes(test, inBook.least) && !failed.has(test.serial)).map(({ serial }) => serial)
  const serials = [...new Set([...failed, ...passed])]
  const others = new Set(all.filter(({ isOfThisFinger }) => !isOfThisFinger).map(({ serial }) => serial))
  if (serials.length + others.size === 0) return undefined
  const days = own.map(({ tested }) => tested).sort()
  return {
    tried_count: serials.length,
    failed_count: failed.size,
    serials,
    last: days.at(-1) ?? '',
    ofAnother_count: others.size,
  }
}

type Tried = Pick<Book['tests'][number], 'outcome' | 'value'>

function passes({ outcome, value }: Tried, least: number): boolean {
  return outcome !== 'did not' && value >= least
}

function fails({ outcome, value }: Tried, least: number): boolean {
  return outcome === 'measured' ? value < least : outcome === 'did not' && value <= least
}
