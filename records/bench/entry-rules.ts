/** What an entry of the bench book is like; every door is held to the same rules. A wearer is never named in one. */
import * as z from 'zod'
import { storeLimits } from '../limits.ts'
import { who, why, words } from '../store-rules.ts'
import { photo } from './photo-rule.ts'

const name = words(storeLimits.nameLength)
const text = words(storeLimits.whyLength)
const typed = words(storeLimits.typedLength)
const day = z.iso.date('is a day such as 2031-04-05')
const positive = z.number().positive().max(storeLimits.largestNumber)
const length_mm = z.number().min(0).max(storeLimits.largestNumber)
const place = words(storeLimits.givenNameLength)
const entryId = z.int().min(1)
const corrected = { corrects: entryId.optional(), reason: text.optional() }

/** A gauge as it stands since its last calibration; a further calibration is a further entry of its name. */
const gauge = z.strictObject({
  kind: z.literal('gauge'),
  gauge: name,
  resolution_mm: positive,
  uncertainty_mm: length_mm,
  calibrated: day,
  ...corrected,
})
/** A lot of sets made to one revision; the plan of that revision is frozen with it. */
const lot = z.strictObject({ kind: z.literal('lot'), lot: name, revision: z.int().min(1), note: text.optional() })
/** One set with its serial number, or one piece of it by its place in the design, such as `parts.middle`. */
const article = z.strictObject({ kind: z.literal('article'), lot: name, serial: name, piece: place.optional() })
/** A reading as it was typed and as it was read; without a value it takes back the one that it corrects. */
const reading = z.strictObject({
  kind: z.literal('reading'),
  serial: name,
  characteristic: place,
  visit: z.enum(['before coating', 'finished']),
  found: typed.optional(),
  x: typed.optional(),
  y: typed.optional(),
  uncertainty: typed.optional(),
  value: z
    .union([
      z.strictObject({ least: z.number(), most: z.number() }),
      z.strictObject({ x_mm: z.number(), y_mm: z.number(), uncertainty_mm: z.number().min(0) }),
    ])
    .optional(),
  gauge: name.optional(),
  /** Who measured and on which day, where it is told beside who enters it and when. */
  by: who.optional(),
  date: day.optional(),
  /** Its own number in the table that it comes from: a later entry of the same table that corrects this number means it. */
  number: entryId.optional(),
  ...corrected,
})
/** What the coater says of a lot: the thicknesses of the coupons, and how it was cured. */
const certificate = z.strictObject({
  kind: z.literal('certificate'),
  lot: name,
  coating: place,
  coupons_mm: z.array(positive).min(1).max(storeLimits.couponsAtOnce).readonly(),
  cure_degC: z.number().min(-storeLimits.largestNumber).max(storeLimits.largestNumber).optional(),
  cure_min: positive.optional(),
  issued: day,
  note: text.optional(),
  ...corrected,
})
/**
 * A photo goes in as base64 of a JPEG or PNG; `photo` alone says where one is kept. What was measured may say which figure of the design it is,
 * and what the rig leaves open either way (k = 2).
 */
const test = z.strictObject({
  kind: z.literal('test'),
  serial: name,
  test: z.enum(['load to hold', 'return after load', 'cycles', 'pinch force']),
  value: positive,
  outcome: z.enum(['did', 'did not', 'measured']),
  figure: place.optional(),
  uncertainty: z.number().min(0).max(storeLimits.largestNumber).optional(),
  tested: day,
  rig: name,
  note: text.optional(),
  photo: place.optional(),
  photoFile: photo.optional(),
  ...corrected,
})
/** What becomes of a set that is not as drawn. */
const decision = z.strictObject({
  kind: z.literal('decision'),
  serial: name,
  characteristic: place.optional(),
  decision: z.enum(['use as is', 'rework', 'scrap']),
  why,
  /** What was calculated of the set when it was decided. */
  consequence: text,
  ...corrected,
})
/** Takes back a whole import, such as one under a wrong mapping: its readings stay and count no longer, and the table may come in again. */
const withdrawal = z.strictObject({ kind: z.literal('withdrawal'), import: entryId, reason: text })
const signOff = z.strictObject({
  kind: z.literal('sign-off'),
  lot: name,
  serial: name.optional(),
  statement: text,
})
/** Nobody is named in the store, nor how to reach anybody: a key, and where the list is in which it stands. */
const contactKey = z
  .string()
  .trim()
  .regex(/^[A-Z]{1,4}-\d{1,6}$/, 'is a key such as C-014: a name, an address or a telephone number stays outside of the store')
/** What came back from the field of one set: a return or a complaint, and the risks that it belongs to; none where no risk has it. */
const field = z.strictObject({
  kind: z.literal('field'),
  serial: name,
  sort: z.enum(['return', 'complaint']),
  came: day,
  told: text,
  /** What the workshop found when it looked. */
  found: text.optional(),
  harm: z.enum(['nobody hurt', 'somebody hurt', 'not known']),
  risks: z.array(place).max(storeLimits.risksAtOnce),
  contact: contactKey,
  contactsIn: text,
  ...corrected,
})

/** One entry of the bench book. */
export const benchEntry = z.discriminatedUnion('kind', [
  gauge,
  lot,
  article,
  reading,
  certificate,
  test,
  decision,
  withdrawal,
  signOff,
  field,
])

/** Entries as they are typed at a door: readings come as rows of a table, because their values are read there. */
export const typedEntry = z.discriminatedUnion('kind', [
  gauge,
  lot,
  article,
  certificate,
  test,
  decision,
  withdrawal,
  signOff,
  field,
])

export type BenchEntry = z.infer<typeof benchEntry>
export type EntryOf<Kind extends BenchEntry['kind']> = Extract<BenchEntry, { readonly kind: Kind }>

/** Rules of single words, for doors that take them apart from an entry. */
export const benchRules = { name } as const

/** Who makes entries. */
export const entryWho = who
