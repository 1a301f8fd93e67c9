/**
 * Strict JSON (RFC 8259) with what the built-in reader keeps to itself: line and column of a fault, keys that occur
 * twice, the lines of all places, and bounds on nesting and number of values. Keys that could reach into the language
 * (`__proto__`, `constructor`, `prototype`) are refused. Faults of spelling end the reading; doubled and forbidden keys are
 * collected and reading goes on.
 */
import { limits } from '../numbers/limits.ts'
import { quoted } from '../numbers/quote.ts'
import { NoJson, Scanner } from './json-scanner.ts'
import type { Problem } from './problem.ts'

export type Json = string | number | boolean | null | Json[] | { [key: string]: Json }

/** `value` is absent when the text is no JSON. */
export interface ReadJson {
  readonly value?: Json
  readonly problems: readonly Problem[]
}

/** Reads a JSON text; the value has no forbidden key, every key once, and at most `limits.nesting` levels. */
export function readJson(text: string): ReadJson {
  const reader = new Reader(new Scanner(text))
  try {
    return { value: reader.whole(), problems: reader.problems }
  } catch (error) {
    if (error instanceof NoJson) return { problems: [...reader.problems, error.problem] }
    throw error
  }
}

/** Told of every value of a text while it is read, from outside to inside and from front to back. */
export interface Watcher {
  /** A value begins at `at`; its key, when it has one, at `keyAt`. The whole of the file has no step. */
  readonly begins: (value: { readonly step?: string | number; readonly keyAt: number; readonly at: number }) => void
  /** The value that began last and has not ended yet ends before `end`. */
  readonly ends: (end: number) => void
}

/** Tells of all values of a text that `readJson` can read. */
export function watchJson(text: string, watcher: Watcher): void {
  new Reader(new Scanner(text), watcher).whole()
}

const forbiddenKeys: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype'])
const words: ReadonlyMap<string, Json> = new Map<string, Json>([
  ['true', true],
  ['false', false],
  ['null', null],
])

class Reader {
  readonly problems: Problem[] = []
  private readonly scanner: Scanner
  private readonly watcher: Watcher | undefined
  private readonly place: (string | number)[] = []
  private depth = 0
  private values = 0

  constructor(scanner: Scanner, watcher?: Watcher) {
    this.scanner = scanner
    this.watcher = watcher
  }

  whole(): Json {
    const value = this.watched()
    this.scanner.skipBlanks()
    if (!this.scanner.isEnd()) this.scanner.refuse('the end of the file')
    return value
  }

  /** @param step key of the value, or its place in a list, and where that stands; neither for the whole of the file */
  private watched(step?: string | number, keyAt?: number): Json {
    this.scanner.skipBlanks()
    const { at } = this.scanner
    this.watcher?.begins({ ...(step !== undefined && { step }), keyAt: keyAt ?? at, at })
    const value = this.value()
    this.watcher?.ends(this.scanner.at)
    return value
  }

  private value(): Json {
    if (++this.values > limits.values) this.scanner.refuse(`at most ${limits.values} values`)
    if (this.scanner.isNext('"')) return this.scanner.string()
    if (this.scanner.isNext('{')) return this.nested('object')
    if (this.scanner.isNext('[')) return this.nested('list')
    for (const [word, value] of words) if (this.scanner.takesWord(word)) return value
    return this.scanner.number()
  }

  private nested(kind: 'object' | 'list'): Json {
    if (++this.depth > limits.nesting) this.scanner.refuse(`at most ${limits.nesting} objects and lists inside one another`)
    this.scanner.at++
    const value = kind === 'object' ? this.object() : this.list()
    this.depth--
    return value
  }

  private object(): Json {
    const value: { [key: string]: Json } = {}
    if (this.scanner.isNext('}')) {
      this.scanner.at++
      return value
    }
    do {
      if (!this.scanner.isNext('"')) {
        this.scanner.refuse('a key in quotation marks', this.scanner.isNext('}') ? 'Delete the comma before it.' : undefined)
      }
      const keyAt = this.scanner.at
      const key = this.scanner.string()
      this.scanner.take(':', 'a colon after the key')
      this.place.push(key)
      const isAllowed = this.isKeyAllowed(key, value, keyAt)
      const inner = this.watched(key, keyAt)
      if (isAllowed) value[key] = inner
      this.place.pop()
    } while (this.isMoreBefore('}'))
    return value
  }

  /** @param read what stands before the key in its object */
  private isKeyAllowed(key: string, read: object, keyAt: number): boolean {
    const isForbidden = forbiddenKeys.has(key)
    const isTwice = Object.hasOwn(read, key)
    if ((isForbidden || isTwice) && this.problems.length < limits.problems) {
      const place = this.place.join('.')
      const line = this.scanner.lineOf(keyAt)
      const found = `the key ${quoted(key)}`
      this.problems.push(
        isForbidden
          ? { code: 'forbidden key', place, line, found, needed: 'another name' }
          : {
              code: 'key twice',
              place,
              line,
              found: `${found} a second time`,
              needed: 'every key once',
              wayOut: 'Delete or rename one.',
            },
      )
    }
    return !isForbidden && !isTwice
  }

  private list(): Json {
    const values: Json[] = []
    if (this.scanner.isNext(']')) {
      this.scanner.at++
      return values
    }
    do {
      if (this.scanner.isNext(']')) this.scanner.refuse('a value', 'Delete the comma before it.')
      this.place.push(values.length)
      values.push(this.watched(values.length, this.scanner.at))
      this.place.pop()
    } while (this.isMoreBefore(']'))
    return values
  }

  /** Takes a comma and says yes, or takes the closing bracket and says no. */
  private isMoreBefore(end: string): boolean {
    const isMore = this.scanner.isNext(',')
    if (!isMore && !this.scanner.isNext(end)) this.scanner.refuse(`a comma or ${quoted(end)}`)
    this.scanner.at++
    return isMore
  }
}
