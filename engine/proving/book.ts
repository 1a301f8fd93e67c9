/** What the bench book of a design says that its proof rests on: bench tests and what came back from the field, by serial number. */
import { changedValues } from '../design/edit/changed-values.ts'
import type { BookTest } from '../design/sections/proving.ts'

/** A set with its serial number, and the revision that it was made to. */
interface OfSet {
  readonly serial: string
  readonly lot: string
  readonly revision: number
}

/** A bench test as it was kept; one that another corrects does not stand any more. */
export interface TestInBook extends OfSet {
  readonly test: BookTest
  /** N, or closings. */
  readonly value: number
  /** Whether it did it, or what was measured. */
  readonly outcome: 'did' | 'did not' | 'measured'
  /** Figure that was measured, and what the rig left open either way, N (k = 2). */
  readonly figure?: string | undefined
  readonly uncertainty?: number | undefined
  readonly tested: string
  readonly rig: string
  readonly correctedBy?: number
}

/** A return or a complaint as it was kept, with the ids of the risks that it belongs to. */
export interface FieldEntry extends OfSet {
  readonly id: number
  readonly sort: 'return' | 'complaint'
  readonly came: string
  readonly told: string
  readonly found?: string | undefined
  readonly harm: 'nobody hurt' | 'somebody hurt' | 'not known'
  readonly risks: readonly string[]
  /** Who told it, as a key, and where the list is in which the key stands: neither name nor address is in the store. */
  readonly contact: string
  readonly contactsIn: string
  readonly correctedBy?: number
}

/** The bench book as a store keeps it. */
export interface BookAsKept {
  /** Whole sets that were entered with a serial number. */
  readonly sets: number
  readonly tests: readonly TestInBook[]
  readonly field: readonly FieldEntry[]
  /** Texts of the revisions that tested sets were made to. */
  readonly revisions: readonly { readonly number: number; readonly text: string }[]
}

/** What stands of a bench book, for one text of the design. */
export interface Book {
  readonly sets_count: number
  readonly tests: readonly (TestInBook & {
    /** Whether its set was made as the text has the finger. */
    readonly isOfThisFinger: boolean
  })[]
  readonly field: readonly FieldEntry[]
}

/** Sections that say what is asked and paid, not what the finger is. */
const SAYS_NOTHING_OF_THE_FINGER: ReadonlySet<string> = new Set([
  ...['title', 'note', 'requirements', 'demands', 'benchTests', 'riskScales', 'risks'],
  ...['orders', 'bought', 'making', 'use', 'factors'],
])

/** What stands of a bench book. A test of a set that was made to another finger proves nothing of this one. */
export function bookFor(text: string, { sets, tests, field, revisions }: BookAsKept): Book {
  const same = new Set(revisions.filter((revision) => isSameFinger(revision.text, text)).map(({ number }) => number))
  const stands = ({ correctedBy }: { readonly correctedBy?: number }) => correctedBy === undefined
  return {
    sets_count: sets,
    tests: tests.filter(stands).map((test) => ({ ...test, isOfThisFinger: same.has(test.revision) })),
    field: field.filter(stands),
  }
}

function isSameFinger(one: string, other: string): boolean {
  return changedValues(one, other).every(({ place }) => SAYS_NOTHING_OF_THE_FINGER.has(String(place[0])))
}
