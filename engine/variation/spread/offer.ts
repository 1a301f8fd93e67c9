/**
 * What a shop offers instead of the tolerance that was drawn, e.g. ±0.03 mm where ±0.02 mm stands: which sizes it can be asked of, and what
 * a set becomes with it. A set keeps its place within the tolerance; the tolerance changes under it. So the sets of a run are judged once
 * more as they would have come out, and luck cancels.
 */
import type { Design, Tolerance } from '../../design/design.ts'
import type { Checked, Problem } from '../../design/problem.ts'
import { readQuantity } from '../../design/read-quantity.ts'
import type { QuantityKind } from '../../numbers/quantity.ts'
import { quoted } from '../../numbers/quote.ts'
import type { Source, SourceUnit, Variation } from '../sources/source.ts'
import type { Move, SetChange } from './set-change.ts'
import type { SpreadProblem } from './spread-problem.ts'

/** A size that a shop can offer another tolerance for. */
export interface OfferedSize {
  /** What it is asked by: `topLinkLength`, `pins.mcp.diameter` or `parts.middle.holes.dip.position`. */
  readonly name: string
  readonly words: string
  /** Of the tolerance that is drawn, in the source's unit: from the nominal size, or of a zone its width (mm) and nothing. */
  readonly drawn: Pick<Tolerance, 'lower' | 'upper'>
  readonly isZone: boolean
  /** A length or an angle in most cases. */
  readonly kind: QuantityKind
  readonly sources: readonly Source[]
}

/** A tolerance that is offered. */
export interface Offer {
  readonly size: OfferedSize
  /** As typed. */
  readonly typed: string
  /** What becomes of the value of each of its sources, in the source's unit, with the offered tolerance. */
  readonly move: Move
}

const kinds: Partial<Record<SourceUnit, QuantityKind>> = {
  mm: 'length',
  rad: 'angle',
  N: 'force',
  N·mm: 'couple',
}

/** All sizes of the sets with a tolerance that a drawing, or an order, states. */
export function offeredSizes({ design, sources }: Variation): readonly OfferedSize[] {
  return sources.flatMap((source, index): OfferedSize[] => {
    if (source.of !== 'sets' || source.law.kind === 'sample') return []
    const { id, words, unit } = source
    if (source.law.kind === 'disc') return source.law.axis === 'x' ? [zoneOf(design, [source, sources[index + 1]])] : []
    const kind = kinds[unit]
    if (!kind) return []
    const name = id.replace(/^dimensions\./, '')
    return [{ name, words, kind, isZone: false, drawn: drawnTolerance(design, source), sources: [source] }]
  })
}

function zoneOf({ parts }: Design, [x, y]: readonly Source[]): OfferedSize {
  const [, partId, , holeId] = x.id.split('.')
  const hole = parts.find(({ id }) => id === partId)?.holes.find(({ id }) => id === holeId)
  const name = x.id.replace(/\.x$/, '')
  const drawn = { lower: 0, upper: hole?.positionZone_mm ?? 0 }
  return { name, words: x.words.replace(/, x$/, ''), kind: 'length', isZone: true, drawn, sources: [x, y] }
}

/** As stated: a size under a coating is made within less, so that it is within its tolerance when it is coated. */
function drawnTolerance({ dimensions, parts, pins }: Design, { id, nominal, least, most }: Source): OfferedSize['drawn'] {
  const [root, first, , hole] = id.split('.')
  const stated =
    (root === 'dimensions' && dimensions.find(({ name }) => name === first)?.tolerance) ||
    (root === 'pins' && pins.find((pin) => pin.id === first)?.tolerance) ||
    (root === 'parts' &&
      id.endsWith('.diameter') &&
      parts.find((part) => part.id === first)?.holes.find((one) => one.id === hole)?.tolerance)
  return stated || { lower: least - nominal, upper: most - nominal }
}

/** Reads `NAME=±0.03 mm`, `NAME=+0.02 mm/-0.01 mm`, or for a zone `NAME=0.03 mm`. */
export function readOffer(variation: Variation, asked: string): Checked<Offer> {
  const cut = asked.indexOf('=')
  const [name, typed] = [asked.slice(0, Math.max(0, cut)).trim(), asked.slice(cut + 1).trim()]
  const size = offeredSizes(variation).find((one) => one.name === name || one.sources[0].id === name)
  if (cut < 0) return refused(name, `${quoted(asked)} has no =`, sizeHelp(variation))
  if (!size) return { problems: [noSuchSize(variation, name)] }
  const limits = readLimits(size, typed)
  if (!limits.value) return { problems: limits.problems }
  const move = size.isZone ? zoneMove(size, limits.value) : sizeMove(size, limits.value)
  const film = `${quoted(typed)} is less than the coating takes of it`
  return move ? { value: { size, typed, move } } : refused(name, film, 'a tolerance that is wider than the spread of its coating')
}

/** What an offer does to the sets of a problem; nothing to sources that the problem has not. */
export function movesOf({ sources }: SpreadProblem, { size, move }: Offer): SetChange['moves'] {
  return size.sources.flatMap(({ id }) => {
    const source = sources.findIndex((one) => one.id === id)
    return source < 0 ? [] : [{ source, ...move }]
  })
}

/** Of many sizes these are named: enough to see how they are written. */
const named_most = 8

/** No size with a tolerance has this name; which have. */
export function noSuchSize(variation: Variation, name: string): Problem {
  const names = offeredSizes(variation).map((size) => size.name)
  const more = names.length > named_most ? ` and ${names.length - named_most} more` : ''
  return {
    code: 'not offered',
    place: name,
    found: `no size with a tolerance has this name`,
    needed: names.length === 0 ? 'a design with tolerances' : `one of ${names.slice(0, named_most).join(', ')}${more}`,
  }
}

function sizeHelp(variation: Variation): string {
  const [first] = offeredSizes(variation)
  return first
    ? `the name of a size with a tolerance, =, and what is offered, such as ${first.name}=±0.03 mm`
    : 'a design with tolerances'
}

function refused(place: string, found: string, needed: string): { readonly problems: readonly Problem[] } {
  return { problems: [{ code: 'not offered', place, found, needed }] }
}

type Limits = OfferedSize['drawn']

function readLimits(size: OfferedSize, typed: string): Checked<Limits> {
  const needed = size.isZone ? 'the width of a zone, such as 0.03 mm' : 'both sides, such as ±0.03 mm or +0.02 mm/-0.01 mm'
  const wrong = refused(size.name, `${quoted(typed)} is not what a shop could hold`, needed)
  const sides = sidesOf(size, typed)
  if (!sides) return wrong
  const read = sides.map((side) => readQuantity(side, size.kind))
  // The upper side stands as it was typed.
  const bad = read.findLast(({ problems }) => problems !== undefined)
  if (bad?.problems) return { problems: bad.problems.map((problem) => ({ ...problem, place: size.name })) }
  const [lower, upper] = read.map(({ value }) => value ?? 0)
  const limits = size.isZone ? { lower: 0, upper: lower } : { lower, upper }
  return limits.upper > limits.lower ? { value: limits } : wrong
}

/** Lower and upper side as typed, or the one of a zone. */
function sidesOf({ isZone }: OfferedSize, typed: string): readonly string[] | undefined {
  if (isZone) return /^[\d.]/.test(typed) ? [typed] : undefined
  const even = /^(?:±|\+\/-|\+-)\s*(.+)$/.exec(typed)
  if (even) return [`-(${even[1]})`, even[1]]
  const two = /^\+\s*(.+?)\s*\/\s*-\s*(.+)$/.exec(typed)
  return two ? [`-(${two[2]})`, two[1]] : undefined
}

function zoneMove({ drawn }: OfferedSize, { upper }: Limits): Move | undefined {
  return drawn.upper > 0 ? { from: 0, to: 0, factor: upper / drawn.upper } : undefined
}

/** The coating takes as much of the new tolerance as it took of the old one. */
function sizeMove({ drawn, sources: [source] }: OfferedSize, { lower, upper }: Limits): Move | undefined {
  const { least, most } = source
  const film = Math.max(0, drawn.upper - drawn.lower - (most - least))
  const width = upper - lower - film
  if (!(width > 0 && most > least)) return undefined
  const shift = (lower + upper) / 2 - (drawn.lower + drawn.upper) / 2
  const middle = (least + most) / 2
  return { from: middle, to: middle + shift, factor: width / (most - least) }
}
