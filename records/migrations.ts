import { benchBook } from './migrations/bench-book.ts'
import { designsAndRevisions } from './migrations/designs-and-revisions.ts'
import { drafts } from './migrations/drafts.ts'
import { everyEntryCorrected } from './migrations/every-entry-corrected.ts'
import { fieldLog } from './migrations/field-log.ts'
import { whoMeasured } from './migrations/who-measured.ts'

/**
 * The steps from an empty file to the newest schema, in order; the schema's number is how many of them were done. A step that has been
 * released is never changed: stores that have done it are out there.
 */
export const migrations: readonly string[] = [designsAndRevisions, drafts, benchBook, fieldLog, whoMeasured, everyEntryCorrected]
