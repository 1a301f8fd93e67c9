/** Pins with the holes that they go through: a pin alone cannot grow, because it would not go in any more. */
import type { Change } from '../design/edit/change.ts'
import type { Desk } from '../design/edit/desk.ts'
import { entriesOf, valueAt } from '../design/edit/value-at.ts'
import type { Place } from '../design/json-places.ts'
import type { SensitivityInput } from './sensitivity-input.ts'

/** Pins whose diameter is typed in one way are stepped together. @param step as typed, a length */
export function pinSizeInputs(desk: Desk, step: string): readonly SensitivityInput[] {
  const groups = new Map<string, string[]>()
  for (const [id] of entriesOf(valueAt(desk.document, ['pins']))) {
    const typed = valueAt(desk.document, ['pins', id, 'diameter'])
    if (typeof typed === 'string') groups.set(typed, [...(groups.get(typed) ?? []), id])
  }
  return [...groups].map(([typed, pins]) => inputOf(desk, { typed, pins, step }))
}

interface PinGroup {
  readonly typed: string
  readonly pins: readonly string[]
  readonly step: string
}

function inputOf(desk: Desk, { typed, pins, step }: PinGroup): SensitivityInput {
  const own = pins.map((id) => rootOf(desk, ['pins', id, 'diameter']))
  const holes = pins.flatMap((id) => holesOf(desk, id)).filter((place) => !followsPin(desk, place, typed))
  const places = [...new Map([...own, ...holes.map((place) => rootOf(desk, place))].map((place) => [place.join('.'), place]))]
  const set = (sign: '+' | '-'): readonly Change[] =>
    places.map(([, place]) => ({ kind: 'set', place, value: `(${textAt(desk, place)}) ${sign} ${step}` }))
  const which = pins.length === 1 ? `pin ${pins[0]} with its holes` : `${pins.length} pins with their holes`
  return { place: own[0], title: which, typed: textAt(desk, own[0]), step, up: set('+'), down: set('-') }
}

function holesOf({ document }: Desk, pin: string): readonly Place[] {
  const joins = valueAt(document, ['pins', pin, 'joins'])
  return (Array.isArray(joins) ? joins : []).map((join): Place => {
    const [part, hole] = String(join).split('.')
    return ['parts', part, 'holes', hole, 'diameter']
  })
}

/** A hole that is typed by the size of its pin grows by itself. */
function followsPin(desk: Desk, place: Place, pin: string): boolean {
  const roots = [textAt(desk, place), textAt(desk, rootOf(desk, place))]
  return roots.some((text) => text.split(/[^\w]+/).includes(pin))
}

/** Where the size stands that a place names: its dimension, else the place itself. */
function rootOf({ document }: Desk, place: Place): Place {
  const dimension: Place = ['dimensions', textAt({ document }, place)]
  const stated = valueAt(document, dimension)
  if (stated === undefined) return place
  return typeof stated === 'object' ? [...dimension, 'value'] : dimension
}

const textAt = ({ document }: Pick<Desk, 'document'>, place: Place): string => String(valueAt(document, place) ?? '')
