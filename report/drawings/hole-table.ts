/** Holes and stop edges as a table beside the view, where there are more of them than blocks have room for. */
import type { DrawnPart } from '../../engine/index.ts'
import { type Callout, calloutsOf } from './callouts.ts'
import { lengthText, sizeWords } from './size-words.ts'
import type { TableColumn } from './table-ink.ts'

/** Columns; those that no row fills are left out. */
export const holeColumns: readonly TableColumn[] = [
  { head: '' },
  { head: 'where', most: 40 },
  { head: 'x [exact]' },
  { head: 'y [exact]' },
  { head: 'size', most: 36 },
  { head: 'tolerance' },
]

/** A row for each block that would stand above the view: its name, its place in the part's frame, what is said of it, its zone with its datums. */
export function holeRows(drawn: DrawnPart): readonly (readonly string[])[] {
  return calloutsOf(drawn).map((callout, index) => {
    const [name, ...lines] = callout.lines
    return [rowLetter(index), name, ...placeWords(drawn, index), lines.join(', '), zoneWords(callout)]
  })
}

const LETTERS = 'abcdefghijklmnopqrstuvwxyz'

/** By which a row is found on the view: a to z, then aa, ab; corners have numbers. */
export function rowLetter(index: number): string {
  const last = LETTERS[index % LETTERS.length]
  return index < LETTERS.length ? last : rowLetter(Math.floor(index / LETTERS.length) - 1) + last
}

/** In the part's frame; in brackets where a zone lies about it, so that it is exact. Blank for a stop edge, whose ends its own words tell. */
function placeWords({ holes }: DrawnPart, index: number): readonly [string, string] {
  const drawn = holes.at(index)
  if (drawn === undefined) return ['', '']
  const isExact = (drawn.hole.positionZone_mm ?? 0) > 0
  const words = (axis: 'x' | 'y'): string => (isExact ? `[${sizeWords(drawn[axis])}]` : sizeWords(drawn[axis]))
  return [words('x'), words('y')]
}

function zoneWords({ frame, datum }: Callout): string {
  const own = datum === undefined ? [] : [`datum ${datum}`]
  if (frame === undefined) return own.join('')
  const { of, zone_mm, hasBonus, datums } = frame
  const zone = `${of === 'position' ? 'position Ø' : 'profile '}${lengthText(zone_mm)}${hasBonus ? ' (M)' : ''}`
  return [...own, `${zone} to ${datums.join(', ')}`].join('; ')
}
