/** Words for the tables in which a document is edited, made from the keys of the document. */
import type { Place } from '../json-places.ts'
import type { Leaf } from './leaves.ts'

/** Keys of collections, as one of their things is called. */
const singles: ReadonlyMap<string, string> = new Map([
  ['dimensions', 'dimension'],
  ['materials', 'material'],
  ['coatings', 'coating'],
  ['friction', 'friction pair'],
  ['wearRates', 'rate of wear'],
  ['parts', 'part'],
  ['stops', 'stop'],
  ['springs', 'spring'],
  ['screws', 'screw'],
  ['loadCases', 'load'],
  ['toggles', 'toggle'],
  ['requirements', 'requirement'],
  ['orders', 'order'],
  ['bought', 'bought item'],
  ['grease', 'grease point'],
  ['demands', 'demand'],
  ['benchTests', 'bench test'],
  ['risks', 'risk'],
  ['shownBy', 'shown by'],
  ['controls', 'control'],
  ['holes', 'hole'],
  ['edges', 'edge'],
  ['pads', 'pad'],
  ['racks', 'rack point'],
  ['outline', 'corner'],
  ['across', 'slice'],
  ['forces', 'force'],
  ['couples', 'couple'],
  ['sideways', 'sideways force'],
  ['joins', 'hole'],
  ['pins', 'pin'],
  ['shares', 'share'],
  ['givesWay', 'gives way'],
])

/** `effort most` from `effortMost`. */
const keyWords = (key: string): string => key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)

/** A part of a place in words: `hole dip`, `corner 3`, `moving least`. Members of lists count from 1. */
export function placeWords(steps: Place): string {
  const words = steps.map((step, index) => {
    if (typeof step === 'number') return String(step + 1)
    const isCollection = index + 1 < steps.length && singles.has(step)
    const isId = typeof steps[index - 1] === 'string' && singles.has(String(steps[index - 1]))
    return isId ? step : isCollection ? (singles.get(step) ?? step) : keyWords(step)
  })
  return words.join(' ')
}

/** What a field is called in its row: `diameter`, `x`, `moving least`, `value` for a thing that is nothing else. */
export function fieldLabel({ place, row, meaning }: Leaf): string {
  const rest = place.slice(row.length)
  const last = rest.at(-1)
  if (typeof last !== 'number' || meaning?.is !== 'quantity') return placeWords(rest) || 'value'
  const ends = place.includes('across') ? ['from', 'to'] : ['x', 'y']
  return [placeWords(rest.slice(0, -1)), ends[last]].filter((word) => word !== '').join(' ')
}

/** A leaf by the thing that it belongs to, such as `pin mcp: hole 2`; a thing that is nothing but its value by its name alone. */
export function leafWords(leaf: Leaf): string {
  const label = fieldLabel(leaf)
  return label === 'value' ? placeWords(leaf.row) : `${placeWords(leaf.row)}: ${label}`
}
