/** What is said when a finger cannot be moved as asked: where, by how much, and how to mend it. */
import type { Design } from '../design/design.ts'
import type { Problem } from '../design/problem.ts'
import type { Mobility } from '../motion/mobility.ts'
import { slotRoom } from '../motion/slot-room.ts'
import { gapMend, gapWords, spanGap } from '../motion/span-gap.ts'
import { stopContact } from '../motion/stop-contact.ts'
import { limits } from '../numbers/limits.ts'
import type { Survey } from './survey.ts'

/** The count in words, with what it would mean for parts made to a tolerance. */
export function mobilityWords(design: Design, { degrees, byRank, loose }: Mobility): string {
  const freedoms = `${degrees} ${Math.abs(degrees) === 1 ? 'freedom' : 'freedoms'} by count`
  if (degrees === 1 && byRank === 1) return `${freedoms}: the drive rules every part`
  if (degrees < 1 && byRank >= 1) return `${freedoms}, yet ${byRank} for exact lengths: parts made to a tolerance will bind`
  if (degrees < 1) return `${freedoms}: the parts are locked`
  return `${freedoms}: with the drive held these can still move: ${namesOf(design, loose)}`
}

function namesOf(design: Design, parts: readonly number[]): string {
  return parts.map((part) => design.parts[part].id).join(', ') || 'none'
}

/** A coupled finger needs just one freedom. */
export function looseOrLocked(design: Design, mobility: Mobility): Problem | undefined {
  const { degrees, byRank, loose } = mobility
  if (degrees === 1 && byRank === 1 && loose.length === 0) return undefined
  const locked = degrees < 1
  const wayOut = locked
    ? `Take away ${1 - degrees} constraint${degrees === 0 ? '' : 's'}: turn a pin joint into a slot, or leave out a link`
    : degrees > 1
      ? `Tie down ${namesOf(design, loose)} with ${degrees - 1} more link${degrees === 2 ? '' : 's'}, or leave the loose part out`
      : 'Move a pin so that the drawn posture does not stand where two ways go on'
  return {
    code: locked ? 'locked' : 'loose',
    place: 'pins',
    found: `${mobilityWords(design, mobility)}${degrees === 1 ? `; at the drawn posture ${byRank} by rank` : ''}`,
    needed: 'mobility 1: one drive that rules every part',
    wayOut,
  }
}

/** Travels that cannot begin, or that end before a stop or the end of the drive's range. */
export const cannotClose = {
  /** The drive does not rule the drawn posture: two ways go on there. */
  atDrawn(design: Design): Problem {
    return {
      code: 'no way on',
      place: 'drive',
      found: `at the drawn posture of ${design.title} the drive stands still or two ways go on`,
      needed: 'a drawn posture away from dead centre, from which the drive moves the finger one way',
      wayOut: 'draw the finger further open',
    }
  },

  /** Travels that end before the drive's range or a stop. */
  onTheWay(survey: Survey): Problem[] {
    const { path, design, drive, nodes } = survey
    const { end } = path
    if (end.by !== 'fold' && end.by !== 'breaks') return []
    const unit = design.drive.kind === 'turn' ? '°' : ' mm'
    const shown = (value: number): string =>
      `${(design.drive.kind === 'turn' ? (value * 180) / Math.PI : value).toFixed(1)}${unit}`
    const at = shown(drive[drive.length - 1])
    const wanted = shown(design.drive.travel.closed)
    const gap = spanGap(path.mechanism, nodes[nodes.length - 1].posture, design.drive.travel.closed)
    const found =
      end.by === 'fold'
        ? `it cannot close further than ${at}: the drive turns back there (dead centre) before ${wanted} and before any stop`
        : `the linkage cannot go on at ${at}${gap ? '' : ': two ways go on there, or the parts bind'}`
    return [
      {
        code: 'cannot close',
        place: 'drive.closed',
        found: gap ? `${found}; at ${wanted} ${gapWords(design, gap)}` : found,
        needed: `a travel that reaches a stop or ${wanted}`,
        wayOut: gap
          ? `${gapMend(gap)}, end the range at ${at}, or place a stop before it`
          : `end the range at ${at} or before, or place a stop before it`,
      },
    ]
  },
}

/** The drive turns back, or the loops part, before the finger is as far open as asked. */
export function cannotOpen({ path, design, drive }: Survey): Problem[] {
  const wanted = design.drive.travel.open
  if (path.openStop !== undefined || Math.abs(drive[0] - wanted) < limits.drive_reached) return []
  const shown = (value: number): string =>
    design.drive.kind === 'turn' ? `${((value * 180) / Math.PI).toFixed(1)}°` : `${value.toFixed(1)} mm`
  return [
    {
      code: 'cannot open',
      place: 'drive.open',
      found: `it opens no further than ${shown(drive[0])}: the drive turns back there, or the linkage cannot go on`,
      needed: `a travel that begins at ${shown(wanted)}`,
      wayOut: `begin the range at ${shown(drive[0])} or later, or change a link`,
    },
  ]
}

/** Stops and slot ends that are passed already at the open posture: the travel cannot begin there. */
export function passedWhenOpen({ path, design, nodes }: Survey): Problem[] {
  const { posture } = nodes[0]
  const stops = design.stops.flatMap((stop, index): Problem[] => {
    const { gap_mm } = stopContact(path.mechanism, stop, posture)
    if (index === path.openStop || gap_mm > -limits.touching_mm) return []
    return [
      {
        code: 'stop overlaps',
        place: `stops.${stop.id}`,
        found: `when the finger is open the round of ${stop.id} stands ${(-gap_mm).toFixed(2)} mm inside its edge`,
        needed: 'a gap, or contact, at the open posture',
        wayOut: `move the edge back by at least ${(-gap_mm).toFixed(2)} mm, turn it round (the solid lies to the right of from → to), or open less`,
      },
    ]
  })
  const slots = path.mechanism.joints.flatMap((joint): Problem[] => {
    const room_mm = joint.kind === 'slot' ? slotRoom(posture, joint) : 0
    if (room_mm > -limits.touching_mm) return []
    const pin = design.pins[joint.pin].id
    return [
      {
        code: 'slot too short',
        place: `pins.${pin}`,
        found: `when the finger is open pin ${pin} stands ${(-room_mm).toFixed(2)} mm past the end of its slot`,
        needed: 'a slot that reaches over the travel',
        wayOut: `lengthen the slot by at least ${(-2 * room_mm).toFixed(2)} mm, or open less`,
      },
    ]
  })
  return [...stops, ...slots]
}

/**
 * Two stops that touch at one posture share the load in a way that only their stiffness decides: the finger has one freedom
 * and one contact is enough to end it.
 */
export function stopsTogether({ path, design, nodes }: Survey): Problem[] {
  const { end, mechanism } = path
  if (end.by !== 'stop') return []
  const ending = design.stops[end.stop].id
  const { posture } = nodes[nodes.length - 1]
  return design.stops.flatMap((stop, index): Problem[] => {
    if (index === end.stop || Math.abs(stopContact(mechanism, stop, posture).gap_mm) > limits.touching_mm) return []
    return [
      {
        code: 'two stops at once',
        place: `stops.${stop.id}`,
        found: `stops ${ending} and ${stop.id} both touch at the closed posture: how they share the force cannot be told`,
        needed: 'one stop that ends the travel',
        wayOut: `give ${stop.id} a gap of at least 0.05 mm, or leave it out`,
      },
    ]
  })
}
