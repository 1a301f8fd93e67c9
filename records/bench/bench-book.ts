/** What the bench book of a store tells. Times are ISO 8601 in UTC, days are ISO 8601. */
import type { Characteristic, Problem } from '../../engine/index.ts'
import type { BenchEntry, EntryOf } from './entry-rules.ts'

/** Who made an entry, and when it came into the store. */
export interface Signed {
  readonly who: string
  readonly made: string
}

/** Entries that are kept together or not at all. */
export interface NewEntries {
  readonly entries: readonly BenchEntry[]
  readonly who: string
  /** Name and version of the engine, which goes with a plan that is frozen. */
  readonly engine: string
  /** Where they come from a file: its name and text; the same text is not taken twice for one lot. */
  readonly file?: { readonly lot: string; readonly name: string; readonly text: string }
}

/** Numbers of the readings that were kept, or every problem, by the place of its entry (`entry 3`); then nothing was kept. */
export type KeptEntries = { readonly kept: readonly number[] } | { readonly refused: readonly Problem[] }

/** A calibration of a gauge. */
export interface Gauge extends Signed, Omit<EntryOf<'gauge'>, 'kind'> {
  readonly id: number
  /** Number of the entry that corrects it; then it does not stand. */
  readonly correctedBy?: number
}

/** A table that was taken in as a whole. */
export interface KeptImport extends Signed {
  readonly id: number
  readonly file: string
  /** How many readings came with it. */
  readonly readings: number
  /** Absent while its readings count. */
  readonly withdrawn?: Withdrawn
}

/** Why an import was taken back as a whole, by whom, and when. */
export interface Withdrawn extends Signed {
  readonly reason: string
}

/** A lot in a list. */
export interface LotEntry extends Signed {
  readonly lot: string
  readonly revision: number
  readonly note?: string
  /** Serial numbers in the order in which they came, each with how many readings of it stand. */
  readonly serials: readonly { readonly serial: string; readonly piece?: string; readonly readings: number }[]
  /** Tables that were taken in, oldest first. */
  readonly imports: readonly KeptImport[]
}

/** A reading that is kept. One that another corrects does not stand any more, nor does one that was withdrawn or has no value. */
export interface KeptReading extends Signed, Omit<EntryOf<'reading'>, 'kind' | 'serial' | 'number'> {
  readonly id: number
  /** Number of the reading that corrects it; of one that was withdrawn with its import the next that stands. */
  readonly correctedBy?: number
  /** Day of the calibration that its gauge had, and the least step that it shows. */
  readonly calibrated?: string
  readonly resolution_mm?: number
  /** Set where its whole import was taken back. */
  readonly withdrawn?: Withdrawn
  /** File from which it was imported. */
  readonly file?: string
}

/** A reading with the serial number that it is of. */
export interface LotReading extends KeptReading {
  readonly serial: string
}

type Numbered<Kind extends BenchEntry['kind']> = Signed & Omit<EntryOf<Kind>, 'kind' | 'serial'> & { readonly id: number }

/** A bench test that is kept; of a photo it says only that there is one. */
export type KeptTest = Omit<Numbered<'test'>, 'photoFile'> & { readonly hasPhoto: boolean; readonly correctedBy?: number }
/** A decision that is kept. */
export type KeptDecision = Numbered<'decision'> & { readonly correctedBy?: number }
/** A certificate that is kept. */
export type KeptCertificate = Numbered<'certificate'> & { readonly correctedBy?: number }

/** A return or a complaint that is kept, with the lot and revision of its set. */
export interface KeptField extends Signed, Omit<EntryOf<'field'>, 'kind'> {
  readonly id: number
  readonly lot: string
  readonly revision: number
  readonly correctedBy?: number
}
/** A bench test with the set that it was of. */
export interface TestOfSet extends KeptTest {
  readonly serial: string
  readonly lot: string
  readonly revision: number
}

/** Everything about one serial number, oldest first. */
export interface SerialHistory extends Signed {
  readonly serial: string
  /** What it is, where it is not a whole set. */
  readonly piece?: string
  readonly lot: string
  readonly revision: number
  /** The frozen plan of the revision. */
  readonly plan: readonly Characteristic[]
  readonly readings: readonly KeptReading[]
  /** Of its lot. */
  readonly certificates: readonly KeptCertificate[]
  readonly tests: readonly KeptTest[]
  readonly decisions: readonly KeptDecision[]
  /** What came back of it. */
  readonly field: readonly KeptField[]
  /** Of its lot as a whole, and of itself. */
  readonly signOffs: readonly (Omit<Numbered<'sign-off'>, 'serial'> & { readonly serial?: string })[]
}

/** What is judged of one set of a lot: what was read of it, and what stands about it on paper. */
export type SetOfLot = Pick<SerialHistory, 'serial' | 'readings' | 'certificates' | 'decisions' | 'signOffs'>

/** A photo of a bench test. */
export interface Photo {
  readonly type: 'image/jpeg' | 'image/png'
  readonly bytes: Uint8Array
}

/** The bench book of a store: append-only. Every function throws a `StoreFault` when the store cannot be read or written. */
export interface BenchBook {
  /** Every gauge as it stands since its last calibration, by name. */
  readonly gauges: () => readonly Gauge[]
  /** Every calibration, those that were corrected too, by the name of the gauge, oldest first. */
  readonly calibrations: () => readonly Gauge[]
  /** Lots of a design, oldest first; empty for a design that is not in the store. */
  readonly lots: (design: string) => readonly LotEntry[]
  /** The frozen plan of a revision; undefined before the first lot of it. */
  readonly plan: (design: string, revision: number) => readonly Characteristic[] | undefined
  readonly serial: (design: string, serial: string) => SerialHistory | undefined
  /** Every reading of a lot, oldest first, those that were corrected too; undefined for a lot that is not there. */
  readonly readings: (design: string, lot: string) => readonly LotReading[] | undefined
  /** Every set of a lot, in the order in which they came; undefined for a lot that is not there. */
  readonly sets: (design: string, lot: string) => readonly SetOfLot[] | undefined
  /** @param id of a bench test of this design */
  readonly photo: (design: string, id: number) => Photo | undefined
  /** Returns and complaints of a design, oldest first. */
  readonly field: (design: string) => readonly KeptField[]
  /** Every bench test of a design, oldest first. */
  readonly tests: (design: string) => readonly TestOfSet[]
  /** Keeps all entries or none. */
  readonly keepEntries: (design: string, entries: NewEntries) => KeptEntries
}
