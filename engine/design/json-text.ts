/**
 * Strict JSON (RFC 8259) with what the built-in reader keeps to itself: line and column of a fault, keys that occur
 * twice, and a bound on nesting. Keys that could reach into the language (`__proto__`, `constructor`, `prototype`) are
 * refused. Faults of spelling end the reading; doubled and forbidden keys are collected and reading goes on.
 */
import { limits } from '../numbers/limits.ts'
import { quoted } from '../numbers/quote.ts'
import type { Problem } from './problem.ts'

export type Json = string | number | boolean | null | Json[] | { [key: string]: Json }

/** `value` is absent when the text is no JSON. */
export interface ReadJson {
  readonly value?: Json
  readonly problems: readonly Problem[]
}

/** Reads a JSON text; the value has no forbidden key, every key once, and at most `limits.nesting` levels. */
export function readJson(text: string): ReadJson {
  const reader = new Reader(text)
  try {
    return { value: reader.whole(), problems: reader.problems }
  } catch (error) {
    if (error instanceof NoJson) return { problems: [...reader.problems, error.problem] }
    throw error
  }
}

/** Carries a fault of spelling out of the recursion; never leaves this file. */
class NoJson extends Error {
  readonly problem: Problem
  constructor(problem: Problem) {
    super(problem.found)
    this.problem = problem
  }
}

const forbiddenKeys: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype'])
const number = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y
const hexadecimal = /^[0-9a-fA-F]{4}$/
const words: ReadonlyMap<string, Json> = new Map<string, Json>([
  ['true', true],
  ['false', false],
  ['null', null],
])

class Reader {
  readonly problems: Problem[] = []
  private readonly text: string
  private at = 0
  private depth = 0
  private values = 0
  private readonly place: (string | number)[] = []
  private countedTo = 0
  private lines = 1

  constructor(text: string) {
    this.text = text
  }

  whole(): Json {
    const value = this.value()
    this.skipBlanks()
    if (this.at < this.text.length) this.refuse('the end of the file')
    return value
  }

  private refuse(needed: string, wayOut?: string): never {
    const line = this.lineOf(this.at)
    const column = this.at - this.text.lastIndexOf('\n', this.at - 1)
    const character =
      this.at < this.text.length ? quoted(String.fromCodePoint(this.text.codePointAt(this.at) ?? 0)) : 'the end of the file'
    throw new NoJson({
      code: 'no JSON',
      place: `line ${line}, column ${column}`,
      found: character,
      needed,
      ...(wayOut && { wayOut }),
    })
  }

  private skipBlanks(): void {
    while (this.at < this.text.length && ' \t\n\r'.includes(this.text[this.at])) this.at++
  }

  private take(character: string, needed = quoted(character)): void {
    this.skipBlanks()
    if (this.text[this.at] !== character) this.refuse(needed)
    this.at++
  }

  private isNext(character: string): boolean {
    this.skipBlanks()
    return this.text[this.at] === character
  }

  private value(): Json {
    this.skipBlanks()
    if (++this.values > limits.values) this.refuse(`at most ${limits.values} values`)
    const first = this.text[this.at]
    if (first === '{') return this.nested(() => this.object())
    if (first === '[') return this.nested(() => this.list())
    if (first === '"') return this.string()
    for (const [word, value] of words) {
      if (this.text.startsWith(word, this.at)) {
        this.at += word.length
        return value
      }
    }
    return this.number()
  }

  private nested<T>(read: () => T): T {
    if (++this.depth > limits.nesting) this.refuse(`at most ${limits.nesting} objects and lists inside one another`)
    const value = read()
    this.depth--
    return value
  }

  private object(): Json {
    this.at++
    const value: { [key: string]: Json } = {}
    const keys = new Set<string>()
    if (this.isNext('}')) this.at++
    else this.entries(value, keys)
    return value
  }

  private entries(value: { [key: string]: Json }, keys: Set<string>): void {
    do {
      this.skipBlanks()
      if (this.text[this.at] !== '"') {
        this.refuse('a key in quotation marks', this.text[this.at] === '}' ? 'Delete the comma before it.' : undefined)
      }
      const keyAt = this.at
      const key = this.string()
      this.take(':', 'a colon after the key')
      this.place.push(key)
      const isAllowed = this.isKeyAllowed(key, keys, keyAt)
      const inner = this.value()
      if (isAllowed) value[key] = inner
      this.place.pop()
    } while (this.isMoreBefore('}'))
  }

  private isKeyAllowed(key: string, keys: Set<string>, keyAt: number): boolean {
    const isForbidden = forbiddenKeys.has(key)
    const isAllowed = !isForbidden && !keys.has(key)
    keys.add(key)
    if (isAllowed || this.problems.length >= limits.problems) return isAllowed
    const place = this.place.join('.')
    const line = this.lineOf(keyAt)
    this.problems.push(
      isForbidden
        ? { code: 'forbidden key', place, found: `the key ${quoted(key)} in line ${line}`, needed: 'another name' }
        : {
            code: 'key twice',
            place,
            found: `the key ${quoted(key)} a second time, in line ${line}`,
            needed: 'every key once',
            wayOut: 'Delete or rename one of the two.',
          },
    )
    return false
  }

  /** Counts on from the last place asked for; places come in order, so that many questions cost one pass over the text. */
  private lineOf(at: number): number {
    for (; this.countedTo < at; this.countedTo++) if (this.text[this.countedTo] === '\n') this.lines++
    return this.lines
  }

  private list(): Json {
    this.at++
    const values: Json[] = []
    if (this.isNext(']')) {
      this.at++
      return values
    }
    do {
      if (this.isNext(']')) this.refuse('a value', 'Delete the comma before it.')
      this.place.push(values.length)
      values.push(this.value())
      this.place.pop()
    } while (this.isMoreBefore(']'))
    return values
  }

  /** Takes a comma and says yes, or takes the closing bracket and says no. */
  private isMoreBefore(end: string): boolean {
    this.skipBlanks()
    if (this.text[this.at] !== ',' && this.text[this.at] !== end) this.refuse(`a comma or ${quoted(end)}`)
    return this.text[this.at++] === ','
  }

  private number(): number {
    number.lastIndex = this.at
    const digits = number.exec(this.text)?.[0]
    if (digits === undefined) this.refuse('a value: text in quotation marks, a number, true, false, { or [')
    if (!Number.isFinite(Number(digits))) this.refuse('a number below 1e308')
    this.at += digits.length
    return Number(digits)
  }

  private string(): string {
    const start = ++this.at
    let decoded = ''
    let from = start
    while (this.text[this.at] !== '"') {
      if (this.at >= this.text.length) this.refuse('closing quotation marks')
      if (this.text.charCodeAt(this.at) < 0x20) this.refuse('closing quotation marks before the end of the line')
      if (this.text[this.at] === '\\') {
        decoded += this.text.slice(from, this.at) + this.escape()
        from = this.at
      } else this.at++
    }
    decoded += this.text.slice(from, this.at)
    this.at++
    return decoded
  }

  private escape(): string {
    const plain = escapes.get(this.text[this.at + 1])
    if (plain !== undefined) {
      this.at += 2
      return plain
    }
    const digits = this.text.slice(this.at + 2, this.at + 6)
    if (this.text[this.at + 1] !== 'u' || !hexadecimal.test(digits)) this.refuse('an escape such as \\" or \\u00b0')
    this.at += 6
    return String.fromCharCode(Number.parseInt(digits, 16))
  }
}

const escapes: ReadonlyMap<string, string> = new Map([
  ['"', '"'],
  ['\\', '\\'],
  ['/', '/'],
  ['b', '\b'],
  ['f', '\f'],
  ['n', '\n'],
  ['r', '\r'],
  ['t', '\t'],
])
