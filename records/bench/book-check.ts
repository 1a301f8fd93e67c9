/** Whether rows of a bench book from elsewhere are such as every door here would have made. What belongs together SQLite itself looks after. */
import * as z from 'zod'
import type { Problem } from '../../engine/index.ts'
import { storeLimits } from '../limits.ts'
import { who, why, words } from '../store-rules.ts'
import type { BookRow } from './book-rows.ts'
import { benchRules } from './entry-rules.ts'

const { name } = benchRules
const moment = z.iso.datetime()
const day = z.iso.date()
const id = z.int().min(1)
const size = z.number().min(-storeLimits.largestNumber).max(storeLimits.largestNumber)
const text = words(storeLimits.whyLength)
const place = words(storeLimits.givenNameLength)
const typed = words(storeLimits.typedLength).nullable()
const signed = { who, made: moment }
const corrected = { corrects: id.nullable(), reason: text.nullable() }

/** A list in JSON. */
const listOf = (item: z.ZodType, most: number) =>
  z
    .string()
    .max(storeLimits.resultLength)
    .refine((json) => z.array(item).max(most).safeParse(parsed(json)).success, 'is no list of what belongs there')

const characteristic = z.looseObject({
  ...{ number: z.int().min(1), id: place, words: text, nominal: z.number(), least: z.number(), most: z.number() },
  kind: z.enum(['size', 'position', 'profile', 'film']),
  unit: z.string().max(storeLimits.typedLength),
  sources: z.array(z.int()),
})

/** As many as a design may have values. */
const CHARACTERISTICS_most = 10_000

const rules: Readonly<Record<BookRow['table'], z.ZodType>> = {
  plans: z.strictObject({
    ...{ revision: id, characteristics: listOf(characteristic, CHARACTERISTICS_most) },
    ...{ engine: z.string().min(1).max(storeLimits.givenNameLength), made: moment },
  }),
  gauges: z.strictObject({ name, resolution_mm: size, uncertainty_mm: size, calibrated: day, ...signed, ...corrected }),
  lots: z.strictObject({ revision: id, name, note: text.nullable(), ...signed }),
  articles: z.strictObject({ lot: id, serial: name, piece: place.nullable(), ...signed }),
  imports: z.strictObject({ lot: id, file: z.string().max(storeLimits.givenNameLength), digest: z.hash('sha256'), ...signed }),
  withdrawals: z.strictObject({ import: id, reason: text, ...signed }),
  readings: z.strictObject({
    ...{ article: id, characteristic: place, visit: z.string(), found: typed, x: typed, y: typed, uncertainty: typed },
    ...{ least: size.nullable(), most: size.nullable(), at_x_mm: size.nullable(), at_y_mm: size.nullable() },
    ...{ uncertainty_mm: size.nullable(), gauge: id.nullable(), import: id.nullable(), ...signed, ...corrected },
    ...{ measured_by: who.nullable(), measured_on: day.nullable() },
  }),
  certificates: z.strictObject({
    ...{ lot: id, coating: place, coupons_mm: listOf(z.number().positive(), storeLimits.couponsAtOnce), issued: day },
    ...{ cure_degC: size.nullable(), cure_min: size.nullable(), note: text.nullable(), ...signed, ...corrected },
  }),
  bench_tests: z.strictObject({
    ...{ article: id, test: z.string(), value: size, unit: z.string(), outcome: z.string(), tested: day, rig: name },
    ...{ note: text.nullable(), photo: place.nullable(), photo_type: z.enum(['image/jpeg', 'image/png']).nullable() },
    ...{ photo_bytes: z.instanceof(Buffer).nullable(), figure: place.nullable(), uncertainty: size.nullable() },
    ...{ ...signed, ...corrected },
  }),
  decisions: z.strictObject({
    ...{ article: id, characteristic: place.nullable(), decision: z.string(), why, consequence: text },
    ...{ ...signed, ...corrected },
  }),
  sign_offs: z.strictObject({ lot: id, article: id.nullable(), statement: text, ...signed }),
  field_log: z.strictObject({
    ...{ article: id, sort: z.string(), came: day, told: text, found: text.nullable(), harm: z.string() },
    ...{ risks: listOf(place, storeLimits.risksAtOnce), contact: z.string().max(storeLimits.nameLength), contacts_in: text },
    ...{ ...signed, ...corrected },
  }),
}

/** The first row that no door here would have made; undefined when there is none. */
export function bookProblem(rows: readonly BookRow[]): Pick<Problem, 'place' | 'found'> | undefined {
  for (const { table, id: number, values } of rows) {
    const checked = rules[table].safeParse(values)
    if (checked.success) continue
    const [issue] = checked.error.issues
    return { place: [table.replace('_', ' '), number, ...issue.path].join(' › '), found: issue.message }
  }
  return undefined
}

/** Undefined for what is no JSON; then it is no list. */
function parsed(json: string): unknown {
  try {
    return JSON.parse(json)
  } catch (error) {
    if (error instanceof SyntaxError) return undefined
    throw error
  }
}
