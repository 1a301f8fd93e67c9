/**
 * Reads a quantity or an expression into a tree. Grammar, loosest first:
 *
 *     sum      = product { (+ | -) product }
 *     product  = signed { (* | · | × | /) signed }
 *     signed   = (+ | -) signed | power
 *     power    = atom [ ^ exponent ]                    right to left; -2^2 is -4
 *     exponent = (+ | -) exponent | (number | atom) [ ^ exponent ]
 *     atom     = quantity | name | pi | function ( sum { , sum } ) | ( sum )
 *     quantity = amount [ unit { (* | · | / | blank) unit } ]
 *     amount   = number | whole / whole | whole blank whole / whole
 *     unit     = unit name [ ^ whole ]
 *
 * What is ours to decide, because no standard does:
 * - An amount with its unit binds tighter than * and /. `1/4 in` is a quarter inch and `1 1/2 in` an inch and a half,
 *   as on a drawing; both need whole numbers and a unit right after. `3 mm/2` is 1.5 mm, `10 mm / 2 mm` is 5.
 *   `a / 1/4 in` could mean two things and is refused. An exponent takes no unit: `b^2/1 mm` is b² over 1 mm.
 * - A word right after a number or after another unit is a unit; everywhere else it is a dimension, a function or pi.
 *   So `12 in·lbf` is twelve inch-pounds and `a * b` is a product of dimensions. A dimension cannot have the name of a unit.
 * - `3 mm^2` is three square millimetres; `(3 mm)^2` is nine.
 *
 * No eval, no lookup in objects: names are found in maps only. The work is proportional to the length of the text and
 * the depth is bounded, so that no text can stop the reader.
 */
import { readAmount } from './amount.ts'
import { Cursor, Unreadable } from './cursor.ts'
import type { Read } from './fault.ts'
import { functionNames, isFunctionName } from './functions.ts'
import { nearestName } from './nearest.ts'
import { type Powers, plainNumber } from './powers.ts'
import { quoted } from './quote.ts'
import { readTokens } from './tokens.ts'
import { findUnit } from './unit.ts'

export type Expression =
  | { readonly kind: 'amount'; readonly column: number; readonly value: number; readonly powers: Powers }
  | { readonly kind: 'name'; readonly column: number; readonly name: string }
  | { readonly kind: 'negative'; readonly column: number; readonly of: Expression }
  | {
      readonly kind: 'operation'
      readonly column: number
      readonly sign: Operator
      readonly left: Expression
      readonly right: Expression
    }
  | { readonly kind: 'call'; readonly column: number; readonly name: string; readonly of: readonly Expression[] }

export type Operator = '+' | '-' | '*' | '/' | '^'

/** Reads the whole text, or says at which column it cannot be read. Units are known afterwards, names are not looked up yet. */
export function readExpression(text: string): Read<Expression> {
  const tokens = readTokens(text)
  if (tokens.fault) return tokens
  try {
    return { value: readWhole(new Cursor(tokens.value)) }
  } catch (error) {
    if (error instanceof Unreadable) return { fault: error.fault }
    throw error
  }
}

function readWhole(cursor: Cursor): Expression {
  if (cursor.next().kind === 'end') cursor.refuse('nothing', 'a number with its unit, or an expression')
  const expression = readSum(cursor)
  if (cursor.next().kind !== 'end') cursor.refuseNext('an operator (+ - * / ^) or the end')
  return expression
}

function readSum(cursor: Cursor): Expression {
  let left = readProduct(cursor)
  while (cursor.isSign('+') || cursor.isSign('-')) left = readOperation(cursor, left, readProduct)
  return left
}

function readProduct(cursor: Cursor): Expression {
  let left = readSigned(cursor)
  while (cursor.isSign('*') || cursor.isSign('/')) left = readOperation(cursor, left, readSigned)
  return left
}

function readOperation(cursor: Cursor, left: Expression, readRight: (cursor: Cursor) => Expression): Expression {
  const { text, column } = cursor.take()
  return { kind: 'operation', column, sign: text as Operator, left, right: readRight(cursor) }
}

function readSigned(cursor: Cursor): Expression {
  return cursor.deeper(() => {
    if (cursor.isSign('+') || cursor.isSign('-')) return readSign(cursor, readSigned)
    return readPowerOf(cursor, readAtom(cursor))
  })
}

function readSign(cursor: Cursor, readRest: (cursor: Cursor) => Expression): Expression {
  const { text, column } = cursor.take()
  const of = readRest(cursor)
  return text === '-' ? { kind: 'negative', column, of } : of
}

function readPowerOf(cursor: Cursor, base: Expression): Expression {
  return cursor.isSign('^') ? readOperation(cursor, base, readExponent) : base
}

function readExponent(cursor: Cursor): Expression {
  return cursor.deeper(() => {
    if (cursor.isSign('+') || cursor.isSign('-')) return readSign(cursor, readExponent)
    const token = cursor.next()
    if (token.kind !== 'number') return readPowerOf(cursor, readAtom(cursor))
    cursor.skip(1)
    return readPowerOf(cursor, { kind: 'amount', column: token.column, value: token.value, powers: plainNumber })
  })
}

function readAtom(cursor: Cursor): Expression {
  const { kind, column } = cursor.next()
  if (kind === 'number') return { kind: 'amount', column, ...readAmount(cursor) }
  if (kind === 'word') return readWord(cursor)
  if (!cursor.isSign('(')) cursor.refuseNext('a number, a name or an opening bracket')
  cursor.skip(1)
  const inside = readSum(cursor)
  closeBracket(cursor)
  return inside
}

function closeBracket(cursor: Cursor): void {
  if (!cursor.isSign(')')) cursor.refuseNext('an operator or a closing bracket')
  cursor.skip(1)
}

function readWord(cursor: Cursor): Expression {
  const { text: name, column } = cursor.next()
  if (isFunctionName(name)) return readCall(cursor)
  if (findUnit(name)) {
    cursor.refuse(`the unit ${quoted(name)}`, 'a number before it', `Write 1 ${name} where the unit itself is meant.`)
  }
  cursor.skip(1)
  if (name === 'pi') return { kind: 'amount', column, value: Math.PI, powers: plainNumber }
  if (cursor.isSign('(')) {
    const nearest = nearestName(name, functionNames)
    const wayOut = nearest && `Did you mean ${nearest}?`
    cursor.refuse(`a bracket after ${quoted(name)}, which is no function`, functionNames.join(', '), wayOut)
  }
  return { kind: 'name', column, name }
}

function readCall(cursor: Cursor): Expression {
  const { text: name, column } = cursor.take()
  if (!cursor.isSign('(')) cursor.refuseNext(`an opening bracket after ${name}`)
  const of: Expression[] = []
  do {
    cursor.skip(1)
    of.push(readSum(cursor))
  } while (cursor.isSign(','))
  closeBracket(cursor)
  return { kind: 'call', column, name, of }
}
