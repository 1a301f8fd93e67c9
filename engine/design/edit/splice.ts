/** A change of a text as plain data: what undo keeps of every step. */
export interface Splice {
  /** Characters before it (UTF-16 code units, as JavaScript counts). */
  readonly at: number
  readonly removed: string
  readonly inserted: string
}

/** The one splice that turns a text into another: all that lies between their common beginning and their common end. */
export function spliceBetween(before: string, after: string): Splice {
  const shorter = Math.min(before.length, after.length)
  let start = 0
  while (start < shorter && before[start] === after[start]) start++
  if (splitsPair(before, start) || splitsPair(after, start)) start--
  let end = 0
  while (end < shorter - start && before[before.length - 1 - end] === after[after.length - 1 - end]) end++
  if (splitsPair(before, before.length - end) || splitsPair(after, after.length - end)) end--
  return { at: start, removed: before.slice(start, before.length - end), inserted: after.slice(start, after.length - end) }
}

/** Whether a cut there would part the two halves of one character. */
function splitsPair(text: string, at: number): boolean {
  return isBetween(text.charCodeAt(at - 1), 0xd800, 0xdbff) && isBetween(text.charCodeAt(at), 0xdc00, 0xdfff)
}

function isBetween(code: number, least: number, most: number): boolean {
  return code >= least && code <= most
}

/**
 * The text after the splice.
 * @throws when what it removes does not stand there: it was made for another text
 */
export function applySplice(text: string, { at, removed, inserted }: Splice): string {
  if (!text.startsWith(removed, at) || at < 0 || at > text.length) {
    throw new Error(`a splice for another text: at ${at} stands ${JSON.stringify(text.slice(at, at + removed.length))}`)
  }
  return text.slice(0, at) + inserted + text.slice(at + removed.length)
}

/** The splice that undoes another. */
export function inverseSplice({ at, removed, inserted }: Splice): Splice {
  return { at, removed: inserted, inserted: removed }
}
