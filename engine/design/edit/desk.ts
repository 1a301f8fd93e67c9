/** A document laid open for editing: its leaves, what its expressions may use, what its references may name. */

import { readExpression } from '../../numbers/expression.ts'
import { type Measured, measure, type Names } from '../../numbers/measure.ts'
import { kindOf, type QuantityKind } from '../../numbers/quantity.ts'
import { type FigureName, figureNames } from '../figure-names.ts'
import { figureScope } from '../figure-scope.ts'
import { type Place, type Stand, standAt, standsIn } from '../json-places.ts'
import { readJson } from '../json-text.ts'
import type { Checked, Problem } from '../problem.ts'
import { readDesign } from '../read-design.ts'
import { readDimensions } from '../read-dimensions.ts'
import { kindOfUnit } from '../read-requirements.ts'
import { Reading } from '../reading.ts'
import { readStructure } from '../structure.ts'
import type { JsonValue } from './change.ts'
import { type Leaf, leavesOf } from './leaves.ts'
import { valueAt } from './value-at.ts'

/** A document that is JSON, whatever problems it has besides. */
export interface Desk {
  readonly text: string
  readonly document: JsonValue
  readonly leaves: readonly Leaf[]
  readonly stands: Stand
  /** Dimensions that have a value. */
  readonly names: Names
  readonly figures: readonly FigureName[]
  /** Looked for when they are first asked for. */
  readonly problems: readonly Problem[]
}

/** Lays a document open; a text that is no JSON gives its problems. */
export function layOpen(text: string): Checked<Desk> {
  const { value: document, problems } = readJson(text)
  if (document === undefined) return { problems }
  const reading = new Reading(readStructure(document))
  readDimensions(reading)
  const pins = Object.keys(reading.document.pins ?? {}).map((id) => ({ id }))
  let found: readonly Problem[] | undefined
  const desk: Desk = {
    text,
    document,
    leaves: leavesOf(document),
    stands: standsIn(text),
    names: reading.knownNames,
    figures: figureNames(figureScope(reading.document, pins)),
    get problems() {
      found ??= readDesign(text).problems ?? []
      return found
    },
  }
  return { value: desk }
}

/** Lays open a document that is known to be JSON; another text throws. */
export function deskOf(text: string): Desk {
  const { value } = layOpen(text)
  if (!value) throw new Error('an edit of a text that is no JSON')
  return value
}

/** The leaf at a place; a place without one throws. */
export function leafAt({ leaves }: Desk, place: Place): Leaf {
  const key = JSON.stringify(place)
  const leaf = leaves.find((one) => JSON.stringify(one.place) === key)
  if (!leaf) throw new Error(`no field at ${place.join(' › ')}`)
  return leaf
}

/** What stands at a leaf as somebody typed it: a text without its quotation marks, a number with all its digits, yes or no. */
export function typedText({ text, stands }: Desk, { place, value }: Leaf): string | undefined {
  if (value === undefined) return undefined
  if (typeof value === 'string') return value
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  const stand = standAt(stands, place)
  return stand && text.slice(stand.at, stand.end)
}

/** In base units with what it measures; undefined for a text that cannot be read as a quantity. */
export function measuredText(typed: string, names: Names): Measured | undefined {
  const expression = readExpression(typed)
  return expression.fault ? undefined : measure(expression.value, names).value
}

/** What a quantity that is typed there has to measure; undefined where any kind will do, or what decides it is not known. */
export function kindOfLeaf(desk: Desk, { meaning, place, value }: Leaf): QuantityKind | undefined {
  const beside = (...steps: Place) => valueAt(desk.document, [...place.slice(0, -1), ...steps])
  switch (meaning?.is) {
    case 'quantity':
      return meaning.kind
    case 'size': {
      const measured = measuredText(String(value ?? ''), desk.names)
      return measured && kindOf(measured.powers)
    }
    case 'amount':
      return amountAt(desk, beside('port', 'kind'))
    case 'bound':
      return kindOfFigure(desk, beside('figure'))
    default:
      return undefined
  }
}

function amountAt({ document }: Desk, port: JsonValue | undefined): QuantityKind | undefined {
  if (port === 'force' || port === 'couple') return port
  const drive = valueAt(document, ['drive', 'kind'])
  return drive === undefined ? undefined : drive === 'turn' ? 'couple' : 'force'
}

function kindOfFigure({ figures }: Desk, id: JsonValue | undefined): QuantityKind | undefined {
  const unit = figures.find((figure) => figure.id === id)?.unit
  return unit === undefined || unit === 'yes or no' || unit === 'words' ? undefined : kindOfUnit[unit]
}
