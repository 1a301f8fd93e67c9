/** Figures of the question Motion: where it closes, how far its joints bend, how its links drive. */
import { fingerJoints, flexion } from '../motion/flexion.ts'
import { placed } from '../motion/mechanism.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { transmissionAngle, transmissionsOf } from '../motion/transmission.ts'
import { once } from '../numbers/once.ts'
import type { FigureUnit } from './evaluation.ts'
import { type FigureSheet, line } from './figure-sheet.ts'
import type { Survey } from './survey.ts'

/** Inside unit of the drive's coordinate: rad of flexion for a turn, mm of stroke for a cable or chain. */
export function driveUnit(survey: Pick<Survey, 'design'>): FigureUnit {
  return survey.design.drive.kind === 'turn' ? 'rad' : 'mm'
}

/** Ends of the travel, flexions (rad), tip (mm, mount frame), transmission angles and dead-centre margins (rad). */
export function addMotionFigures(sheet: FigureSheet, survey: Survey): void {
  const { design, path, nodes, drive } = survey
  const closed = nodes[nodes.length - 1].posture
  const unit = driveUnit(survey)
  const ending = path.end.by === 'stop' ? `stop ${design.stops[path.end.stop].id}` : path.end.by
  sheet.add('motion.closes', { value: closes(survey), inputs: [line('travel ends by', ending, 'words')] })
  sheet.add('open.drive', { value: drive[0], inputs: [line('open', design.drive.travel.open, unit, 'drive.open')] })
  sheet.add('closed.drive', {
    value: drive[drive.length - 1],
    inputs: [
      line('travel ends by', ending, 'words'),
      line('end of the drive’s range', design.drive.travel.closed, unit, 'drive.closed'),
    ],
  })
  addFlexions(sheet, survey)
  if (design.tip) {
    const pad = design.parts[design.tip.part].pads[design.tip.pad]
    const at = placed(closed, design.tip.part, pad.at)
    const place = `parts.${design.parts[design.tip.part].id}.pads.${pad.id}`
    sheet.add('closed.tip.x', { value: at.x_mm, inputs: [line('pad x', pad.at.x_mm, 'mm', place)] })
    sheet.add('closed.tip.y', { value: at.y_mm, inputs: [line('pad y', pad.at.y_mm, 'mm', place)] })
  }
  addTransmissions(sheet, survey)
  addMargins(sheet, survey)
}

/** At its stop; or at the end of the drive's range where no stop is meant to end the travel. */
function closes({ design, path }: Survey): boolean {
  if (path.end.by === 'stop') return true
  return path.end.by === 'range' && design.stops.every((_, index) => index === path.openStop)
}

function addFlexions(sheet: FigureSheet, { design, path, nodes }: Survey): void {
  const joints = fingerJoints(path.mechanism)
  for (const [when, node] of [
    ['open', nodes[0]],
    ['closed', nodes[nodes.length - 1]],
  ] as const) {
    for (const [pin, { id }] of design.pins.entries()) {
      const name = `${when}.joint.${id}.flexion`
      if (!sheet.has(name)) continue
      const joint = joints.find((candidate) => candidate.pin === pin)
      const parts = joint ? [joint.upper, joint.lower] : []
      sheet.add(name, {
        value: joint && flexion(node.posture, joint),
        why: 'another pin joins these two phalanges already, or they are no neighbours',
        inputs: parts.map((part) => line(`turn of ${design.parts[part].id}`, node.posture[3 * part + 2], 'rad')),
      })
    }
  }
}

function addTransmissions(sheet: FigureSheet, { design, path, nodes, drive }: Survey): void {
  const found = once(() => transmissionsOf(path.bench.plan))
  for (const [part, { id, role }] of design.parts.entries()) {
    if (role !== 'link') continue
    const name = `motion.transmissionAngle.${id}.least`
    if (!sheet.asks(name)) continue
    const transmission = found().find((candidate) => candidate.link === part)
    if (!transmission) {
      sheet.add(name, { why: 'it is no link of two pins that moves one part, or it lies in a loop without an order' })
      continue
    }
    const angles = nodes.map((node) => transmissionAngle(path.mechanism, node.posture, transmission))
    const least = angles.reduce((best, angle, index) => (angle < angles[best] ? index : best), 0)
    sheet.add(name, {
      value: angles[least],
      inputs: [
        line('it moves', design.parts[transmission.moved].id, 'words'),
        line('they meet at pin', design.pins[transmission.pin].id, 'words'),
        line('which turns about pin', design.pins[transmission.pivot].id, 'words'),
      ],
      steps: [line('least at drive', drive[least], driveUnit({ design }))],
    })
  }
}

function addMargins(sheet: FigureSheet, { design, path, nodes }: Survey): void {
  design.toggles.forEach((toggle, index) => {
    const watched = path.toggles[index]
    const closed = nodes[nodes.length - 1].posture
    sheet.add(`closed.toggle.${toggle.id}.deadCentreMargin`, {
      value: toggleMargin(watched, closed),
      inputs: [
        line('A', design.pins[toggle.a].id, 'words', `pins.${design.pins[toggle.a].id}`),
        line('B', design.pins[toggle.b].id, 'words', `pins.${design.pins[toggle.b].id}`),
        line('C', design.pins[toggle.c].id, 'words', `pins.${design.pins[toggle.c].id}`),
        line(`turn of ${design.parts[watched.angle.first].id} (A-B)`, closed[3 * watched.angle.first + 2], 'rad'),
        line(`turn of ${design.parts[watched.angle.second].id} (B-C)`, closed[3 * watched.angle.second + 2], 'rad'),
        line('side at the drawn posture', watched.side, '1'),
      ],
      steps: [line('margin when open', toggleMargin(watched, nodes[0].posture), 'rad')],
    })
  })
}
