/**
 * What an expression measures and its value. Two walks over the tree: `powersOf` checks that lengths are added to
 * lengths, `valueOf` calculates. Neither looks anything up but in the map it is given.
 */
import type { Expression } from './expression.ts'
import type { Fault, Read } from './fault.ts'
import { functionNamed } from './functions.ts'
import { nearestName } from './nearest.ts'
import { multiplied, type Powers, plainNumber, powersText, raised, samePowers } from './powers.ts'
import { quoted } from './quote.ts'

/** A value in base units (mm, N, s, rad) with what it measures. */
export interface Measured {
  readonly value: number
  readonly powers: Powers
}

export type Names = ReadonlyMap<string, Measured>

/** Value and kind of an expression over named values; or the first fault, with its column. */
export function measure(expression: Expression, names: Names): Read<Measured> {
  const walk = new Walk(names)
  const powers = walk.powersOf(expression)
  const value = walk.fault ? Number.NaN : walk.valueOf(expression)
  return walk.fault ? { fault: walk.fault } : { value: { value, powers } }
}

/** Names of dimensions that occur in an expression, in order, each once. */
export function namesIn(expression: Expression): readonly string[] {
  switch (expression.kind) {
    case 'amount':
      return []
    case 'name':
      return [expression.name]
    case 'negative':
      return namesIn(expression.of)
    case 'operation':
      return [...new Set([...namesIn(expression.left), ...namesIn(expression.right)])]
    case 'call':
      return [...new Set(expression.of.flatMap(namesIn))]
  }
}

class Walk {
  /** The first one found; after it the walk gives numbers that nobody reads. */
  fault: Fault | undefined
  private readonly names: Names

  constructor(names: Names) {
    this.names = names
  }

  private refuse(fault: Fault): void {
    this.fault ??= fault
  }

  powersOf(expression: Expression): Powers {
    switch (expression.kind) {
      case 'amount':
        return expression.powers
      case 'name':
        return this.powersOfName(expression)
      case 'negative':
        return this.powersOf(expression.of)
      case 'operation':
        return this.powersOfOperation(expression)
      case 'call':
        return this.powersOfCall(expression)
    }
  }

  private powersOfName({ name, column }: Expression & { kind: 'name' }): Powers {
    const known = this.names.get(name)
    if (known) return known.powers
    const nearest = nearestName(name, this.names.keys())
    this.refuse({
      code: 'unknown name',
      column,
      found: `the name ${quoted(name)}`,
      needed: 'a name that stands under dimensions',
      ...(nearest && { wayOut: `Did you mean ${nearest}?` }),
    })
    return plainNumber
  }

  private powersOfOperation({ sign, left, right, column }: Expression & { kind: 'operation' }): Powers {
    const before = this.powersOf(left)
    const after = this.powersOf(right)
    if (sign === '*') return multiplied(before, after)
    if (sign === '/') return multiplied(before, after, -1)
    if (sign === '^') return this.powersOfPower(before, after, right)
    if (!samePowers(before, after)) {
      this.refuse({
        code: 'wrong unit',
        column,
        found: `${sign} between ${powersText(before)} and ${powersText(after)}`,
        needed: 'two quantities of one kind',
        ...(samePowers(before, plainNumber) && { wayOut: 'Give the number a unit; a mixed number is written 1 1/2 in.' }),
      })
    }
    return before
  }

  private powersOfPower(base: Powers, exponent: Powers, typed: Expression): Powers {
    if (!samePowers(exponent, plainNumber)) {
      this.refuse({
        code: 'wrong unit',
        column: typed.column,
        found: `an exponent in ${powersText(exponent)}`,
        needed: 'a plain number',
      })
    }
    if (samePowers(base, plainNumber)) return plainNumber
    if (namesIn(typed).length > 0) {
      this.refuse({
        code: 'wrong unit',
        column: typed.column,
        found: `an exponent that depends on ${namesIn(typed).join(', ')}`,
        needed: 'a plain number as exponent of a quantity with a unit',
      })
    }
    return this.fault ? plainNumber : raised(base, this.valueOf(typed))
  }

  private powersOfCall({ name, of, column }: Expression & { kind: 'call' }): Powers {
    const called = functionNamed(name)
    const given = of.map((argument) => this.powersOf(argument))
    if (of.length < called.least || of.length > called.most) {
      const needed = called.most === called.least ? `${called.least}` : `at least ${called.least}`
      this.refuse({ code: 'cannot be read', column, found: `${name} with ${of.length} values in its brackets`, needed })
      return plainNumber
    }
    const powers = called.powers(given)
    if (!('needed' in powers)) return powers
    const found = `${name} of ${given.map(powersText).join(' and ')}`
    this.refuse({ code: 'wrong unit', column, found, needed: powers.needed })
    return plainNumber
  }

  valueOf(expression: Expression): number {
    switch (expression.kind) {
      case 'amount':
        return this.finite(expression.value, expression.column, () => 'a quantity')
      case 'name':
        return this.names.get(expression.name)?.value ?? Number.NaN
      case 'negative':
        return -this.valueOf(expression.of)
      case 'operation':
        return this.valueOfOperation(expression)
      case 'call': {
        const given = expression.of.map((argument) => this.valueOf(argument))
        const words = () => `${expression.name}(${given.map(shortNumber).join(', ')})`
        return this.finite(functionNamed(expression.name).value(given), expression.column, words)
      }
    }
  }

  private valueOfOperation({ sign, left, right, column }: Expression & { kind: 'operation' }): number {
    const before = this.valueOf(left)
    const after = this.valueOf(right)
    if (sign === '/' && after === 0)
      this.refuse({ code: 'no such number', column, found: 'a division by 0', needed: 'another number below' })
    return this.finite(calculated(sign, before, after), column, () => `${shortNumber(before)} ${sign} ${shortNumber(after)}`)
  }

  private finite(value: number, column: number, words: () => string): number {
    if (Number.isNaN(value)) this.refuse({ code: 'no such number', column, found: words(), needed: 'values for which it exists' })
    else if (!Number.isFinite(value)) this.refuse({ code: 'too large', column, found: words(), needed: 'a result below 1e308' })
    return value
  }
}

/** Enough digits to recognise a typed number. */
const shortNumber = (value: number): string => `${Number(value.toPrecision(6))}`

function calculated(sign: '+' | '-' | '*' | '/' | '^', before: number, after: number): number {
  switch (sign) {
    case '+':
      return before + after
    case '-':
      return before - after
    case '*':
      return before * after
    case '/':
      return before / after
    case '^':
      return before ** after
  }
}
