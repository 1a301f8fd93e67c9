/** The travel as it is shown: postures, events on the scale, series for the plots. */
import { fingerJoints, flexion } from '../motion/flexion.ts'
import { pinCentre } from '../motion/mechanism.ts'
import type { PathNode } from '../motion/path.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { nodeWhereZero } from '../motion/trace.ts'
import type { TravelPath } from '../motion/travel-path.ts'
import type { CaseFound } from './case-figures.ts'
import type { Posture, Series, Travel, TravelEvent, TravelEventKind } from './evaluation.ts'
import type { ReturnFound } from './return-found.ts'
import type { Survey } from './survey.ts'

/** A node of the path as a posture for drawings. */
export function postureOf(path: TravelPath, node: PathNode): Posture {
  const closed_mm = path.nodes[path.nodes.length - 1].arc_mm
  return {
    arc_ratio: closed_mm > 0 ? node.arc_mm / closed_mm : 0,
    drive: path.drive.value(node.posture),
    poses: node.posture,
    pinsAt: path.mechanism.design.pins.map((_, pin) => pinCentre(path.mechanism, node.posture, pin)),
    margins_rad: path.toggles.map((toggle) => toggleMargin(toggle, node.posture)),
  }
}

/** Postures, events and series in inside units; events in order of arc, those beyond the stop above 1. */
export function travelReport(survey: Survey, found: ReturnFound, cases: readonly CaseFound[]): Omit<Travel, 'overlaps'> {
  const { path, nodes } = survey
  return {
    postures: nodes.map((node) => postureOf(path, node)),
    endsBy: endKind(survey),
    endWords: endWords(survey),
    driveUnit: survey.design.drive.kind === 'turn' ? 'rad' : 'mm',
    events: eventsOf(survey, found, cases),
    series: seriesOf(survey),
  }
}

/** What ends the closing motion, as doors tell it. */
export function endKind({ path: { end } }: Pick<Survey, 'path'>): Travel['endsBy'] {
  return end.by === 'fold' ? 'deadCentre' : end.by === 'slotEnd' ? 'range' : end.by
}

function endWords({ design, path }: Survey): string {
  const { end } = path
  if (end.by === 'stop') return `stop ${design.stops[end.stop].id} ends the travel`
  if (end.by === 'range') return 'the drive’s range ends the travel'
  if (end.by === 'slotEnd') return `pin ${design.pins[path.mechanism.joints[end.joint].pin].id} reaches the end of its slot`
  if (end.by === 'fold') return 'it cannot close further: the drive turns back at dead centre'
  return 'the loops close no further'
}

function eventsOf(survey: Survey, found: ReturnFound, cases: readonly CaseFound[]): TravelEvent[] {
  const { path, nodes, design } = survey
  const closed = nodes[nodes.length - 1]
  const event = (kind: TravelEventKind, node: PathNode, words: string): TravelEvent => {
    const { arc_ratio, drive } = postureOf(path, node)
    return { kind, arc_ratio, drive, words }
  }
  const events = [event('open', nodes[0], 'open'), event('closed', closed, 'closed')]
  if (path.end.by === 'stop') events.push(event('stop', closed, `stop ${design.stops[path.end.stop].id}`))
  for (const crossing of path.crossings)
    if (crossing.watch.id === 'fold') events.push(event('fold', crossing.node, 'the drive turns back'))
  if (found.worst !== undefined)
    events.push(event('worstReturn', nodes[Math.min(found.worst, nodes.length - 1)], 'return weakest'))
  if (found.jam.kind === 'at') events.push(event('jam', found.jam.node, 'jams from rest'))
  if (found.runJam.kind === 'at') events.push(event('runJam', found.runJam.node, 'jams moving'))
  for (const { loadCase, slip } of cases) if (slip?.kind === 'at') events.push(event('slip', slip.node, `${loadCase.id} slips`))
  events.push(...deadCentres(survey).map(({ node, words }) => event('deadCentre', node, words)))
  return events.sort((a, b) => a.arc_ratio - b.arc_ratio)
}

/** Where a toggle stands straight, within the travel or beyond its end. */
function deadCentres({ path, design }: Survey): { node: PathNode; words: string }[] {
  const all = [...path.nodes, ...path.beyond.slice(1)]
  return path.toggles.flatMap((toggle, index) => {
    const margins = all.map((node) => toggleMargin(toggle, node.posture))
    const at = margins.findIndex((margin, place) => place > 0 && margins[place - 1] > 0 && margin <= 0)
    if (at < 0) return []
    const [last, next] = [at - 1, at].map((place) => ({ node: all[place], value: margins[place] }))
    const node = nodeWhereZero(path.bench, last, next, (candidate) => toggleMargin(toggle, candidate.posture))
    return node ? [{ node, words: `dead centre of ${design.toggles[index].id}` }] : []
  })
}

function seriesOf(survey: Survey): Series[] {
  const { path, nodes, design, reserves, unloaded, cases } = survey
  const effortUnit = design.drive.kind === 'turn' ? 'N·mm' : 'N'
  const flexions = fingerJoints(path.mechanism).map((joint): Series => {
    const pin = design.pins[joint.pin].id
    return { id: `joint.${pin}.flexion`, title: pin, unit: 'rad', values: nodes.map((node) => flexion(node.posture, joint)) }
  })
  const margins = design.toggles.map((toggle, index): Series => {
    const values = nodes.map((node) => toggleMargin(path.toggles[index], node.posture))
    return { id: `toggle.${toggle.id}.deadCentreMargin`, title: toggle.id, unit: 'rad', values }
  })
  const efforts = [{ id: 'drive', title: 'springs and weight alone', efforts: unloaded }].concat(
    cases
      .filter(({ loadCase }) => loadCase.acts === 'travel')
      .map((one) => ({ id: `loadCase.${one.loadCase.id}`, title: one.loadCase.name, efforts: one.efforts })),
  )
  return [
    ...flexions,
    ...margins,
    {
      id: 'return.reserveMoving',
      title: 'moving',
      unit: 'N·mm per pin',
      values: reserves.map((reserve) => reserve?.moving),
    },
    {
      id: 'return.reserveFromRest',
      title: 'from rest',
      unit: 'N·mm per pin',
      values: reserves.map((reserve) => reserve?.fromRest),
    },
    ...efforts.flatMap(({ id, title, efforts: run }): Series[] => [
      { id: `${id}.effortToClose`, title: `close: ${title}`, unit: effortUnit, values: run.map((effort) => effort?.close) },
      { id: `${id}.effortToHold`, title: `hold: ${title}`, unit: effortUnit, values: run.map((effort) => effort?.hold) },
    ]),
  ]
}
