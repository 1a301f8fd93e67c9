/**
 * What a part is pushed by at a state, along and across the line that it is cut on, and where the rest of its balance can act.
 *
 * Forces of joints and of the load case are known with their places. What is left of the part's balance is what its stops, springs, the drive,
 * the keeper, its weight and the friction in its pins give; how much of it each gives is not asked again.
 */
import type { Design, LoadCase, Point } from '../design/design.ts'
import type { Mechanism } from '../motion/mechanism.ts'
import type { Cuts } from './part-cuts.ts'
import type { Pressed } from './pressed.ts'

/** A place of a part where a joint gives it force: +1 where it is the joint's part b. */
interface JointPlace {
  readonly joint: number
  readonly side: 1 | -1
  readonly at: Point
}

/** The joints of a part, with their places in its frame. */
export function jointPlaces({ joints }: Mechanism, part: number): readonly JointPlace[] {
  return joints.flatMap(({ a, b, atA, atB }, joint): JointPlace[] => {
    if (b === part) return [{ joint, side: 1, at: atB }]
    return a === part ? [{ joint, side: -1, at: atA }] : []
  })
}

/** A part with its joints and its cuts. */
export interface CutPart {
  readonly part: number
  readonly places: readonly JointPlace[]
  readonly cuts: Cuts
}

/** Forces at places of a part, one row each: along its line and off it to the left, mm; along it and across it to the left, N. */
export type PartActions = Float64Array

/** Numbers in a row of PartActions. */
export const ACTION_ROW = 4

/** Forces of the joints and of the load case on a part. @param loadCase of the state */
export function partActions(
  { design }: Mechanism,
  { posture, forces }: Pressed,
  { of: { part, places, cuts }, loadCase }: { readonly of: CutPart; readonly loadCase: LoadCase | undefined },
): PartActions {
  const pushed = (loadCase?.forces ?? []).filter((force) => force.part === part)
  const actions = new Float64Array(ACTION_ROW * (places.length + pushed.length))
  const turn = posture[3 * part + 2]
  const { along } = cuts.axes
  const cos = along.x * Math.cos(turn) - along.y * Math.sin(turn)
  const sin = along.y * Math.cos(turn) + along.x * Math.sin(turn)
  let row = 0
  const add = (at: Point, x: number, y: number): void => {
    const { along_mm, off_mm } = cuts.place(at)
    actions[row++] = along_mm
    actions[row++] = off_mm
    actions[row++] = cos * x + sin * y
    actions[row++] = cos * y - sin * x
  }
  for (const { joint, side, at } of places) add(at, side * forces[2 * joint], side * forces[2 * joint + 1])
  for (const { pad, force_N, direction_rad, frame } of pushed) {
    const direction = direction_rad + posture[3 * frame + 2]
    add(design.parts[part].pads[pad].at, force_N * Math.cos(direction), force_N * Math.sin(direction))
  }
  return actions
}

/** Places of a part where the rest of its balance can act under a load case: its stops, springs, the drive and the keeper. Part frame. */
export function restPlaces(design: Design, part: number, loadCase: LoadCase | undefined): readonly Point[] {
  const { stops, springs, drive, parts, pins } = design
  const atPin = (pin: number): Point[] =>
    pins[pin].joins.flatMap((join) => (join.part === part ? [parts[part].holes[join.hole].at] : []))
  const ofStops = stops.flatMap(({ round, against }): Point[] => {
    if (round.part === part) return [round.at]
    if (against.part !== part) return []
    const edge = parts[part].edges[against.edge]
    return edge.kind === 'straight' ? [edge.from, edge.to] : [edge.centre]
  })
  const ofSprings = springs.flatMap((spring): Point[] => {
    if (spring.kind === 'torsion') return spring.on === part || spring.against === part ? atPin(spring.pin) : []
    return [spring.from, spring.to].flatMap((end) => (end.part === part ? [end.at] : []))
  })
  const ofDrive = (): readonly Point[] => {
    if (drive.kind === 'turn') return drive.part === part || drive.against === part ? atPin(drive.pin) : []
    const ends = drive.kind === 'pull' ? [drive.on, drive.towards] : [drive.roller, drive.towards]
    return ends.flatMap((end) => (end.part === part ? [end.at] : []))
  }
  const port = loadCase?.keeper?.port
  const ofKeeper = port?.kind === 'force' && port.part === part ? [parts[part].pads[port.pad].at] : []
  return [...ofStops, ...ofSprings, ...ofDrive(), ...ofKeeper]
}
