/**
 * What is moved by hand is a number that somebody typed: the one that stands there, or that of the dimension whose name stands there.
 * An expression cannot be moved, because it says itself what its value hangs on.
 *
 *     "x": "45.13 mm"             ▸ the number itself
 *     "x": "baseLinkLength"       ▸ the number of dimension baseLinkLength
 *     "x": "middleLength * 2"     ▸ cannot be moved; middleLength can be changed
 */
import { type Expression, readExpression } from '../../numbers/expression.ts'
import { namesIn } from '../../numbers/measure.ts'
import { parseQuantity, type QuantityKind } from '../../numbers/quantity.ts'
import type { Place } from '../json-places.ts'
import type { Change, JsonValue } from './change.ts'
import { valueAt } from './value-at.ts'

/** A number that can be moved. */
export interface Lever {
  /** Where it stands. */
  readonly place: Place
  readonly typed: string
  readonly kind: QuantityKind
  /** The dimension whose value it is; everything that uses it moves with it. */
  readonly dimension?: string
}

/** Why a value cannot be moved by hand. */
export interface Bound {
  /** The expression that stands there. */
  readonly expression: string
  /** Dimensions that it uses: the way out. */
  readonly dimensions: readonly string[]
}

/** A place and what kind of quantity stands there. */
export interface Handle {
  readonly place: Place
  readonly kind: QuantityKind
}

/** Names lead to names at most this often: a document with more of them is refused as a cycle or has fewer dimensions. */
const NAMES_MOST = 200

/** From the first sign that is of no number on, a quantity is its unit. */
const UNIT = /[^\d\s.,/+−-].*$/

/**
 * Finds the number that moves the value at a place.
 *
 * @param text JSON; another text throws
 */
export function leversOf(text: string): (handle: Handle) => Lever | Bound {
  const document = JSON.parse(text) as JsonValue
  return ({ place, kind }) => {
    let at = place
    let dimension: string | undefined
    for (let names = 0; names < NAMES_MOST; names++) {
      const typed = String(valueAt(document, at) ?? '')
      const { value: expression } = readExpression(typed)
      if (expression === undefined) break
      if (expression.kind === 'name') {
        dimension = expression.name
        at = dimensionPlace(document, dimension)
        continue
      }
      if (!isQuantity(expression, typed, kind)) return { expression: typed, dimensions: namesIn(expression) }
      return { place: at, typed, kind, ...(dimension !== undefined && { dimension }) }
    }
    return { expression: String(valueAt(document, place) ?? ''), dimensions: [] }
  }
}

/** One number with its unit, that can be read as what is needed there. */
function isQuantity(expression: Expression, typed: string, kind: QuantityKind): boolean {
  const amount = expression.kind === 'negative' ? expression.of : expression
  return amount.kind === 'amount' && parseQuantity(typed, kind).fault === undefined
}

function dimensionPlace(document: JsonValue, name: string): Place {
  const place = ['dimensions', name]
  return typeof valueAt(document, place) === 'object' ? [...place, 'value'] : place
}

/** Finest move that is written down: a hundredth of a millimetre, a tenth of a degree. */
const finest: Partial<Record<QuantityKind, number>> = { length: 0.01, angle: Math.PI / 1800 }

/**
 * The change that moves a number by an amount; it keeps its unit and at least the decimals that it was typed with.
 *
 * @param by in the inside unit of its kind (mm, rad, N …)
 */
export function pulled({ place, typed, kind }: Lever, by: number): Change {
  const unit = UNIT.exec(typed)?.[0].trim() ?? ''
  const factor = insideOf(`1 ${unit}`, kind)
  const typedDecimals = /\.(\d*)/.exec(typed)?.[1].length ?? 0
  const needed = Math.max(0, Math.ceil(-Math.log10((finest[kind] ?? factor / 1000) / factor) - 1e-9))
  const moved = (insideOf(typed, kind) + by) / factor
  const number = trimmedTo(moved.toFixed(Math.max(typedDecimals, needed)), typedDecimals)
  return { kind: 'set', place, value: unit === '' ? number : `${number} ${unit}` }
}

function insideOf(typed: string, kind: QuantityKind): number {
  const read = parseQuantity(typed.trim(), kind)
  if (read.fault) throw new Error(`a number to be moved has a unit that cannot be read: ${typed}`)
  return read.value
}

/** Zeros at the end that nobody typed are left out; nothing is written as −0. */
function trimmedTo(number: string, decimals_count: number): string {
  let kept = number
  const decimals = (): number => (kept.split('.')[1] ?? '').length
  while (decimals() > decimals_count && /[.]\d*0$/.test(kept)) kept = kept.slice(0, -1)
  const written = kept.replace(/\.$/, '')
  return Number(written) === 0 ? written.replace('-', '') : written
}
