/** Which things of a document a leaf names: in a reference, in the name of a figure, in an expression. */
import { readExpression } from '../../numbers/expression.ts'
import { namesIn } from '../../numbers/measure.ts'
import { type ThingKind, thingOfFigure } from '../figure-names.ts'
import type { Place } from '../json-places.ts'
import type { JsonValue } from './change.ts'
import type { Leaf } from './leaves.ts'
import { valueAt } from './value-at.ts'

const sectionOfFigure: Readonly<Record<ThingKind, string>> = {
  pin: 'pins',
  everyPin: 'pins',
  link: 'parts',
  everyPart: 'parts',
  stop: 'stops',
  woundSpring: 'springs',
  roomySpring: 'springs',
  pressedSpring: 'springs',
  pulledSpring: 'springs',
  screw: 'screws',
  mountScrew: 'screws',
  toggle: 'toggles',
  loadCase: 'loadCases',
}

/** Places of the things that a leaf names, whether they are there or not; none for a text, a choice or a plain quantity. */
export function thingsNamed(document: JsonValue, { meaning, value, place }: Leaf): readonly Place[] {
  if (typeof value !== 'string') return []
  switch (meaning?.is) {
    case 'name':
      return [[meaning.of, value]]
    case 'partThing': {
      const [part, thing] = value.split('.')
      return [['parts', part, meaning.of, thing]]
    }
    case 'thingOfPart': {
      const part = valueAt(document, [...place.slice(0, -1), 'part'])
      return typeof part === 'string' ? [['parts', part, meaning.of, value]] : []
    }
    case 'face': {
      const [kind, id] = value.split('.')
      if (id === undefined || kind === 'faces') return []
      return [kind === 'threads' ? ['screws', id] : [...place.slice(0, 2), kind, id]]
    }
    case 'toleranced': {
      const steps = value.split('.')
      return [steps.length === 1 ? ['dimensions', value] : steps]
    }
    case 'figure': {
      const thing = thingOfFigure(value)
      return thing ? [[sectionOfFigure[thing.kind], thing.id]] : []
    }
    case undefined:
      return []
    default: {
      const expression = readExpression(value)
      return expression.fault ? [] : namesIn(expression.value).map((name) => ['dimensions', name])
    }
  }
}

/** Whether a place is another, or stands within it. */
export function isWithin(place: Place, other: Place): boolean {
  return other.every((step, index) => place[index] === step)
}
