/**
 * What a page that is left has not kept yet. It sends its last save on the way out, and the page that is opened in its place may ask for the
 * work before that arrives; so it leaves word in the browser of what it had.
 */
const KEY = 'fingerwright.left'
/** What was left longer ago has arrived or will not; another store may stand at this address by then. */
const MOMENT_MS = 10_000

/** The work on a design as it was left, and the version that it stood upon. */
export interface Left {
  readonly name: string
  readonly version: number
  readonly text: string
}

/** Leaves word; a browser that keeps nothing loses only this word. */
export function leave(left: Left): void {
  try {
    sessionStorage.setItem(KEY, JSON.stringify({ ...left, at_ms: Date.now() }))
  } catch {
    // Private windows and full stores refuse. The save itself is under way all the same.
  }
}

/** The word about a design that was left here last; it is given once. */
export function takeLeft(name: string): Left | undefined {
  try {
    const left = JSON.parse(sessionStorage.getItem(KEY) ?? '{}') as Partial<Left & { at_ms: number }>
    if (left.name !== name || left.version === undefined || left.text === undefined) return undefined
    sessionStorage.removeItem(KEY)
    if (Date.now() - (left.at_ms ?? 0) > MOMENT_MS) return undefined
    return { name, version: left.version, text: left.text }
  } catch {
    return undefined
  }
}
