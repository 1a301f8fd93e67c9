/** What the words are like that go into a store; every door and every store that is brought in is held to the same rules. */
import * as z from 'zod'
import { limits } from '../engine/index.ts'
import { storeLimits } from './limits.ts'

/** Controls and marks that could make a terminal or a page show what is not there; line ends apart. */
const HIDDEN = /(?![\n\u200c\u200d])[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]/u
/** Halves of a character: they cannot be written as UTF-8. */
const HALVES = /\p{Cs}/u

/** Words that can be seen, at most so many characters. */
export const words = (most: number) =>
  z
    .string()
    .trim()
    .min(1, 'must not be empty')
    .max(most, `has at most ${most} characters`)
    .refine((text) => !HIDDEN.test(text), 'holds characters that cannot be seen')

/** A name for a new design: letters, digits, space, point, dash and underscore, beginning with a letter or digit. */
export const newName = z
  .string()
  .max(storeLimits.nameLength, `has at most ${storeLimits.nameLength} characters`)
  .regex(/^[\p{L}\p{N}][\p{L}\p{N} ._-]*$/u, 'is made of letters, digits, space, point, dash and underscore')

/** A name as a design may already have it, because its file is called so. */
export const storedName = words(storeLimits.givenNameLength)

/** Who says that a revision is to be kept. */
export const who = words(storeLimits.whoLength)

/** Why a revision is kept. */
export const why = words(storeLimits.whyLength)

/** The number of a revision as it is typed or stands in an address. */
export const revisionNumber = z
  .string()
  .regex(/^[1-9]\d{0,8}$/, 'is a whole number from 1')
  .transform(Number)

/** A design document as text: no longer than a design file, and of whole characters, so that it is stored as it is. */
export const documentWords = z
  .string()
  .refine((text) => Buffer.byteLength(text) <= limits.fileBytes, `has at most ${limits.fileBytes} bytes`)
  .refine((text) => !HALVES.test(text), 'holds half a character')

/** One step of the undo history: a change of the text and what it was, in a few words. */
export const step = z.strictObject({
  splice: z.strictObject({
    at: z.int().min(0).max(limits.fileBytes),
    removed: z.string().max(limits.fileBytes),
    inserted: z.string().max(limits.fileBytes),
  }),
  said: words(storeLimits.saidLength),
})
