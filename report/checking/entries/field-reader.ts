import { type Problem, type QuantityKind, readQuantity } from '../../../engine/index.ts'

/** What stands in the fields of a form, by field. */
export type TypedFields<Field extends string> = Readonly<Record<Field, string>>

/** Reads the fields of one form; what cannot be read is gathered by its field. */
export interface FieldReader<Field extends string> {
  /** The place of each problem is its field. */
  readonly problems: readonly Problem[]
  /** @returns what was typed, without blanks at its ends; empty where that is allowed and nothing stands */
  readonly words: (field: Field, needed?: string) => string
  /** @returns inside unit of the kind; NaN where the field is empty or wrong. A number without a unit is in `bare`. */
  readonly quantity: (field: Field, asked: AskedQuantity) => number
  /** @returns the day as ISO 8601 */
  readonly day: (field: Field, needed: string) => string
  readonly refuse: (field: Field, problem: Omit<Problem, 'place'>) => void
}

/** What a field is asked for. */
export interface AskedQuantity {
  readonly kind: QuantityKind
  /** Unit of a number that is typed without one; empty for a plain number. */
  readonly bare: string
  readonly needed: string
  /** Nothing and what is below nothing are no size of anything; unless this is set, nothing is refused too. */
  readonly mayBeZero?: boolean
}

/** A day as it is kept, such as 2031-04-05. */
const DAY = /^\d{4}-\d\d-\d\d$/
/** A number with a comma for its decimals. */
const COMMA = /^[-+]?\d+,\d+/

/** @param typed every field of the form */
export function fieldReader<Field extends string>(typed: TypedFields<Field>): FieldReader<Field> {
  const problems: Problem[] = []
  const at = (field: Field): string => typed[field].trim()
  const refuse = (field: Field, problem: Omit<Problem, 'place'>): void => void problems.push({ ...problem, place: field })
  const missing = (field: Field, needed: string): void => refuse(field, { code: 'missing', found: 'Nothing stands here', needed })
  return {
    problems,
    refuse,
    words: (field, needed) => {
      if (at(field) === '' && needed !== undefined) missing(field, needed)
      return at(field)
    },
    quantity: (field, asked) => {
      if (at(field) === '') missing(field, asked.needed)
      const read = at(field) === '' ? Number.NaN : readOne(at(field), asked)
      if (typeof read === 'number') return read
      refuse(field, read)
      return Number.NaN
    },
    day: (field, needed) => {
      if (at(field) === '') missing(field, needed)
      else if (!isDay(at(field)))
        refuse(field, { code: 'wrong value', found: at(field), needed: `${needed}, such as 2031-04-05` })
      return at(field)
    },
  }
}

/** A day that the calendar has: 30 February would be read as one in March. */
function isDay(typed: string): boolean {
  if (!DAY.test(typed)) return false
  const [month, day] = typed.split('-').slice(1).map(Number)
  const read = new Date(`${typed}T00:00:00Z`)
  return read.getUTCMonth() + 1 === month && read.getUTCDate() === day
}

function readOne(typed: string, { kind, bare, needed, mayBeZero = false }: AskedQuantity): number | Omit<Problem, 'place'> {
  const isBare = /^[-+]?[\d.]+$/.test(typed)
  const { value, problems } = readQuantity(isBare ? `${typed} ${bare}`.trim() : typed, kind)
  if (value === undefined) {
    const [{ place: _, ...problem }] = problems
    return COMMA.test(typed) ? { ...problem, wayOut: 'Type a point for the decimals.' } : problem
  }
  if (value > 0 || (mayBeZero && value === 0)) return value
  return { code: 'out of range', found: typed, needed: mayBeZero ? `${needed}, 0 or more` : `${needed}, more than 0` }
}
