/**
 * What the load pulls at the screws that hold the mount.
 *
 *        P₁      P₂             the mount pressed on its plate by screws that pull along p, at places s along the joint
 *        │   ●c  │              P = −F·p / n − s (t × p) M / Σ s²          F, M: load on the finger about the middle c of the screws
 *     ═══╧═══════╧═══
 *
 * Stated simplification: the joint stays closed, so that it is one body; the load spreads over equal screws as over a rigid plate, and each
 * screw is charged with all of its share although the closed joint takes most of it off the screw. Forces between parts of the finger, the
 * drive's and the springs' among them, cancel: only what touches a pad counts. Forces out of the plane are left out.
 */
import type { LoadCase, PadForceDirection } from '../design/design.ts'
import type { Screw } from '../design/screws/screw.ts'
import { type Mechanism, placed } from '../motion/mechanism.ts'
import type { Vector } from '../numbers/vector.ts'

/** One load at one posture. */
export interface LoadedPosture {
  readonly loadCase: LoadCase
  /** Drive coordinate, rad or mm. */
  readonly drive: number
  readonly posture: Float64Array
}

/** The largest pull at one screw of a kind, N, and where; absent where nothing pulls. */
export interface MountPull {
  readonly pull_N: number
  readonly at?: LoadedPosture
}

/** A force and its moment about a point, counter-clockwise. */
interface Wrench {
  readonly force: Vector
  readonly moment_Nmm: number
}

/**
 * The largest pull at each screw over all states.
 *
 * @param screws those that hold the mount, all pulling one way
 * @returns one a screw; why none can be told where the screws stand in one line along their pull and the load turns the mount
 */
export function mountPulls(
  mechanism: Mechanism,
  screws: readonly Screw[],
  states: readonly LoadedPosture[],
): readonly (MountPull | string)[] {
  const group = groupOf(screws)
  const most = screws.map((): MountPull | string => ({ pull_N: 0 }))
  for (const state of states) {
    const load = loadOf(mechanism, state, group.middle)
    noteWrench(most, group, { wrench: load, state })
    const kept = withKeeper(mechanism, state, { load, about: group.middle })
    if (kept) noteWrench(most, group, { wrench: kept, state })
  }
  return most
}

/** Keeps of each screw the largest pull. */
function noteWrench(
  most: (MountPull | string)[],
  group: Group,
  { wrench, state }: { readonly wrench: Wrench; readonly state: LoadedPosture },
): void {
  for (let index = 0; index < most.length; index++) {
    const known = most[index]
    if (typeof known === 'string') continue
    const pull = pullOf(group, group.along_mm[index], wrench)
    if (pull === undefined)
      most[index] = 'the screws that hold the mount stand in one line along their pull, and the load turns it'
    else if (pull > known.pull_N) most[index] = { pull_N: pull, at: state }
  }
}

interface Group {
  readonly middle: Vector
  readonly pull: Vector
  readonly count: number
  /** Of each kind of screw, from the middle along the joint, mm. */
  readonly along_mm: readonly number[]
  /** Over all screws, mm². */
  readonly spread_mm2: number
}

function groupOf(screws: readonly Screw[]): Group {
  const count = screws.reduce((sum, { screws_count }) => sum + screws_count, 0)
  const places = screws.map(({ holdsMount }) => ({ x: holdsMount?.at.x_mm ?? 0, y: holdsMount?.at.y_mm ?? 0 }))
  const mean = (key: 'x' | 'y') =>
    screws.reduce((sum, { screws_count }, index) => sum + screws_count * places[index][key], 0) / count
  const middle = { x: mean('x'), y: mean('y') }
  const turn = screws[0]?.holdsMount?.pulls_rad ?? 0
  const pull = { x: Math.cos(turn), y: Math.sin(turn) }
  // Along the joint: the pull turned clockwise, so that t × p = 1.
  const along_mm = places.map(({ x, y }) => (x - middle.x) * pull.y - (y - middle.y) * pull.x)
  const spread_mm2 = screws.reduce((sum, { screws_count }, index) => sum + screws_count * along_mm[index] ** 2, 0)
  return { middle, pull, count, along_mm, spread_mm2 }
}

/** Screws nearer to one another than this stand in one place. */
const SPREAD_LEAST_mm2 = 1e-6

function pullOf({ pull, count, spread_mm2 }: Group, along_mm: number, { force, moment_Nmm }: Wrench): number | undefined {
  const even = -(force.x * pull.x + force.y * pull.y) / count
  if (spread_mm2 < SPREAD_LEAST_mm2) return Math.abs(moment_Nmm) < SPREAD_LEAST_mm2 ? even : undefined
  return even - (along_mm * moment_Nmm) / spread_mm2
}

/** The load alone. */
function loadOf(mechanism: Mechanism, { loadCase, posture }: LoadedPosture, about: Vector): Wrench {
  let x = 0
  let y = 0
  let moment_Nmm = 0
  for (const force of loadCase.forces) {
    const one = padWrench(mechanism, posture, { force, force_N: force.force_N, about })
    x += one.force.x
    y += one.force.y
    moment_Nmm += one.moment_Nmm
  }
  return { force: { x, y }, moment_Nmm }
}

/** The load with the keeper at the most that it is allowed; undefined where the keeper is no force on a pad. */
function withKeeper(
  mechanism: Mechanism,
  { loadCase: { keeper }, posture }: LoadedPosture,
  { load, about }: { readonly load: Wrench; readonly about: Vector },
): Wrench | undefined {
  if (keeper?.port.kind !== 'force') return undefined
  const own = padWrench(mechanism, posture, { force: keeper.port, force_N: keeper.allowed, about })
  const force = { x: load.force.x + own.force.x, y: load.force.y + own.force.y }
  return { force, moment_Nmm: load.moment_Nmm + own.moment_Nmm }
}

interface PadForce {
  readonly force: PadForceDirection
  readonly force_N: number
  readonly about: Vector
}

function padWrench({ design }: Mechanism, posture: Float64Array, { force, force_N, about }: PadForce): Wrench {
  const { part, pad, frame, direction_rad } = force
  const at = placed(posture, part, design.parts[part].pads[pad].at)
  const direction = direction_rad + posture[3 * frame + 2]
  const x = force_N * Math.cos(direction)
  const y = force_N * Math.sin(direction)
  return { force: { x, y }, moment_Nmm: (at.x_mm - about.x) * y - (at.y_mm - about.y) * x }
}
