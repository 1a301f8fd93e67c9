/**
 * The catalogue of figures: every name that a requirement may ask for, with its unit and title.
 * Names with <toggle>, <loadCase>, <pin> or <link> stand for one figure of each in the design.
 */

/** Inside units of a figure. Doors show `rad` in degrees and may turn mm and N into inch and lbf. */
export type FigureUnit = 'rad' | 'mm' | 'N' | 'N·mm' | 'N·mm per pin' | '1' | 'yes or no' | 'words'

/** `drive` is rad or mm, `effort` N·mm or N by the kind of drive; `release` and `keeper` N or N·mm by the kind of port. */
type RowUnit = FigureUnit | 'drive' | 'effort' | 'release' | 'keeper'

const rows: readonly (readonly [name: string, unit: RowUnit, title: string])[] = [
  ['motion.mobility', '1', 'Mobility'],
  ['motion.closes', 'yes or no', 'Closes'],
  ['motion.collides', 'yes or no', 'Parts run into each other'],
  ['motion.collisionDepth', 'mm', 'Deepest overlap of two parts'],
  ['open.drive', 'drive', 'Drive, open'],
  ['closed.drive', 'drive', 'Drive, closed'],
  ['open.joint.<pin>.flexion', 'rad', 'Flexion at <pin>, open'],
  ['closed.joint.<pin>.flexion', 'rad', 'Flexion at <pin>, closed'],
  ['closed.tip.x', 'mm', 'Tip, x, closed'],
  ['closed.tip.y', 'mm', 'Tip, y, closed'],
  ['motion.transmissionAngle.<link>.least', 'rad', 'Least transmission angle of <link>'],
  ['closed.toggle.<toggle>.deadCentreMargin', 'rad', 'Dead-centre margin of toggle <toggle>, closed'],
  ['closed.toggle.<toggle>.jamAngle', 'rad', 'Jam angle of toggle <toggle>, from rest'],
  ['closed.toggle.<toggle>.runJamAngle', 'rad', 'Jam angle of toggle <toggle>, moving'],
  ['play.toggle.<toggle>.least', 'rad', 'Dead-centre margin of toggle <toggle> within its play, least'],
  ['play.toggle.<toggle>.most', 'rad', 'Dead-centre margin of toggle <toggle> within its play, most'],
  ['letGo.toggle.<toggle>.deadCentreMargin', 'rad', 'Dead-centre margin of toggle <toggle> at let-go'],
  ['return.reserveFromRest', 'N·mm per pin', 'Return reserve from rest, least over the way'],
  ['return.reserveMoving', 'N·mm per pin', 'Return reserve moving, least over the way'],
  ['return.letsGo', 'yes or no', 'Lets go'],
  ['return.margin', '1', 'Return margin'],
  ['return.efficiency', '1', 'Return efficiency, least over the way'],
  ['return.worstAt', 'drive', 'Drive where the return is weakest'],
  ['drive.effortMost', 'effort', 'Largest effort on the way to closed'],
  ['drive.workToClose', 'N·mm', 'Work to close'],
  ['release.effort', 'release', 'Release effort past dead centre'],
  ['loadCase.<loadCase>.effortToClose', 'effort', 'Effort to close, <loadCase>'],
  ['loadCase.<loadCase>.effortToHold', 'effort', 'Effort to hold, <loadCase>'],
  ['loadCase.<loadCase>.effortFrictionless', 'effort', 'Effort without friction, <loadCase>'],
  ['loadCase.<loadCase>.holdsByItself', 'yes or no', 'Holds by itself, <loadCase>'],
  ['loadCase.<loadCase>.heldBy', 'words', 'Held by, <loadCase>'],
  ['loadCase.<loadCase>.share.stop', '1', 'Share carried by the stop, <loadCase>'],
  ['loadCase.<loadCase>.share.toggle', '1', 'Share carried by the toggle, <loadCase>'],
  ['loadCase.<loadCase>.share.friction', '1', 'Share carried by friction, <loadCase>'],
  ['loadCase.<loadCase>.share.spring', '1', 'Share carried by springs, <loadCase>'],
  ['loadCase.<loadCase>.share.weight', '1', 'Share carried by weight, <loadCase>'],
  ['loadCase.<loadCase>.share.wearer', '1', 'Share carried by the wearer, <loadCase>'],
  ['loadCase.<loadCase>.share.keeper', '1', 'Share carried by the keeper, <loadCase>'],
  ['loadCase.<loadCase>.sustainingLoad', 'keeper', 'Sustaining load on the keeper, <loadCase>'],
  ['loadCase.<loadCase>.keeperRatio', '1', 'Keeper ratio, <loadCase>'],
  ['loadCase.<loadCase>.letGoUnderLoadEffort', 'effort', 'Effort to let go under load, <loadCase>'],
  ['loadCase.<loadCase>.releaseEffort', 'release', 'Release effort under load, <loadCase>'],
  ['loadCase.<loadCase>.slipAngle', 'rad', 'Slip angle, <loadCase>'],
  ['loadCase.<loadCase>.holdWindow', 'rad', 'Hold window, <loadCase>'],
  ['loadCase.<loadCase>.loadedMargin', 'rad', 'Dead-centre margin under load, <loadCase>'],
  ['loadCase.<loadCase>.pinForceMost', 'N', 'Largest pin force, <loadCase>'],
  ['loadCase.<loadCase>.stopForceLeast', 'N', 'Least stop force, <loadCase>'],
  ['loadCase.<loadCase>.stopForceMost', 'N', 'Largest stop force, <loadCase>'],
  ['loadCase.<loadCase>.elasticMarginChange', 'rad', 'Elastic change of the dead-centre margin, <loadCase>'],
]

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
  return rows.flatMap((row) => namesOfRow(row, scope))
}

/** Kinds of things that figures are of; a link is a part. */
export type ThingKind = 'pin' | 'link' | 'toggle' | 'loadCase'

function things(kind: ThingKind, scope: FigureScope): readonly Named[] {
  switch (kind) {
    case 'pin':
      return scope.pins.filter((pin) => bendsJoint(pin, scope))
    case 'link':
      return scope.parts.filter((part) => part.role === 'link')
    case 'toggle':
      return scope.toggles
    case 'loadCase':
      return scope.loadCases
  }
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
  for (const [pattern] of rows) {
    const [before, kind, behind] = pattern.split(/[<>]/)
    if (kind === undefined || !figure.startsWith(before) || !figure.endsWith(behind)) continue
    const id = figure.slice(before.length, figure.length - behind.length)
    if (id !== '' && !id.includes('.')) return { kind: kind as ThingKind, id, at: before.length }
  }
  return undefined
}

function namesOfRow([pattern, rowUnit, title]: (typeof rows)[number], scope: FigureScope): readonly FigureName[] {
  if (pattern.startsWith('closed.tip.') && !scope.tip) return []
  const kind = /<(pin|link|toggle|loadCase)>/.exec(pattern)?.[1] as ThingKind | undefined
  if (kind === undefined) {
    const unit = unitOf(rowUnit, scope, scope.release)
    return unit ? [{ id: pattern, unit, title }] : []
  }
  return things(kind, scope).flatMap((thing) => {
    const keeper = 'keeper' in thing ? (thing as FigureScope['loadCases'][number]).keeper : undefined
    if (pattern.endsWith('.keeperRatio') && !keeper) return []
    const unit = unitOf(rowUnit, scope, rowUnit === 'release' ? scope.release : keeper)
    if (!unit) return []
    return [
      { id: pattern.replace(`<${kind}>`, () => thing.id), unit, title: title.replace(`<${kind}>`, () => thing.name ?? thing.id) },
    ]
  })
}

function unitOf(unit: RowUnit, { drive }: FigureScope, asked: { readonly port: PortKind } | undefined): FigureUnit | undefined {
  if (unit === 'drive') return drive.kind === 'turn' ? 'rad' : 'mm'
  if (unit === 'effort') return portUnit({ kind: 'drive' }, drive)
  if (unit === 'release' || unit === 'keeper') return asked && portUnit(asked.port, drive)
  return unit
}
