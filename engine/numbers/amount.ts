import type { Cursor } from './cursor.ts'
import { limits } from './limits.ts'
import { nearestName } from './nearest.ts'
import { multiplied, type Powers, plainNumber } from './powers.ts'
import { quoted } from './quote.ts'
import { findUnit, unitNames } from './unit.ts'

/** A number with its unit, in base units. */
export interface Amount {
  readonly value: number
  readonly powers: Powers
}

/** Reads an amount and the units right after it, such as `1 1/2 in` or `0.9 N*mm/deg`. The cursor stands at a number. */
export function readAmount(cursor: Cursor): Amount {
  const number = readNumber(cursor)
  let times = 1
  let over = 1
  let powers = plainNumber
  let isBelow = false
  for (let word = cursor.next(); word.kind === 'word'; word = cursor.next()) {
    const unit = findUnit(word.text)
    if (!unit) refuseUnit(cursor, word.text)
    cursor.skip(1)
    const exponent = readUnitExponent(cursor) * (isBelow ? -1 : 1)
    times *= (exponent > 0 ? unit.times : unit.over) ** Math.abs(exponent)
    over *= (exponent > 0 ? unit.over : unit.times) ** Math.abs(exponent)
    powers = multiplied(powers, unit.powers, exponent)
    isBelow = takesDivisionOfUnits(cursor)
  }
  return { value: (number * times) / over, powers }
}

/** Takes a product or division sign if a unit follows it; yes for a division. Without a sign, a further unit multiplies. */
function takesDivisionOfUnits(cursor: Cursor): boolean {
  const isBetweenUnits = (cursor.isSign('*') || cursor.isSign('/')) && cursor.isUnit(1)
  return isBetweenUnits && cursor.take().text === '/'
}

function refuseUnit(cursor: Cursor, name: string): never {
  const nearest = nearestName(name, unitNames)
  const wayOut = nearest ? `Did you mean ${nearest}?` : `If ${name} is a dimension, write * before it.`
  cursor.refuse(`${quoted(name)} after a number`, 'a known unit, such as mm, in, deg, N, lbf, N*mm', wayOut)
}

function readUnitExponent(cursor: Cursor): number {
  if (!cursor.isSign('^')) return 1
  cursor.skip(1)
  const sign = cursor.isSign('-') ? -1 : 1
  if (sign < 0) cursor.skip(1)
  const power = cursor.whole(0)
  if (power === undefined || power < 1 || power > limits.unitPower) {
    cursor.refuseNext(`a whole power of the unit from 1 to ${limits.unitPower}`)
  }
  cursor.skip(1)
  return sign * power
}

/** A number, or a fraction before a unit: whole / whole, or whole blank whole / whole. */
function readNumber(cursor: Cursor): number {
  const first = cursor.take()
  if (first.kind !== 'number') throw new Error(`a number was expected at column ${first.column}`)
  const whole = first.isWhole ? first.value : undefined
  const [above, below] = [cursor.whole(0), cursor.whole(2)]
  if (whole !== undefined && above !== undefined && cursor.isSign('/', 1) && below !== undefined && cursor.isUnit(3)) {
    if (above >= below) cursor.refuse('a mixed number whose fraction is not below 1', 'a proper fraction, as in 1 1/2 in')
    cursor.skip(3)
    return whole + above / below
  }
  const under = cursor.whole(1)
  if (whole === undefined || !cursor.isSign('/') || under === undefined || !cursor.isUnit(2)) return first.value
  if (cursor.isSignBeforeLast('/')) {
    cursor.refuse('a fraction with a unit right after a division', 'brackets that say what is below', 'Write a / (1/4 in).')
  }
  if (under === 0) cursor.refuse('a fraction over 0', 'another number below the line')
  cursor.skip(2)
  return whole / under
}
