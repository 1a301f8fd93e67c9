/**
 * Everything that is worked out along the travel, posture by posture; figures, series and drawings read from here.
 */
import type { Design, LoadCase } from '../design/design.ts'
import { actsInPlane, type CaseEfforts, caseEfforts } from '../forces/case-way.ts'
import { type ForceBench, forceBench } from '../forces/force-bench.ts'
import { framesAt } from '../forces/force-frame.ts'
import { type ReserveAmplitudes, reserveAmplitudes } from '../forces/return-reserve.ts'
import { type ClosedFinger, closedFinger } from '../forces/states.ts'
import type { PathNode } from '../motion/path.ts'
import { nodeAt } from '../motion/trace.ts'
import type { TravelPath } from '../motion/travel-path.ts'

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

/** Works through the travel once, open to closed. @param drawn the assembled drawn posture, from which springs and strokes count */
export function surveyTravel(path: TravelPath, drawn: Float64Array): Survey {
  const { mechanism, drive } = path
  const { design } = mechanism
  const bench = forceBench(mechanism, drawn, drive)
  const nodes = evenNodes(path)
  const cases = design.loadCases.filter(actsInPlane).map((loadCase) => ({ loadCase, efforts: [] as (CaseEfforts | undefined)[] }))
  const reserves: (ReserveAmplitudes | undefined)[] = []
  const unloaded: (CaseEfforts | undefined)[] = []
  for (const node of nodes) {
    const frames = framesAt(bench.room, node)
    reserves.push(frames && reserveAmplitudes(bench, frames.opening))
    unloaded.push(frames && caseEfforts(bench, frames, undefined))
    for (const { loadCase, efforts } of cases) {
      const acts = loadCase.acts === 'travel' || node === nodes[nodes.length - 1]
      efforts.push(frames && acts ? caseEfforts(bench, frames, loadCase) : undefined)
    }
  }
  const driveValues = nodes.map((node) => drive.value(node.posture))
  return { design, path, bench, closed: closedFinger(path, bench), nodes, drive: driveValues, reserves, unloaded, cases }
}

/** Nodes equally spaced along the arc. A place that cannot be reached exactly is left out; the ends never are. */
function evenNodes({ bench, nodes }: TravelPath): PathNode[] {
  const length = nodes[nodes.length - 1].arc_mm
  const found: PathNode[] = []
  for (let index = 0; index < TRAVEL_POSTURES; index++) {
    if (index === TRAVEL_POSTURES - 1) found.push(nodes[nodes.length - 1])
    else {
      const node = nodeAt(bench, nodes, (length * index) / (TRAVEL_POSTURES - 1))
      if (node) found.push(node)
    }
  }
  return found
}
