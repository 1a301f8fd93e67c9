/**
 * The catalogue of figures: every name that a requirement may ask for, with its unit and title.
 * Names with <toggle>, <loadCase>, <pin>, <everyPin>, <link>, <everyPart> or <stop> stand for one figure of each in the design.
 */
import type { FigureRow, FigureUnit, RowUnit } from './figure-rows/figure-row.ts'
import { loadCaseRows } from './figure-rows/load-case-rows.ts'
import { motionRows } from './figure-rows/motion-rows.ts'
import { returnRows } from './figure-rows/return-rows.ts'
import { strengthRows } from './figure-rows/strength-rows.ts'

export type { FigureUnit } from './figure-rows/figure-row.ts'

/** One list a question, in the order in which they are offered. */
const rows: readonly FigureRow[] = [...motionRows, ...returnRows, ...loadCaseRows, ...strengthRows]

/** Kinds of things that figures are of; a link is a part, and `pin` are those that bend a joint. */
export type ThingKind =
  | 'pin'
  | 'everyPin'
  | 'link'
  | 'everyPart'
  | 'stop'
  | SpringKind
  | 'screw'
  | 'mountScrew'
  | 'toggle'
  | 'loadCase'

/** Springs that state their wire: all, those with a room of their own, those that are pressed, those that are pulled. */
type SpringKind = 'woundSpring' | 'roomySpring' | 'pressedSpring' | 'pulledSpring'

/** What stands before and behind the thing in a name or a title. */
interface Parted {
  readonly before: string
  readonly behind: string
}

/** A row taken apart at its thing: done once, because every evaluation lays out the whole catalogue. */
interface Row {
  readonly unit: RowUnit
  /** Undefined for figures of the whole finger; all of their name and title is `before`. */
  readonly kind: ThingKind | undefined
  readonly name: Parted
  readonly title: Parted
}

const catalogue = rows.map(([pattern, unit, words]): Row => {
  const { kind, ...name } = takenApart(pattern)
  return { unit, kind, name, title: takenApart(words) }
})

function takenApart(text: string): Parted & { readonly kind: ThingKind | undefined } {
  const [before, kind, behind = ''] = text.split(/[<>]/)
  return { before, kind: kind as ThingKind | undefined, behind }
}

export interface FigureName {
  readonly id: string
  readonly unit: FigureUnit
  readonly title: string
}

interface Named {
  readonly id: string
  readonly name?: string
}

type PortKind = { readonly kind: 'drive' | 'couple' | 'force' }

/** What of a design decides which figures it has; a `Design` is one. */
export interface FigureScope {
  readonly drive: { readonly kind: 'turn' | 'pull' | 'wrap' }
  readonly release?: { readonly port: PortKind } | undefined
  /** With the parts that each joins, where they are known: only pins between phalanges bend a joint. */
  readonly pins: readonly (Named & { readonly joins?: readonly { readonly part: number }[] })[]
  readonly toggles: readonly Named[]
  readonly stops: readonly Named[]
  readonly springs?: readonly (Named & { readonly kind: string; readonly wire?: object | undefined })[]
  readonly screws?: readonly (Named & { readonly holdsMount?: object | undefined })[]
  readonly parts: readonly (Named & { readonly role: string })[]
  readonly loadCases: readonly (Named & { readonly keeper?: { readonly port: PortKind } | undefined })[]
  readonly tip?: object | undefined
}

/** Unit of what is asked for at a port. */
function portUnit({ kind }: PortKind, drive: FigureScope['drive']): FigureUnit {
  if (kind === 'drive') return drive.kind === 'turn' ? 'N·mm' : 'N'
  return kind === 'couple' ? 'N·mm' : 'N'
}

/**
 * All figures that a design can have, in the order of the catalogue. Left out are those of things that it has not declared:
 * the release effort without a release, the sustaining load and keeper ratio without a keeper, the tip without a tip.
 */
export function figureNames(scope: FigureScope): readonly FigureName[] {
  const things = thingsOf(scope)
  return catalogue.flatMap((row) => namesOfRow(row, scope, things))
}

type Things = Readonly<Record<ThingKind, readonly Named[]>>

function thingsOf(scope: FigureScope): Things {
  return {
    pin: scope.pins.filter((pin) => bendsJoint(pin, scope)),
    everyPin: scope.pins,
    link: scope.parts.filter((part) => part.role === 'link'),
    everyPart: scope.parts.filter((part) => part.role !== 'mount'),
    stop: scope.stops,
    toggle: scope.toggles,
    woundSpring: springs(scope, ['torsion', 'compression', 'tension']),
    roomySpring: springs(scope, ['torsion', 'compression']),
    pressedSpring: springs(scope, ['compression']),
    pulledSpring: springs(scope, ['tension']),
    screw: scope.screws ?? [],
    mountScrew: (scope.screws ?? []).filter(({ holdsMount }) => holdsMount),
    loadCase: scope.loadCases,
  }
}

function springs({ springs: all = [] }: FigureScope, kinds: readonly string[]): readonly Named[] {
  return all.filter(({ kind, wire }) => wire && kinds.includes(kind))
}

const PHALANGES = ['mount', 'proximal', 'middle', 'distal']

/** The rows with <pin> are flexions: they ask for a pin between two different parts of mount, proximal, middle and distal. */
function bendsJoint({ joins }: FigureScope['pins'][number], { parts }: FigureScope): boolean {
  if (!joins) return true
  return new Set(joins.map(({ part }) => parts[part].role).filter((role) => PHALANGES.includes(role))).size >= 2
}

/** The thing that a figure is of, as it stands in the figure's name from character `at` on; undefined for figures of the whole finger. */
export function thingOfFigure(
  figure: string,
): { readonly kind: ThingKind; readonly id: string; readonly at: number } | undefined {
  for (const { kind, name } of catalogue) {
    const { before, behind } = name
    if (kind === undefined || !figure.startsWith(before) || !figure.endsWith(behind)) continue
    const id = figure.slice(before.length, figure.length - behind.length)
    if (id !== '' && !id.includes('.')) return { kind, id, at: before.length }
  }
  return undefined
}

function namesOfRow({ kind, unit: rowUnit, name, title }: Row, scope: FigureScope, things: Things): readonly FigureName[] {
  if (kind === undefined) {
    if (name.before.startsWith('closed.tip.') && !scope.tip) return []
    const unit = unitOf(rowUnit, scope, scope.release)
    return unit ? [{ id: name.before, unit, title: title.before }] : []
  }
  return things[kind].flatMap((thing): readonly FigureName[] => {
    const keeper = 'keeper' in thing ? (thing as FigureScope['loadCases'][number]).keeper : undefined
    if (name.behind === '.keeperRatio' && !keeper) return []
    const unit = unitOf(rowUnit, scope, rowUnit === 'release' ? scope.release : keeper)
    if (!unit) return []
    return [{ id: name.before + thing.id + name.behind, unit, title: title.before + (thing.name ?? thing.id) + title.behind }]
  })
}

function unitOf(unit: RowUnit, { drive }: FigureScope, asked: { readonly port: PortKind } | undefined): FigureUnit | undefined {
  if (unit === 'drive') return drive.kind === 'turn' ? 'rad' : 'mm'
  if (unit === 'effort') return portUnit({ kind: 'drive' }, drive)
  if (unit === 'release' || unit === 'keeper') return asked && portUnit(asked.port, drive)
  return unit
}
