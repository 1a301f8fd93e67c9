/**
 * Classes of fit of ANSI B4.1 in inches, up to 0.71 in. A class says two things, the limits of the hole and those of the shaft; a size of the
 * document takes those of its side.
 */
import table from '../../../tables/ansi-b4-1.json' with { type: 'json' }
import { quoted } from '../../numbers/quote.ts'
import { inch_mm } from '../../numbers/unit.ts'
import { band, bounds } from './band.ts'
import type { ZoneRead } from './deviations.ts'

interface Cell {
  /** Upper deviation; the lower one of every hole is 0. */
  readonly hole: number
  readonly shaft: readonly number[]
}

const classes = new Map<string, Readonly<Record<string, Cell | undefined>>>(table.map((row) => [row.class, row.thou]))
const thou_mm = inch_mm / 1000
const classPattern = /^(?:RC|LC|LT|LN|FN)\d+$/

/** Whether a text is meant as a class of fit, whether there is such a one or not. */
export function isFitClass(typed: string): boolean {
  return classPattern.test(typed)
}

interface Side {
  readonly size_mm: number
  readonly surface: 'hole' | 'shaft'
}

/**
 * Deviations of one side of a class such as RC4.
 *
 * @param size_mm nominal diameter, above 0 up to 0.71 in
 * @returns a fault where the table has no such class at this size; it names those that it has
 */
export function fitClassDeviations(typed: string, { size_mm, surface }: Side): ZoneRead {
  const cell = cellOf(typed, size_mm)
  if (!cell) return { fault: unknownClass(typed, size_mm) }
  const [upper, lower] = surface === 'hole' ? [cell.hole, 0] : cell.shaft
  return { deviations: { lower_mm: lower * thou_mm, upper_mm: upper * thou_mm } }
}

function cellOf(typed: string, size_mm: number): Cell | undefined {
  const row = classes.get(typed)
  const size_in = size_mm / inch_mm
  // Two classes begin above the smaller bands: their bounds are those of the others.
  const at =
    row &&
    band(
      size_in,
      [...new Set([...commonBounds, ...bounds(row)])].sort((one, other) => Number(one) - Number(other)),
    )
  return at === undefined ? undefined : row?.[at]
}

const commonBounds = bounds(table[0].thou)

function unknownClass(typed: string, size_mm: number) {
  const known = [...classes.keys()].filter((name) => cellOf(name, size_mm) !== undefined)
  const found = `the class ${quoted(typed)} on ${size_mm} mm`
  if (known.length > 0) return { code: 'unknown name', found, needed: `a class that the table has there: ${known.join(', ')}` }
  const largest = commonBounds.at(-1)
  return {
    code: 'too large',
    found,
    needed: `a size up to ${largest} in for a class`,
    wayOut: 'Give plus and minus, or from and to.',
  }
}
