/**
 * Everything that is worked out along the travel, posture by posture; figures, series and drawings read from here.
 */
import type { Design, LoadCase } from '../design/design.ts'
import { actsInPlane, type CaseEfforts, caseEfforts } from '../forces/case-way.ts'
import { portRow } from '../forces/effort.ts'
import { type ForceBench, forceBench } from '../forces/force-bench.ts'
import { type FramePair, framesAt } from '../forces/force-frame.ts'
import { type ReserveAmplitudes, reserveAmplitudes } from '../forces/return-reserve.ts'
import { type ClosedFinger, closedFinger } from '../forces/states.ts'
import { evenNodes } from '../motion/even-nodes.ts'
import type { PathNode } from '../motion/path.ts'
import type { TravelPath } from '../motion/travel-path.ts'
import { once } from '../numbers/once.ts'

/** Postures of one evaluation, open and closed among them: about 1.2° of the drive apart on the example finger. */
export const TRAVEL_POSTURES = 61

export interface CaseSurvey {
  readonly loadCase: LoadCase
  readonly efforts: readonly (CaseEfforts | undefined)[]
}

export interface Survey {
  readonly design: Design
  readonly path: TravelPath
  readonly bench: ForceBench
  readonly closed: ClosedFinger
  /** Equally spaced along the arc, open to closed. */
  readonly nodes: readonly PathNode[]
  readonly drive: readonly number[]
  readonly reserves: readonly (ReserveAmplitudes | undefined)[]
  /** Springs, weight and drag alone. */
  readonly unloaded: readonly (CaseEfforts | undefined)[]
  /** Load cases that act in the plane; those that act when closed only have efforts at the last posture only. */
  readonly cases: readonly CaseSurvey[]
}

/**
 * The travel, open to closed. Forces along it are worked out when they are first read: who asks for a few figures does not wait for the rest.
 *
 * @param drawn the assembled drawn posture, from which springs and strokes count
 */
export function surveyTravel(path: TravelPath, drawn: Float64Array): Survey {
  const { mechanism, drive } = path
  const { design } = mechanism
  const bench = forceBench(mechanism, drawn, drive)
  const nodes = evenNodes(path, TRAVEL_POSTURES)
  const along = <Found>(find: (frames: FramePair, node: PathNode) => Found): (Found | undefined)[] =>
    nodes.map((node) => {
      const frames = framesAt(bench.room, node)
      return frames && find(frames, node)
    })
  const reserves = once(() => along((frames) => reserveAmplitudes(bench, frames.opening)))
  const loadCases = design.loadCases.filter(actsInPlane)
  // All in one go: springs, weight and drag at a posture are worked out once, whatever the load case.
  const efforts = once(() => {
    const closed = nodes[nodes.length - 1]
    return along((frames, node) => {
      const acting = loadCases.map((loadCase) => (loadCase.acts === 'travel' || node === closed ? loadCase : undefined))
      return effortsAt(bench, frames, acting)
    })
  })
  const unloaded = once(() => efforts().map((found) => found?.unloaded))
  const cases = loadCases.map((loadCase, index) =>
    caseSurvey(
      loadCase,
      once(() => efforts().map((found) => found?.loaded[index])),
    ),
  )
  const driveValues = nodes.map((node) => drive.value(node.posture))
  return {
    ...{ design, path, bench, closed: closedFinger(path, bench), nodes, drive: driveValues, cases },
    get reserves() {
      return reserves()
    },
    get unloaded() {
      return unloaded()
    },
  }
}

/** Efforts at one posture: without a load, and of each load case that acts there. */
function effortsAt(bench: ForceBench, frames: FramePair, acting: readonly (LoadCase | undefined)[]) {
  // A copy of its own: rows of the room are written over after some twenty more.
  const port = portRow(bench, frames.closing, { kind: 'drive' }).slice()
  return {
    unloaded: caseEfforts(bench, frames, { port, loadCase: undefined }),
    loaded: acting.map((loadCase) => loadCase && caseEfforts(bench, frames, { port, loadCase })),
  }
}

function caseSurvey(loadCase: LoadCase, efforts: () => CaseSurvey['efforts']): CaseSurvey {
  return {
    loadCase,
    get efforts() {
      return efforts()
    },
  }
}
