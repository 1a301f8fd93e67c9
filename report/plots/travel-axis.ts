/**
 * The axis that every plot and the printed scale share: the share of the travel's arc, open at the left and closed at the right, with the
 * drive's degrees or millimetres engraved where they fall. At dead centre the drive turns back while the finger goes on, so the drive itself
 * cannot be the axis; the same degree may then stand on it twice.
 */
import { axisUnit } from '../../engine/index.ts'
import type { ToldTravel } from '../tables/told.ts'

/** Degrees, mm or inches between numbers, finest first. */
const STEPS = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100]

/** A mark of the drive on the axis. */
export interface DriveMark {
  readonly arc_ratio: number
  /** Degrees, mm or inches. */
  readonly drive: number
}

/** Range of the axis in arc ratio: 0 to 1, farther where the path goes on past the stop. */
export function axisRange(travel: ToldTravel): readonly [number, number] {
  const last = travel.postures.at(-1)?.arc_ratio ?? 1
  const events = travel.events.map((event) => event.arc_ratio)
  return [0, Math.max(1, last, ...events.filter((ratio) => ratio < 1.5))]
}

/** Drive in the unit that is read: degrees, mm or inches. */
export function readDrive(travel: ToldTravel, drive: number): number {
  return drive * axisUnit(travel.driveUnit, travel.units).factor
}

/** The unit sign behind a drive value. */
export function driveSign(travel: ToldTravel): string {
  return travel.driveUnit === 'rad' ? '°' : ` ${axisUnit(travel.driveUnit, travel.units).unit}`
}

/** Every place where the drive passes a multiple of `step` (degrees, mm or inches), linear between postures. */
export function driveMarks(travel: ToldTravel, step: number): readonly DriveMark[] {
  const drives = travel.postures.map((posture) => readDrive(travel, posture.drive))
  const marks: DriveMark[] = []
  for (let index = 1; index < drives.length; index += 1) {
    marks.push(...marksBetween({ travel, index, step, drives }))
  }
  const first = drives[0]
  const startsOnMark = Math.abs(first / step - Math.round(first / step)) < 1e-6
  return startsOnMark ? [{ arc_ratio: travel.postures[0].arc_ratio, drive: Math.round(first / step) * step }, ...marks] : marks
}

/** The finest step that leaves at least `apart_px` between numbers on an axis of that width. */
export function driveStep(travel: ToldTravel, room: { readonly width_px: number; readonly apart_px: number }): number {
  const drives = travel.postures.map((posture) => readDrive(travel, posture.drive))
  const span = Math.max(...drives) - Math.min(...drives)
  return STEPS.find((step) => (span / step) * room.apart_px <= room.width_px) ?? STEPS[STEPS.length - 1]
}

/** Drive at a share of the travel, linear between postures, in its inside unit; that of the last posture beyond it. */
export function driveAt(travel: ToldTravel, arc_ratio: number): number {
  const { postures } = travel
  const found = postures.findIndex((posture) => posture.arc_ratio >= arc_ratio)
  const after = found < 0 ? postures.length - 1 : Math.max(1, found)
  const [from, to] = [postures[after - 1], postures[after]]
  const span = to.arc_ratio - from.arc_ratio
  const share = span > 0 ? Math.min(1, Math.max(0, (arc_ratio - from.arc_ratio) / span)) : 0
  return from.drive + share * (to.drive - from.drive)
}

/** Where the travel ends, as arc ratio: what lies on the axis beyond it is past the stop and can only be read, not reached. */
export function travelEnd(travel: ToldTravel): number {
  return travel.postures.at(-1)?.arc_ratio ?? 1
}

function marksBetween(stretch: {
  travel: ToldTravel
  index: number
  step: number
  drives: readonly number[]
}): readonly DriveMark[] {
  const { travel, index, step, drives } = stretch
  const [from, to] = [drives[index - 1], drives[index]]
  if (Math.abs(to - from) < 1e-12) return []
  const [low, high] = from < to ? [from, to] : [to, from]
  // The mark at the start belongs to the stretch before: (low, high] on the way up, [low, high) on the way down.
  const first = from < to ? Math.floor(low / step + 1e-9) + 1 : Math.ceil(low / step - 1e-9)
  const last = from < to ? Math.floor(high / step + 1e-9) : Math.ceil(high / step - 1e-9) - 1
  const crossed = Array.from({ length: Math.max(0, last - first + 1) }, (_, offset) => (first + offset) * step)
  const [start, end] = [travel.postures[index - 1].arc_ratio, travel.postures[index].arc_ratio]
  const marks = crossed.map((drive) => ({ arc_ratio: start + ((drive - from) / (to - from)) * (end - start), drive }))
  return from < to ? marks : marks.reverse()
}
