/** The inputs of a design whose steps are tried: what somebody typed as a number with its unit, and each friction pair as a whole. */
import type { Change } from '../design/edit/change.ts'
import { type Desk, kindOfLeaf, typedText } from '../design/edit/desk.ts'
import { leafWords } from '../design/edit/field-words.ts'
import type { Leaf } from '../design/edit/leaves.ts'
import { thingsNamed } from '../design/edit/named-things.ts'
import { isThing } from '../design/edit/renamed.ts'
import { valueAt } from '../design/edit/value-at.ts'
import type { Place } from '../design/json-places.ts'
import type { QuantityKind } from '../numbers/quantity.ts'
import { pinSizeInputs } from './pin-size-inputs.ts'
import type { SensitivityInput } from './sensitivity-input.ts'

/** Steps that a workshop thinks in. */
const length = '0.1 mm'
const angle = '1 deg'
const share = 0.1

/** What takes no part in how the finger moves and holds, or only says how well a size is kept. */
const idle: ReadonlySet<string | number> = new Set([
  'bought',
  'centreOfMass',
  'coatings',
  'drawn',
  'effortMost',
  'factors',
  'givesWay',
  'making',
  'mass',
  'materials',
  'most',
  'orders',
  'outline',
  'position',
  'profile',
  'requirements',
  'room',
  'screws',
  'tolerance',
  'use',
  'variation',
  'wearRates',
  'weight',
  'within',
])

/** What is no size of the finger: who uses it, with which loads and surfaces, and what is asked of it. */
const noSize: ReadonlySet<string | number> = new Set(['drive', 'friction', 'loadCases', 'pads', 'release', 'drag', 'stiffness'])
/** What moves nothing and bears something. */
const bearing: ReadonlySet<string | number> = new Set(['screws', 'wire'])

/** The sizes of the finger whose change could help its strength: pins with their holes, places and sizes, springs with their wire, screws. Outlines stay. */
export function sizeInputs(desk: Desk): readonly SensitivityInput[] {
  const isLeftOut = (place: Place): boolean =>
    isNamed(place, noSize) || (isNamed(place, idle) && !place.some((step) => bearing.has(step)))
  return [
    ...pinSizeInputs(desk, length),
    ...desk.leaves.flatMap((leaf) => (isLeftOut(leaf.place) ? [] : steppedInput(desk, leaf))),
  ]
}

/** Whether a place stands in a section, or has a key, of those names; things that somebody gave such a name do not count. */
function isNamed(place: Place, names: ReadonlySet<string | number>): boolean {
  return place.some((step, index) => names.has(step) && !isThing(place.slice(0, index + 1)))
}

/** All inputs in the order of the document. What is an expression of dimensions follows those and is none itself. */
export function sensitivityInputs(desk: Desk): readonly SensitivityInput[] {
  const own = desk.leaves.flatMap((leaf) => (leaf.place[0] === 'friction' ? [] : quantityInput(desk, leaf)))
  return [...frictionInputs(desk), ...own]
}

function quantityInput(desk: Desk, leaf: Leaf): readonly SensitivityInput[] {
  const isIdle = isNamed(leaf.place, idle) || isWireBesideRate(desk, leaf.place)
  return isIdle ? [] : steppedInput(desk, leaf)
}

function steppedInput(desk: Desk, leaf: Leaf): readonly SensitivityInput[] {
  const { place } = leaf
  const typed = typedText(desk, leaf)
  const kind = kindOfLeaf(desk, leaf)
  if (typed === undefined || kind === undefined || thingsNamed(desk.document, leaf).length > 0) return []
  const [step, more, less] = stepOf(kind, typed)
  const set = (value: string): readonly Change[] => [{ kind: 'set', place, value }]
  return [{ place, title: leafWords(leaf), typed, step, up: set(more), down: set(less) }]
}

/** Where rate and preload are stated the finger moves by these, whatever the wire. */
function isWireBesideRate({ document }: Desk, [section, id, key]: Place): boolean {
  if (section !== 'springs' || key !== 'wire') return false
  const [rate, preload, kind] = ['rate', 'preload', 'kind'].map((one) => valueAt(document, ['springs', id, one]))
  return rate !== undefined && (kind !== 'torsion' || preload !== undefined)
}

function stepOf(kind: QuantityKind, typed: string): readonly [step: string, more: string, less: string] {
  if (kind === 'length') return [length, `(${typed}) + ${length}`, `(${typed}) - ${length}`]
  if (kind === 'angle') return ['1°', `(${typed}) + ${angle}`, `(${typed}) - ${angle}`]
  return [`${100 * share} %`, `${1 + share} * (${typed})`, `${1 - share} * (${typed})`]
}

/** A pair that waits to take over from one that is worn through does nothing yet. */
const isPairOfJoint = ({ place, meaning }: Leaf): boolean =>
  meaning?.is === 'name' && meaning.of === 'friction' && place[0] !== 'friction'

/** Six values that are bound to one another by their order: they go up and down together. */
function frictionInputs({ leaves, document }: Desk): readonly SensitivityInput[] {
  const acting = new Set(leaves.filter(isPairOfJoint).map(({ value }) => value))
  const values = leaves.filter(
    ({ place, meaning }) => place[0] === 'friction' && place[2] !== 'wear' && meaning?.is === 'quantity',
  )
  const names = [...new Set(values.map(({ place }) => String(place[1])))].filter((name) => acting.has(name))
  return names.map((name) => {
    const own = values.filter((leaf) => leaf.place[1] === name && thingsNamed(document, leaf).length === 0)
    const times = (factor: number): readonly Change[] =>
      own.map(({ place, value }) => ({ kind: 'set', place, value: `${factor} * (${value})` }))
    const typed = `${own.length} values`
    const title = `friction pair ${name}`
    return { place: ['friction', name], title, typed, step: `${100 * share} %`, up: times(1 + share), down: times(1 - share) }
  })
}
