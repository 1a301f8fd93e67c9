import type { Fault, Read } from './fault.ts'
import { limits } from './limits.ts'
import { quoted } from './quote.ts'

/** One piece of an expression. `column` counts from 1. */
export type Token =
  | { readonly kind: 'number'; readonly text: string; readonly column: number; readonly value: number; readonly isWhole: boolean }
  | { readonly kind: 'word'; readonly text: string; readonly column: number }
  | { readonly kind: 'sign'; readonly text: Sign; readonly column: number }
  | { readonly kind: 'end'; readonly text: ''; readonly column: number }

export type Sign = '+' | '-' | '*' | '/' | '^' | '(' | ')' | ','

/** Characters that people type or paste for a sign. */
const signs: ReadonlyMap<string, Sign> = new Map<string, Sign>([
  ['+', '+'],
  ['-', '-'],
  ['−', '-'],
  ['*', '*'],
  ['·', '*'],
  ['⋅', '*'],
  ['×', '*'],
  ['/', '/'],
  ['÷', '/'],
  ['^', '^'],
  ['(', '('],
  [')', ')'],
  [',', ','],
])

const superscripts: ReadonlyMap<string, number> = new Map([
  ['²', 2],
  ['³', 3],
  ['⁴', 4],
])

const blank = /[\t \u00a0\u2009\u202f]+/y
const number = /(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eE][+-]?[0-9]+)?/y
const word = /[A-Za-zµμ][A-Za-z0-9_µμ]*|[°"″%]/y

function matchAt(pattern: RegExp, text: string, at: number): string {
  pattern.lastIndex = at
  return pattern.exec(text)?.[0] ?? ''
}

/**
 * Cuts a text into numbers, words and signs; the last token is `end`.
 * A superscript ², ³, ⁴ becomes `^` and a number. Comes back with a fault for any other character or a number too large.
 */
export function readTokens(text: string): Read<readonly Token[]> {
  if (text.length > limits.expressionLength) return { fault: tooLong(text) }
  const tokens: Token[] = []
  let at = matchAt(blank, text, 0).length
  while (at < text.length) {
    const read = tokensAt(text, at)
    if (read.fault) return read
    tokens.push(...read.value.tokens)
    at += read.value.length
    at += matchAt(blank, text, at).length
  }
  return { value: [...tokens, { kind: 'end', text: '', column: text.length + 1 }] }
}

function tokensAt(text: string, at: number): Read<{ readonly tokens: readonly Token[]; readonly length: number }> {
  const column = at + 1
  const digits = matchAt(number, text, at)
  if (digits !== '') {
    const value = Number(digits)
    if (!Number.isFinite(value)) return { fault: tooLarge(digits, column) }
    return {
      value: {
        tokens: [{ kind: 'number', text: digits, column, value, isWhole: /^[0-9]+$/.test(digits) }],
        length: digits.length,
      },
    }
  }
  const letters = matchAt(word, text, at)
  if (letters !== '') return { value: { tokens: [{ kind: 'word', text: letters, column }], length: letters.length } }
  const sign = signs.get(text[at])
  if (sign) return { value: { tokens: [{ kind: 'sign', text: sign, column }], length: 1 } }
  const power = superscripts.get(text[at])
  if (power !== undefined) {
    const exponent: Token = { kind: 'number', text: text[at], column, value: power, isWhole: true }
    return { value: { tokens: [{ kind: 'sign', text: '^', column }, exponent], length: 1 } }
  }
  return { fault: unknownCharacter(text, at) }
}

function tooLong(text: string): Fault {
  return {
    code: 'too large',
    column: limits.expressionLength + 1,
    found: `${text.length} characters`,
    needed: `at most ${limits.expressionLength}`,
    wayOut: 'Give parts of it a name under dimensions.',
  }
}

function tooLarge(digits: string, column: number): Fault {
  return { code: 'too large', column, found: `the number ${quoted(digits)}`, needed: 'a number below 1e308' }
}

function unknownCharacter(text: string, at: number): Fault {
  const character = String.fromCodePoint(text.codePointAt(at) ?? 0)
  return {
    code: 'cannot be read',
    column: at + 1,
    found: `the character ${quoted(character)}`,
    needed: 'numbers, units, names of dimensions, + - * / ^ and brackets',
  }
}
