/**
 * An edit is a change of the text. The value that changes is found where it stands and only its characters are replaced; the order,
 * the blanks and the spelling of all others stay as somebody wrote them.
 *
 *     "x": "6.47 mm", "y": …        set the value x      ▸ the characters of "6.47 mm"
 *     { "a": 1, "b": 2 }            remove b             ▸ from the end of 1 to the end of 2
 *     { "a": 1 }                    set a new key b      ▸ behind the end of 1, on a line of its own where a has one
 */
import { type Place, type Stand, standAt, standsIn } from '../json-places.ts'
import type { Change, JsonValue } from './change.ts'
import { laidOut } from './json-layout.ts'
import { applySplice, type Splice } from './splice.ts'

/**
 * The text of a document with the changes made one after the other.
 *
 * @param text JSON that `readJson` can read
 * @returns the text; a change of a value to itself leaves it as it is
 * @throws when the text is no JSON, or a place has no owner: our own fault, a door offers only places that are there
 */
export function changeDocument(text: string, changes: readonly Change[]): string {
  const whole = standsIn(text)
  const apart = valuesApart(whole, changes)
  if (apart) return apart.reduce((changed, { stand, value }) => spliced(changed, replaced(changed, stand, value)), text)
  return changes.reduce((changed, change) => spliced(changed, spliceOf(changed, change, standsIn(changed))), text)
}

function spliced(text: string, splice: Splice | undefined): string {
  return splice ? applySplice(text, splice) : text
}

interface Replacement {
  readonly stand: Stand
  readonly value: JsonValue
}

/**
 * Values that stand beside each other and are only replaced, the last in the text first: none moves those before it, so that one look at
 * the text serves for all of them. A hand that drags changes x and y sixty times a second.
 */
function valuesApart(whole: Stand, changes: readonly Change[]): readonly Replacement[] | undefined {
  const found: Replacement[] = []
  for (const { kind, place, ...rest } of changes) {
    const stand = kind === 'set' ? standAt(whole, place) : undefined
    if (!stand || !('value' in rest)) return undefined
    found.push({ stand, value: rest.value })
  }
  found.sort((one, other) => other.stand.at - one.stand.at)
  const isApart = found.every(({ stand }, index) => index === 0 || stand.end <= found[index - 1].stand.at)
  return isApart ? found : undefined
}

function spliceOf(text: string, change: Change, whole: Stand): Splice | undefined {
  const place = change.place
  const stand = standAt(whole, place)
  if (change.kind === 'set' && stand) return replaced(text, stand, change.value)
  if (change.kind === 'remove' && !stand) return undefined
  const owner = standAt(whole, place.slice(0, -1))
  const step = place.at(-1)
  if (!owner || step === undefined) throw new Error(`no such place to change: ${place.join(' › ')}`)
  if (change.kind === 'set') return added(text, owner, { step, value: change.value, place })
  if (change.kind === 'remove') return stand && removed(text, owner, stand)
  if (!stand || typeof step !== 'string') throw new Error(`no key to rename: ${place.join(' › ')}`)
  const typed = text.slice(stand.keyAt, stand.at)
  const key = typed.slice(0, typed.lastIndexOf('"') + 1)
  return { at: stand.keyAt, removed: key, inserted: JSON.stringify(change.to) }
}

function replaced(text: string, { at, end }: Stand, value: JsonValue): Splice | undefined {
  const before = text.slice(at, end)
  if (laidOut(JSON.parse(before)) === laidOut(value)) return undefined
  return { at, removed: before, inserted: laidOut(value, indentAt(text, at)) }
}

interface Entry {
  readonly step: string | number
  readonly value: JsonValue
  readonly place: Place
}

function added(text: string, owner: Stand, { step, value, place }: Entry): Splice {
  const isList = text[owner.at] === '['
  const isFitting = isList ? step === owner.inner.size : typeof step === 'string'
  if (!isFitting || !'[{'.includes(text[owner.at])) throw new Error(`nothing can be added at ${place.join(' › ')}`)
  const key = isList ? '' : `${JSON.stringify(step)}: `
  const last = [...owner.inner.values()].at(-1)
  if (!last) return firstEntry(text, owner, (indent) => key + laidOut(value, indent))
  const isOnOwnLine = text.slice(owner.at, last.keyAt).includes('\n') && ownsLine(text, last.keyAt)
  const indent = indentAt(text, last.keyAt)
  const entry = key + laidOut(value, isOnOwnLine ? indent : '')
  return { at: last.end, removed: '', inserted: isOnOwnLine ? `,\n${indent}${entry}` : `, ${entry}` }
}

/** An object or list that was empty takes up its first entry as a new one would be written. */
function firstEntry(text: string, { at, end }: Stand, entry: (indent: string) => string): Splice {
  const isList = text[at] === '['
  const indent = indentAt(text, at)
  const line = entry('')
  const isShort = !line.includes('\n') && line.length + indent.length < shortLine
  const blank = isList ? '' : ' '
  const inner = isShort ? `${blank}${line}${blank}` : `\n${indent}  ${entry(`${indent}  `)}\n${indent}`
  return { at: at + 1, removed: text.slice(at + 1, end - 1), inserted: inner }
}

/** A first entry up to this length stays on the line of its owner. */
const shortLine = 80

/** With the comma and the blanks that go with it: those before it, or behind it when it is the first. */
function removed(text: string, owner: Stand, stand: Stand): Splice {
  const siblings = [...owner.inner.values()]
  const index = siblings.indexOf(stand)
  const before = siblings[index - 1]
  const behind = siblings[index + 1]
  const from = before ? before.end : behind ? stand.keyAt : owner.at + 1
  const to = before ? stand.end : behind ? behind.keyAt : owner.end - 1
  return { at: from, removed: text.slice(from, to), inserted: '' }
}

/** The blanks at the beginning of the line in which a character stands. */
function indentAt(text: string, at: number): string {
  const start = text.lastIndexOf('\n', at - 1) + 1
  return /^[ \t]*/.exec(text.slice(start, at))?.[0] ?? ''
}

function ownsLine(text: string, at: number): boolean {
  return text.slice(text.lastIndexOf('\n', at - 1) + 1, at).trim() === ''
}
