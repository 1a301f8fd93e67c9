import { quoted } from '../numbers/quote.ts'
import type { Problem } from './problem.ts'

/** Carries a fault of spelling out of the recursive reader; never leaves `readJson`. */
export class NoJson extends Error {
  readonly problem: Problem
  constructor(problem: Problem) {
    super(problem.found)
    this.problem = problem
  }
}

const number = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y
const hexadecimal = /^[0-9a-fA-F]{4}$/
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

const [TAB, LINE_FEED, CARRIAGE_RETURN, SPACE, QUOTE, BACKSLASH] = Array.from('\t\n\r "\\', (character) =>
  character.charCodeAt(0),
)

/** The blanks of JSON; no code, at the end of the text, is none. */
function isBlank(code: number): boolean {
  return code === SPACE || code === LINE_FEED || code === CARRIAGE_RETURN || code === TAB
}

/** A place in a JSON text, moved on over blanks, signs, texts and numbers. */
export class Scanner {
  at = 0
  private readonly text: string
  private countedTo = 0
  private lines = 1

  constructor(text: string) {
    this.text = text
  }

  refuse(needed: string, wayOut?: string): never {
    const line = this.lineOf(this.at)
    const column = this.at - this.text.lastIndexOf('\n', this.at - 1)
    throw new NoJson({
      code: 'no JSON',
      place: `line ${line}, column ${column}`,
      found: this.isEnd() ? 'the end of the file' : quoted(String.fromCodePoint(this.text.codePointAt(this.at) ?? 0)),
      needed,
      ...(wayOut && { wayOut }),
    })
  }

  /** Line of a place, from 1. Places are asked for in order; it counts on, so that many questions cost one pass. */
  lineOf(at: number): number {
    for (; this.countedTo < at; this.countedTo++) if (this.text[this.countedTo] === '\n') this.lines++
    return this.lines
  }

  isEnd(): boolean {
    return this.at >= this.text.length
  }

  skipBlanks(): void {
    while (isBlank(this.text.charCodeAt(this.at))) this.at++
  }

  /** Whether the next character after blanks is this one; the scanner then stands before it. */
  isNext(character: string): boolean {
    this.skipBlanks()
    return this.text[this.at] === character
  }

  take(character: string, needed: string): void {
    if (!this.isNext(character)) this.refuse(needed)
    this.at++
  }

  takesWord(word: string): boolean {
    const isThere = this.text.startsWith(word, this.at)
    if (isThere) this.at += word.length
    return isThere
  }

  number(): number {
    number.lastIndex = this.at
    const digits = number.exec(this.text)?.[0]
    if (digits === undefined) this.refuse('a value: text in quotation marks, a number, true, false, { or [')
    if (!Number.isFinite(Number(digits))) this.refuse('a number below 1e308')
    this.at += digits.length
    return Number(digits)
  }

  string(): string {
    this.at++
    let decoded = ''
    let from = this.at
    for (let code = this.text.charCodeAt(this.at); code !== QUOTE; code = this.text.charCodeAt(this.at)) {
      if (this.isEnd()) this.refuse('closing quotation marks')
      if (code < SPACE) this.refuse('closing quotation marks before the end of the line')
      if (code === BACKSLASH) {
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
