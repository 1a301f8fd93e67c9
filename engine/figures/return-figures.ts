/** Figures of letting go: the return reserve over the way back, the jam angles, play and release. */

import { pairsInUse } from '../design/pairs-in-use.ts'
import { standingLoad } from '../forces/force-bench.ts'
import { findJam, type Jam, type SurveyedNode } from '../forces/jam.ts'
import { effortToOpen, openingPort } from '../forces/letting-go.ts'
import { atLetGo, framesNear, type LetGo, playBand, statedStiffness } from '../forces/states.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import type { WorkingValue } from './evaluation.ts'
import { type FigureSheet, line } from './figure-sheet.ts'
import { driveUnit } from './motion-figures.ts'
import type { Survey } from './survey.ts'

export interface ReturnFound {
  readonly jam: Jam
  readonly runJam: Jam
  readonly letGo?: LetGo
  /** Index of the posture with the least reserve from rest. */
  readonly worst?: number
  readonly letsGo?: boolean
}

const NO_STATE = 'no equilibrium was found at every posture'

/** Return reserves (N·mm a pin), jam angles and play (rad), release effort. @returns what load cases and the travel's events build on */
export function addReturnFigures(sheet: FigureSheet, survey: Survey): ReturnFound {
  const { path, bench } = survey
  const surveyed = (kind: 'fromRest' | 'moving'): SurveyedNode[] =>
    survey.nodes.map((node, index) => ({ node, reserve: survey.reserves[index]?.[kind] }))
  const jam = findJam(bench, path, 'fromRest', surveyed('fromRest'))
  const runJam = findJam(bench, path, 'moving', surveyed('moving'))
  const letGo = atLetGo(survey.closed, { clearance: true, stiffnessOf: statedStiffness(path) })
  const reserves = addReserves(sheet, survey, letGo)
  addJamAngles(sheet, survey, jam, 'jamAngle')
  addJamAngles(sheet, survey, runJam, 'runJamAngle')
  addPlay(sheet, survey, letGo)
  if (survey.design.release) addRelease(sheet, survey)
  return { jam, runJam, ...(letGo && { letGo }), ...reserves }
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
function leastOf(values: readonly (number | undefined)[]): { readonly index: number; readonly value: number } | undefined {
  let least: { index: number; value: number } | undefined
  for (const [index, value] of values.entries()) {
    if (value === undefined) return undefined
    if (!least || value < least.value) least = { index, value }
  }
  return least
}

function addReserves(sheet: FigureSheet, survey: Survey, letGo: LetGo | undefined): Pick<ReturnFound, 'worst' | 'letsGo'> {
  const { reserves, drive } = survey
  const unit = driveUnit(survey)
  const rest = leastOf([...reserves.map((reserve) => reserve?.fromRest), ...(letGo ? [letGo.reserve.fromRest?.amplitude] : [])])
  const moving = leastOf([...reserves.map((reserve) => reserve?.moving), ...(letGo ? [letGo.reserve.moving?.amplitude] : [])])
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
  const worst = rest && Math.min(rest.index, reserves.length - 1)
  return rest && worst !== undefined ? { worst, letsGo: rest.value > 0 } : {}
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
  never: 'the springs open it as far as the path was followed past dead centre: it does not jam there',
  everywhere: 'the springs do not open it at any posture',
  unknown: 'no equilibrium was found on the way to dead centre',
}

function addJamAngles(sheet: FigureSheet, survey: Survey, jam: Jam, figure: 'jamAngle' | 'runJamAngle'): void {
  const { design, path } = survey
  design.toggles.forEach((toggle, index) => {
    const id = `closed.toggle.${toggle.id}.${figure}`
    const inputs = [...frictionLines(survey, figure === 'jamAngle' ? 'rest' : 'moving'), ...springLines(survey)]
    if (jam.kind !== 'at') {
      sheet.add(id, { why: JAM_WORDS[jam.kind], ...(jam.kind === 'never' && { beyond: 'below any' as const }), inputs })
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

function addPlay(sheet: FigureSheet, survey: Survey, letGo: LetGo | undefined): void {
  const { design, path, closed } = survey
  const clearances = path.mechanism.joints.map((joint) =>
    line(`clearance at ${design.pins[joint.pin].id}`, joint.clearance_mm, 'mm', `pins.${design.pins[joint.pin].id}`),
  )
  design.toggles.forEach((toggle, index) => {
    const band = playBand(closed, index)
    const why = 'the play does not settle at the closed posture'
    sheet.add(`play.toggle.${toggle.id}.least`, { value: band?.least_rad, why, inputs: clearances })
    sheet.add(`play.toggle.${toggle.id}.most`, { value: band?.most_rad, why, inputs: clearances })
    sheet.add(`letGo.toggle.${toggle.id}.deadCentreMargin`, {
      value: letGo && toggleMargin(path.toggles[index], letGo.posture),
      why: 'no state of rest was found at let-go',
      inputs: clearances,
      steps: letGo ? [line('rounds of posture and forces', letGo.rounds, '1')] : [],
    })
  })
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
