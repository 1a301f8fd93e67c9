/** Springs that fit as rows, as one sentence and as a document; page and command line share them. */
import { type FittingSpring, type FittingSprings, showFigure, shownFigure } from '../../engine/index.ts'

/** One spring that fits, in words and numbers as they are printed. */
export interface SpringRow {
  readonly wire: string
  readonly diameter: string
  readonly outside: string
  readonly turns: string
  readonly rate: string
  /** What it gives where it gives least and where it gives most. */
  readonly gives: string
  /** Free length, or how far it is wound up where it gives least. */
  readonly free: string
  readonly set: string
  readonly life: string
  /** The least margin of all checks. */
  readonly least: string
  /** What is left around it, and along the pin. */
  readonly left: string
}

/** What stands over the columns of `springRows`. */
export const springHeads: SpringRow = {
  wire: 'wire',
  diameter: 'mm',
  outside: 'outside',
  turns: 'turns',
  rate: 'rate',
  gives: 'gives',
  free: 'free',
  set: 'set',
  life: 'life',
  least: 'least margin',
  left: 'room left',
}

/** One row a spring, the largest least margin first. */
export function springRows({ springs }: FittingSprings): readonly SpringRow[] {
  return springs.map(rowOf)
}

const number = (value: number, digits = 3): string => shownFigure(value, '1', { digits }).number

function rowOf({ spring, range, ready, checks, least, leftAround_mm, leftAlong_mm }: FittingSpring): SpringRow {
  const wire = spring.wire
  if (!wire) throw new Error('a spring that fits has lost its wire')
  const unit = spring.kind === 'torsion' ? 'N·mm' : 'N'
  const margin = (name: 'set' | 'fatigue') => (checks[name]?.margin ? number(checks[name].margin.value, 2) : '–')
  return {
    wire: wire.material.name,
    diameter: String(wire.wire_mm),
    outside: number(wire.mean_mm + wire.wire_mm),
    turns: String('bodyTurns' in wire ? wire.bodyTurns : wire.coils),
    rate: rateText(spring),
    gives: `${number(range.least)} to ${number(range.most)} ${unit}`,
    free: spring.kind === 'torsion' ? `wound up ${showFigure(ready, 'rad')}` : showFigure(spring.freeLength_mm, 'mm'),
    set: margin('set'),
    life: margin('fatigue'),
    least: number(least, 2),
    left: [leftAround_mm, ...(leftAlong_mm === undefined ? [] : [leftAlong_mm])].map(roomText).join(' and '),
  }
}

/** To a micrometre: what is left of equal sizes is rounding, and no room. */
function roomText(room_mm: number): string {
  return number(Number(room_mm.toFixed(3)), 2)
}

/** A rate in N·mm a degree or in N/mm. */
function rateText(spring: FittingSpring['spring']): string {
  if (spring.kind !== 'torsion') return `${number(spring.rate_N_mm)} N/mm`
  const perRadian = shownFigure(1, 'rad', { digits: 15 })
  return `${number(spring.rate_Nmm_rad / Number(perRadian.number))} N·mm/deg`
}

/** What was asked for and what came of it, in one sentence. */
export function springSentence({ spring, wanted, springs, judged_count }: FittingSprings): string {
  const asked =
    wanted.kind === 'torsion'
      ? `${number(wanted.least_Nmm)} to ${number(wanted.most_Nmm)} N·mm over ${showFigure(wanted.apart_rad, 'rad')}`
      : `${number(wanted.least_N)} N at ${showFigure(wanted.atLeast_mm, 'mm')} to ${number(wanted.most_N)} N at ${showFigure(wanted.atMost_mm, 'mm')}`
  const begins = `Spring ${spring.id} has to give ${asked}.`
  const holding = springs.filter(({ least }) => least >= 0).length
  if (springs.length === 0) return `${begins} No coil of any usual wire does that in the room that is stated.`
  if (holding === 0) return `${begins} Of ${judged_count} coils that fit none bears it: the nearest come first.`
  return `${begins} ${judged_count} coils fit; of the ${springs.length} listed ${holding === 1 ? 'one bears' : `${holding} bear`} it, the largest margin first.`
}

/** The springs as a document: keys of the design, numbers with their unit. */
export function springDocument({ springs }: FittingSprings): readonly object[] {
  return springs.map(({ spring, ready, least, checks, leftAround_mm, leftAlong_mm }) => ({
    kind: spring.kind,
    rate: spring.kind === 'torsion' ? `${spring.rate_Nmm_rad} N*mm/rad` : `${spring.rate_N_mm} N/mm`,
    ...(spring.kind === 'torsion' ? { preload: `${spring.preload_Nmm} N*mm` } : { freeLength: `${spring.freeLength_mm} mm` }),
    ...(spring.kind === 'tension' && { initial: `${spring.initial_N} N` }),
    wire: wireDocument(spring, ready),
    margins: Object.fromEntries(Object.entries(checks).flatMap(([name, { margin }]) => (margin ? [[name, margin.value]] : []))),
    leastMargin: least,
    roomLeft: { around: `${leftAround_mm} mm`, ...(leftAlong_mm !== undefined && { along: `${leftAlong_mm} mm` }) },
  }))
}

/** Keys as the design document has them, so that they can be taken over. */
function wireDocument({ wire }: FittingSpring['spring'], ready: number): object {
  if (!wire) return {}
  const common = { material: wire.material.name, diameter: `${wire.wire_mm} mm`, mean: `${wire.mean_mm} mm` }
  if ('arbour_mm' in wire) return { ...common, turns: wire.bodyTurns, woundUp: `${ready} rad`, arbour: `${wire.arbour_mm} mm` }
  if ('coils' in wire) return { ...common, coils: wire.coils, ends: wire.ends, seats: wire.seats }
  const hook = wire.hook && { loop: `${wire.hook.loop_mm} mm`, bend: `${wire.hook.bend_mm} mm` }
  return { ...common, turns: wire.bodyTurns, ...(hook && { hook }) }
}
