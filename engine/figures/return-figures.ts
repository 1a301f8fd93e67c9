/** Figures of letting go: the return reserve over the way back, the jam angles, play and release. */

import { pairsInUse } from '../design/pairs-in-use.ts'
import { standingLoad } from '../forces/force-bench.ts'
import { findJam, type Jam, type JamKind, type SurveyedNode } from '../forces/jam.ts'
import { effortToOpen, openingPort } from '../forces/letting-go.ts'
import { atLetGo, framesNear, type LetGo, playBand, statedStiffness } from '../forces/states.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { once } from '../numbers/once.ts'
import type { WorkingValue } from './evaluation.ts'
import { type FigureSheet, line } from './figure-sheet.ts'
import { driveUnit } from './motion-figures.ts'
import type { Survey } from './survey.ts'

/** Each is worked out when it is first read. */
export interface ReturnFound {
  readonly jam: Jam
  readonly runJam: Jam
  /** Absent where no state of rest was found at let-go. */
  readonly letGo: LetGo | undefined
  /** Index of the posture with the least reserve from rest. */
  readonly worst: number | undefined
  readonly letsGo: boolean | undefined
  readonly least: Readonly<Record<JamKind, Least | undefined>>
}

interface Least {
  readonly index: number
  readonly value: number
}

const NO_STATE = 'no equilibrium was found at every posture'

/** Return reserves (N·mm a pin), jam angles and play (rad), release effort. @returns what load cases and the travel's events build on */
export function addReturnFigures(sheet: FigureSheet, survey: Survey): ReturnFound {
  const found = returnFound(survey)
  if (sheet.asks(...RESERVES)) addReserves(sheet, survey, found)
  addJamAngles(sheet, survey, { found, figure: 'jamAngle' })
  addJamAngles(sheet, survey, { found, figure: 'runJamAngle' })
  addPlay(sheet, survey, found)
  if (survey.design.release && sheet.asks('release.effort')) addRelease(sheet, survey)
  return found
}

const RESERVES = [
  'return.reserveFromRest',
  'return.reserveMoving',
  'return.letsGo',
  'return.worstAt',
  'return.margin',
  'return.efficiency',
]

function returnFound(survey: Survey): ReturnFound {
  const { path, bench } = survey
  const jamOf = (kind: JamKind): (() => Jam) =>
    once(() => {
      const surveyed = survey.nodes.map((node, index): SurveyedNode => ({ node, reserve: survey.reserves[index]?.[kind] }))
      return findJam(bench, path, kind, surveyed)
    })
  const [jam, runJam] = [jamOf('fromRest'), jamOf('moving')]
  const letGo = once(() => atLetGo(survey.closed, { clearance: true, stiffnessOf: statedStiffness(path) }))
  const least = once((): ReturnFound['least'] => {
    const atEnd = letGo()
    const leastIn = (kind: JamKind): Least | undefined =>
      leastOf([...survey.reserves.map((reserve) => reserve?.[kind]), ...(atEnd ? [atEnd.reserve[kind]?.amplitude] : [])])
    return { fromRest: leastIn('fromRest'), moving: leastIn('moving') }
  })
  return {
    get jam() {
      return jam()
    },
    get runJam() {
      return runJam()
    },
    get letGo() {
      return letGo()
    },
    get least() {
      return least()
    },
    get worst() {
      const { fromRest } = least()
      return fromRest && Math.min(fromRest.index, survey.reserves.length - 1)
    },
    get letsGo() {
      const { fromRest } = least()
      return fromRest && fromRest.value > 0
    },
  }
}

function frictionLines({ design }: Survey, state: 'moving' | 'rest'): WorkingValue[] {
  return pairsInUse(design).map((pair) =>
    line(`${state === 'rest' ? 'at rest' : 'moving'}, most: ${pair.name}`, pair[state].most, '1', `friction.${pair.name}`),
  )
}

function springLines({ design }: Survey): WorkingValue[] {
  return design.springs.map((spring) =>
    spring.kind === 'torsion'
      ? line(`preload of ${spring.id}`, spring.preload_Nmm, 'N·mm', `springs.${spring.id}.preload`)
      : line(`free length of ${spring.id}`, spring.freeLength_mm, 'mm', `springs.${spring.id}.freeLength`),
  )
}

/** Least of a list that may have gaps; undefined as a whole when one is missing. */
function leastOf(values: readonly (number | undefined)[]): Least | undefined {
  let least: Least | undefined
  for (const [index, value] of values.entries()) {
    if (value === undefined) return undefined
    if (!least || value < least.value) least = { index, value }
  }
  return least
}

function addReserves(sheet: FigureSheet, survey: Survey, { least }: ReturnFound): void {
  const { reserves, drive } = survey
  const unit = driveUnit(survey)
  const { fromRest: rest, moving } = least
  const place = (index: number): number => drive[Math.min(index, drive.length - 1)]
  const base = [...springLines(survey), line('postures looked at', reserves.length, '1')]
  sheet.add('return.reserveFromRest', {
    value: rest?.value,
    why: NO_STATE,
    inputs: [...frictionLines(survey, 'rest'), ...base],
    steps: rest ? [line('least at drive', place(rest.index), unit)] : [],
  })
  sheet.add('return.reserveMoving', {
    value: moving?.value,
    why: NO_STATE,
    inputs: [...frictionLines(survey, 'moving'), ...base],
    steps: moving ? [line('least at drive', place(moving.index), unit)] : [],
  })
  sheet.add('return.letsGo', {
    value: rest && rest.value > 0,
    why: NO_STATE,
    inputs: rest ? [line('least reserve from rest', rest.value, 'N·mm per pin')] : [],
  })
  sheet.add('return.worstAt', {
    value: rest && place(rest.index),
    why: NO_STATE,
    inputs: rest ? [line('least reserve from rest', rest.value, 'N·mm per pin')] : [],
  })
  addMarginAndEfficiency(sheet, survey, rest?.value)
}

function addMarginAndEfficiency(sheet: FigureSheet, { reserves, design }: Survey, restReserve: number | undefined): void {
  const drag = Math.max(0, ...design.pins.map((pin) => pin.drag_Nmm))
  sheet.add('return.margin', {
    value: drag > 0 && restReserve !== undefined ? (restReserve + drag) / drag : undefined,
    why: drag > 0 ? NO_STATE : 'no drag is declared at any pin, so there is nothing to compare the reserve with',
    inputs: [line('largest declared drag', drag, 'N·mm')],
  })
  const efficiency = leastOf(
    reserves
      .filter((reserve) => !reserve || reserve.free > 0)
      .map((reserve) => (reserve?.moving === undefined ? undefined : reserve.moving / reserve.free)),
  )
  sheet.add('return.efficiency', {
    value: efficiency?.value,
    why: 'nowhere on the way do the springs open the finger, even without friction',
  })
}

const JAM_WORDS: Record<Exclude<Jam['kind'], 'at'>, string> = {
  turnsBack: 'the toggle turns back before it comes near enough to dead centre to jam',
  never: 'the springs open it as far as the path was followed past dead centre: it does not jam there',
  everywhere: 'the springs do not open it at any posture',
  unknown: 'no equilibrium was found on the way to dead centre',
}

interface JamFigure {
  readonly found: ReturnFound
  readonly figure: 'jamAngle' | 'runJamAngle'
}

function addJamAngles(sheet: FigureSheet, survey: Survey, { found, figure }: JamFigure): void {
  const { design, path } = survey
  design.toggles.forEach((toggle, index) => {
    const id = `closed.toggle.${toggle.id}.${figure}`
    if (!sheet.asks(id)) return
    const jam = figure === 'jamAngle' ? found.jam : found.runJam
    const inputs = [...frictionLines(survey, figure === 'jamAngle' ? 'rest' : 'moving'), ...springLines(survey)]
    if (jam.kind !== 'at') {
      sheet.add(id, {
        why: JAM_WORDS[jam.kind],
        ...((jam.kind === 'never' || jam.kind === 'turnsBack') && { beyond: 'below any' as const }),
        inputs,
      })
      return
    }
    const { posture } = jam.node
    sheet.add(id, {
      value: toggleMargin(path.toggles[index], posture),
      inputs,
      steps: [line('drive there', path.drive.value(posture), driveUnit(survey))],
    })
  })
}

function addPlay(sheet: FigureSheet, survey: Survey, found: ReturnFound): void {
  const { design, path } = survey
  const clearances = path.mechanism.joints.map((joint) =>
    line(`clearance at ${design.pins[joint.pin].id}`, joint.clearance_mm, 'mm', `pins.${design.pins[joint.pin].id}`),
  )
  design.toggles.forEach((toggle, index) => {
    addBand(sheet, survey, { index, inputs: clearances })
    const id = `letGo.toggle.${toggle.id}.deadCentreMargin`
    if (!sheet.asks(id)) return
    const { letGo } = found
    sheet.add(id, {
      value: letGo && toggleMargin(path.toggles[index], letGo.posture),
      why: 'no state of rest was found at let-go',
      inputs: clearances,
      steps: letGo ? [line('rounds of posture and forces', letGo.rounds, '1')] : [],
    })
  })
}

interface Banded {
  /** Of the toggle. */
  readonly index: number
  readonly inputs: readonly WorkingValue[]
}

function addBand(sheet: FigureSheet, { closed, design }: Survey, { index, inputs }: Banded): void {
  const [least, most] = ['least', 'most'].map((end) => `play.toggle.${design.toggles[index].id}.${end}`)
  if (!sheet.asks(least, most)) return
  const band = playBand(closed, index)
  const why = 'the play does not settle at the closed posture'
  sheet.add(least, { value: band?.least_rad, why, inputs })
  sheet.add(most, { value: band?.most_rad, why, inputs })
}

/** Release at its own port from the closed posture; springs help. */
function addRelease(sheet: FigureSheet, survey: Survey): void {
  const { design, closed, bench } = survey
  const frames = framesNear(closed, closed.node.posture)
  if (!frames || !design.release) {
    sheet.add('release.effort', { why: NO_STATE })
    return
  }
  const port = openingPort(bench, frames.opening, design.release.port)
  if (!port) {
    sheet.add('release.effort', { why: 'a cable or chain cannot push: it releases nothing' })
    return
  }
  const load = standingLoad(bench, frames.opening, 'letting go')
  const found = effortToOpen(bench, frames.opening, { port, load: load.out })
  sheet.add('release.effort', {
    value: found.kind === 'effort' ? found.effort : undefined,
    ...(found.kind === 'jams' && { beyond: 'above any' as const }),
    why: found.kind === 'jams' ? 'it jams: this port opens no finger from the worst rest, however hard' : NO_STATE,
    inputs: frictionLines(survey, 'rest'),
  })
}
