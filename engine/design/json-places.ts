/** Where the values of a JSON text stand in it, as a tree like that of the values. */
import { watchJson } from './json-text.ts'

/** A path in a JSON document: keys, and places in lists from 0. */
export type Place = readonly (string | number)[]

/** Where a value stands in its text: characters `at` up to but not including `end`; its key, if it has one, begins at `keyAt`. */
export interface Stand {
  readonly keyAt: number
  readonly at: number
  readonly end: number
  /** What stands in it, by key or place in the list, in the order of the text; of a doubled key the first. */
  readonly inner: ReadonlyMap<string | number, Stand>
}

interface Growing extends Stand {
  end: number
  readonly inner: Map<string | number, Growing>
}

/** The text that was looked at last: a memory, not a state. All moves of one drag change the same text. */
let last: { readonly text: string; readonly stand: Stand } | undefined

/** Of the whole text. A text that is no JSON throws. */
export function standsIn(text: string): Stand {
  if (last?.text !== text) last = { text, stand: foundIn(text) }
  return last.stand
}

function foundIn(text: string): Stand {
  const root: { stand?: Stand } = {}
  const open: Growing[] = []
  watchJson(text, {
    begins: ({ step, keyAt, at }) => {
      const stand: Growing = { keyAt, at, end: at, inner: new Map() }
      const owner = open.at(-1)?.inner
      if (step === undefined) root.stand = stand
      else if (owner && !owner.has(step)) owner.set(step, stand)
      open.push(stand)
    },
    ends: (end) => {
      const ended = open.pop()
      if (ended) ended.end = end
    },
  })
  if (!root.stand) throw new Error('a text was read that has no value')
  return root.stand
}

/** The stand of a place, or nothing where nothing stands. */
export function standAt(whole: Stand, place: Place): Stand | undefined {
  return place.reduce<Stand | undefined>((stand, step) => stand?.inner.get(step), whole)
}

/** Lines, from 1, of all places of a text that `readJson` could read, each by its steps with points between; of a doubled key the first. */
export function linesOf(text: string): ReadonlyMap<string, number> {
  const lines = new Map<string, number>()
  const open: string[] = []
  let line = 1
  let countedTo = 0
  watchJson(text, {
    begins: ({ step, keyAt }) => {
      const owner = open.at(-1)
      const here = owner === undefined || owner === '' ? String(step ?? '') : `${owner}.${step}`
      for (; countedTo < keyAt; countedTo++) if (text.charCodeAt(countedTo) === LINE_FEED) line++
      if (step !== undefined && !lines.has(here)) lines.set(here, line)
      open.push(here)
    },
    ends: () => open.pop(),
  })
  return lines
}

const LINE_FEED = 10
