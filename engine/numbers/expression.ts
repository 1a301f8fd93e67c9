/**
 * Reads a quantity or an expression into a tree. Grammar, loosest first:
 *
 *     sum      = product { (+ | -) product }
 *     product  = signed { (* | · | × | /) signed }
 *     signed   = (+ | -) signed | power
 *     power    = atom [ ^ signed ]                      right to left; -2^2 is -4
 *     atom     = quantity | name | pi | function ( sum { , sum } ) | ( sum )
 *     quantity = amount [ unit { (* | · | / | blank) unit } ]
 *     amount   = number | whole / whole | whole blank whole / whole
 *     unit     = unit name [ ^ whole ]
 *
 * What is ours to decide, because no standard does:
 * - An amount with its unit binds tighter than * and /. `1/4 in` is a quarter inch and `1 1/2 in` an inch and a half,
 *   as on a drawing; both need whole numbers and a unit right after. `3 mm/2` is 1.5 mm, `10 mm / 2 mm` is 5.
 * - A word right after a number or after another unit is a unit; everywhere else it is a dimension, a function or pi.
 *   So `12 in·lbf` is twelve inch-pounds and `a * b` is a product of dimensions. A dimension cannot have the name of a unit.
 * - `3 mm^2` is three square millimetres; `(3 mm)^2` is nine.
 *
 * No eval, no lookup in objects: names are found in maps only. The work is proportional to the length of the text and
 * the depth is bounded, so that no text can stop the reader.
 */
import type { Fault, Read } from './fault.ts'
import { functionNames, isFunctionName } from './functions.ts'
import { limits } from './limits.ts'
import { nearestName } from './nearest.ts'
import { multiplied, type Powers, plainNumber } from './powers.ts'
import { quoted } from './quote.ts'
import { readTokens, type Sign, type Token } from './tokens.ts'
import { findUnit, unitNames } from './unit.ts'

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

/** Carries a fault out of the recursion; never leaves this file. */
class Unreadable extends Error {
  readonly fault: Fault
  constructor(fault: Fault) {
    super(fault.found)
    this.fault = fault
  }
}

/** Reads the whole text, or says at which column it cannot be read. Units are known afterwards, names are not looked up yet. */
export function readExpression(text: string): Read<Expression> {
  const tokens = readTokens(text)
  if (tokens.fault) return tokens
  try {
    return { value: new Reader(tokens.value).whole() }
  } catch (error) {
    if (error instanceof Unreadable) return { fault: error.fault }
    throw error
  }
}

class Reader {
  private readonly tokens: readonly Token[]
  private at = 0
  private depth = 0

  constructor(tokens: readonly Token[]) {
    this.tokens = tokens
  }

  whole(): Expression {
    if (this.next().kind === 'end') this.refuse('nothing', 'a number with its unit, or an expression')
    const expression = this.sum()
    if (this.next().kind !== 'end') this.refuseNext('an operator (+ - * / ^) or the end')
    return expression
  }

  private next(ahead = 0): Token {
    return this.tokens[Math.min(this.at + ahead, this.tokens.length - 1)]
  }

  private take(): Token {
    const token = this.next()
    this.at++
    return token
  }

  private isSign(sign: Sign, ahead = 0): boolean {
    const token = this.next(ahead)
    return token.kind === 'sign' && token.text === sign
  }

  private refuse(found: string, needed: string, wayOut?: string): never {
    throw new Unreadable({ code: 'cannot be read', column: this.next().column, found, needed, ...(wayOut && { wayOut }) })
  }

  private refuseNext(needed: string): never {
    const token = this.next()
    const wayOut = token.text === ',' ? 'Write a decimal point, as in 1.5 mm.' : undefined
    this.refuse(token.kind === 'end' ? 'the end' : quoted(token.text), needed, wayOut)
  }

  private sum(): Expression {
    let left = this.product()
    while (this.isSign('+') || this.isSign('-')) left = this.operation(left, () => this.product())
    return left
  }

  private product(): Expression {
    let left = this.signed()
    while (this.isSign('*') || this.isSign('/')) left = this.operation(left, () => this.signed())
    return left
  }

  private operation(left: Expression, right: () => Expression): Expression {
    const { text, column } = this.take()
    return { kind: 'operation', column, sign: text as Operator, left, right: right() }
  }

  /** Every way into a deeper level passes here. */
  private signed(): Expression {
    if (++this.depth > limits.expressionDepth) {
      this.refuse('too many levels of brackets, signs and powers', `at most ${limits.expressionDepth}`)
    }
    const expression = this.isSign('+') || this.isSign('-') ? this.sign() : this.power()
    this.depth--
    return expression
  }

  private sign(): Expression {
    const { text, column } = this.take()
    const of = this.signed()
    return text === '-' ? { kind: 'negative', column, of } : of
  }

  private power(): Expression {
    const base = this.atom()
    return this.isSign('^') ? this.operation(base, () => this.signed()) : base
  }

  private atom(): Expression {
    const token = this.next()
    if (token.kind === 'number') return this.quantity()
    if (token.kind === 'word') return this.word()
    if (!this.isSign('(')) this.refuseNext('a number, a name or an opening bracket')
    this.at++
    const inside = this.sum()
    this.close()
    return inside
  }

  private close(): void {
    if (!this.isSign(')')) this.refuseNext('an operator or a closing bracket')
    this.at++
  }

  private word(): Expression {
    const { text: name, column } = this.next()
    if (isFunctionName(name)) return this.call(name)
    if (findUnit(name))
      this.refuse(`the unit ${quoted(name)}`, 'a number before it', `Write 1 ${name} where the unit itself is meant.`)
    this.at++
    if (name === 'pi') return { kind: 'amount', column, value: Math.PI, powers: plainNumber }
    if (this.isSign('(')) {
      const nearest = nearestName(name, functionNames)
      this.refuse(
        `a bracket after ${quoted(name)}, which is no function`,
        functionNames.join(', '),
        nearest && `Did you mean ${nearest}?`,
      )
    }
    return { kind: 'name', column, name }
  }

  private call(name: string): Expression {
    const { column } = this.take()
    if (!this.isSign('(')) this.refuseNext(`an opening bracket after ${name}`)
    const of: Expression[] = []
    do {
      this.at++
      of.push(this.sum())
    } while (this.isSign(','))
    this.close()
    return { kind: 'call', column, name, of }
  }

  private quantity(): Expression {
    const { column } = this.next()
    const amount = this.amount()
    let times = amount.times
    let over = amount.over
    let powers = plainNumber
    let exponentSign = 1
    for (let word = this.next(); word.kind === 'word'; word = this.next()) {
      const unit = findUnit(word.text)
      if (!unit) this.refuseUnit(word.text)
      this.at++
      const exponent = exponentSign * this.unitExponent()
      times *= (exponent > 0 ? unit.times : unit.over) ** Math.abs(exponent)
      over *= (exponent > 0 ? unit.over : unit.times) ** Math.abs(exponent)
      powers = multiplied(powers, unit.powers, exponent)
      exponentSign = this.signBeforeUnit()
    }
    return { kind: 'amount', column, value: times / over, powers }
  }

  /** Takes a product or division sign if a unit follows it: 1 for a product or a blank, -1 for a division. */
  private signBeforeUnit(): 1 | -1 {
    const follows = this.next(1)
    const isBetweenUnits =
      (this.isSign('*') || this.isSign('/')) && follows.kind === 'word' && findUnit(follows.text) !== undefined
    return isBetweenUnits && this.take().text === '/' ? -1 : 1
  }

  private refuseUnit(name: string): never {
    const nearest = nearestName(name, unitNames)
    const wayOut = nearest ? `Did you mean ${nearest}?` : `If ${name} is a dimension, write * before it.`
    this.refuse(`${quoted(name)} after a number`, 'a known unit, such as mm, in, deg, N, lbf, N*mm', wayOut)
  }

  private unitExponent(): number {
    if (!this.isSign('^')) return 1
    this.at++
    const sign = this.isSign('-') ? -1 : 1
    if (sign < 0) this.at++
    const token = this.next()
    if (token.kind !== 'number' || !token.isWhole || token.value < 1 || token.value > limits.unitPower) {
      this.refuseNext(`a whole power of the unit from 1 to ${limits.unitPower}`)
    }
    this.at++
    return sign * token.value
  }

  /** A number, or a fraction before a unit: whole / whole, or whole blank whole / whole. */
  private amount(): { readonly times: number; readonly over: number } {
    const first = this.takeNumber()
    const wholes = this.fractionAfter(0)
    if (first.isWhole && wholes) {
      this.at += 3
      this.refuseImproper(wholes)
      return { times: first.value * wholes.over + wholes.times, over: wholes.over }
    }
    const below = this.next(1)
    if (first.isWhole && this.isSign('/') && below.kind === 'number' && below.isWhole && this.isUnitAt(2)) {
      this.at += 2
      if (below.value === 0) this.refuseZeroBelow()
      return { times: first.value, over: below.value }
    }
    return { times: first.value, over: 1 }
  }

  private takeNumber(): Token & { readonly kind: 'number' } {
    const token = this.take()
    if (token.kind !== 'number') throw new Error(`a number was expected at column ${token.column}`)
    return token
  }

  private isUnitAt(ahead: number): boolean {
    const token = this.next(ahead)
    return token.kind === 'word' && findUnit(token.text) !== undefined
  }

  private fractionAfter(ahead: number): { readonly times: number; readonly over: number } | undefined {
    const [above, below] = [this.next(ahead), this.next(ahead + 2)]
    if (above.kind !== 'number' || !this.isSign('/', ahead + 1) || below.kind !== 'number') return undefined
    return above.isWhole && below.isWhole && this.isUnitAt(ahead + 3) ? { times: above.value, over: below.value } : undefined
  }

  private refuseImproper(fraction: { readonly times: number; readonly over: number }): void {
    if (fraction.over === 0) this.refuseZeroBelow()
    if (fraction.times >= fraction.over) this.refuse('a mixed number whose fraction is not below 1', 'such as 1 1/2 in')
  }

  private refuseZeroBelow(): never {
    this.refuse('a fraction over 0', 'another number below the line')
  }
}
