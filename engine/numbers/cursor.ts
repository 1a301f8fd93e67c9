import type { Fault } from './fault.ts'
import { limits } from './limits.ts'
import { quoted } from './quote.ts'
import type { Sign, Token } from './tokens.ts'
import { findUnit } from './unit.ts'

/** Carries a fault out of the recursive readers of expressions; `readExpression` turns it into a value. */
export class Unreadable extends Error {
  readonly fault: Fault
  constructor(fault: Fault) {
    super(fault.found)
    this.fault = fault
  }
}

/** A place in the tokens of an expression, moved on by the readers. */
export class Cursor {
  private readonly tokens: readonly Token[]
  private at = 0
  private depth = 0

  constructor(tokens: readonly Token[]) {
    this.tokens = tokens
  }

  /** The token so many places ahead; the last one is `end` for ever. */
  next(ahead = 0): Token {
    return this.tokens[Math.min(this.at + ahead, this.tokens.length - 1)]
  }

  take(): Token {
    const token = this.next()
    this.at++
    return token
  }

  skip(count: number): void {
    this.at += count
  }

  isSign(sign: Sign, ahead = 0): boolean {
    const token = this.next(ahead)
    return token.kind === 'sign' && token.text === sign
  }

  /** Whether this sign stands before the token that was taken last. */
  isSignBeforeLast(sign: Sign): boolean {
    const before = this.at - 2
    return before >= 0 && this.tokens[before].kind === 'sign' && this.tokens[before].text === sign
  }

  isUnit(ahead: number): boolean {
    const token = this.next(ahead)
    return token.kind === 'word' && findUnit(token.text) !== undefined
  }

  /** Whole number there, if there is one. */
  whole(ahead: number): number | undefined {
    const token = this.next(ahead)
    return token.kind === 'number' && token.isWhole ? token.value : undefined
  }

  /** Reads one level deeper. Every recursion of the grammar passes here. */
  deeper<T>(read: () => T): T {
    if (++this.depth > limits.expressionDepth) {
      this.refuse('too many levels of brackets, signs and powers', `at most ${limits.expressionDepth}`)
    }
    const value = read()
    this.depth--
    return value
  }

  refuse(found: string, needed: string, wayOut?: string): never {
    throw new Unreadable({
      code: 'cannot be read',
      column: this.next().column,
      found,
      needed,
      ...(wayOut && { wayOut }),
    })
  }

  refuseNext(needed: string): never {
    const token = this.next()
    const wayOut = token.text === ',' ? 'Write a decimal point, as in 1.5 mm.' : undefined
    this.refuse(token.kind === 'end' ? 'the end' : quoted(token.text), needed, wayOut)
  }
}
