/**
 * From the drawn posture to one that closes: links without a drawn place are laid between their pins, then Newton closes
 * the loops with the drive held where it is drawn.
 */
import type { Design, Point } from '../design/design.ts'
import type { Problem } from '../design/problem.ts'
import { closureGap } from './closure.ts'
import { driveCoordinate } from './condition.ts'
import { type Mechanism, pinCentre, placed } from './mechanism.ts'
import { makeBench, settle } from './settle.ts'
import { gapMend, gapWords, spanGap } from './span-gap.ts'

export type Assembled =
  | { readonly posture: Float64Array; readonly problem?: never }
  | { readonly problem: Problem; readonly posture?: never }

/** The drawn posture as it stands in the document, not yet closed. */
export function drawnPosture(design: Design): Float64Array {
  const posture = new Float64Array(3 * design.parts.length)
  design.parts.forEach((part, index) => {
    if (!part.drawn) return
    posture[3 * index] = part.drawn.at.x_mm
    posture[3 * index + 1] = part.drawn.at.y_mm
    posture[3 * index + 2] = part.drawn.turn_rad
  })
  design.parts.forEach((part, index) => {
    if (!part.drawn && index > 0) layBetweenPins(design, index, posture)
  })
  return posture
}

/** Lays a link so that its first pinned hole lies on its pin and its second points at its pin. */
function layBetweenPins(design: Design, part: number, posture: Float64Array): void {
  const ends: { own: Point; target: Point }[] = []
  for (const pin of design.pins) {
    const own = pin.joins.find((ref) => ref.part === part)
    const other = pin.joins.find((ref) => ref.part !== part && (ref.part === 0 || design.parts[ref.part].drawn))
    if (!own || !other) continue
    ends.push({
      own: design.parts[part].holes[own.hole].at,
      target: placed(posture, other.part, design.parts[other.part].holes[other.hole].at),
    })
  }
  if (ends.length < 2) return
  const [first, second] = ends
  const wanted = Math.atan2(second.target.y_mm - first.target.y_mm, second.target.x_mm - first.target.x_mm)
  const own = Math.atan2(second.own.y_mm - first.own.y_mm, second.own.x_mm - first.own.x_mm)
  const turn = wanted - own
  posture[3 * part] = first.target.x_mm - Math.cos(turn) * first.own.x_mm + Math.sin(turn) * first.own.y_mm
  posture[3 * part + 1] = first.target.y_mm - Math.sin(turn) * first.own.x_mm - Math.cos(turn) * first.own.y_mm
  posture[3 * part + 2] = turn
}

/** @returns the closed posture nearest to the drawn one, or the problem with the widest gap named */
export function assemble(mechanism: Mechanism): Assembled {
  const drawn = drawnPosture(mechanism.design)
  const drive = driveCoordinate(mechanism, drawn)
  const held = driveCoordinate(mechanism, drawn, drive.value(drawn))
  const settled = settle(makeBench(mechanism), drawn, held)
  if (settled) return { posture: settled.posture }
  return { problem: cannotAssemble(mechanism, drawn) }
}

function cannotAssemble(mechanism: Mechanism, drawn: Float64Array): Problem {
  const { design } = mechanism
  const span = spanGap(mechanism, drawn, driveCoordinate(mechanism, drawn).value(drawn))
  if (span) {
    return {
      code: 'cannot assemble',
      place: `pins.${design.pins[span.pins[0]].id}`,
      found: `with the drive where it is drawn ${gapWords(design, span)}`,
      needed: 'parts that reach from pin to pin at the drawn posture',
      wayOut: gapMend(span),
    }
  }
  const gap = new Float64Array(mechanism.columns_count)
  closureGap(makeBench(mechanism), drawn, undefined, gap)
  const width = (row: number, kind: string): number => (kind === 'pin' ? Math.hypot(gap[row], gap[row + 1]) : Math.abs(gap[row]))
  const widest = mechanism.joints.reduce((most, joint) =>
    width(joint.row, joint.kind) > width(most.row, most.kind) ? joint : most,
  )
  const pin = mechanism.design.pins[widest.pin].id
  const at = pinCentre(mechanism, drawn, widest.pin)
  const gap_mm = width(widest.row, widest.kind).toFixed(2)
  return {
    code: 'cannot assemble',
    place: `pins.${pin}`,
    found: `with the drive where it is drawn the parts do not meet: at pin ${pin} (near x ${at.x_mm.toFixed(2)} mm, y ${at.y_mm.toFixed(2)} mm) the holes are drawn ${gap_mm} mm apart and no posture near the drawn one closes the loop`,
    needed: 'a drawn posture from which every pin can go through its holes',
    wayOut: `move the drawn places nearer, or change a link at pin ${pin} by about ${gap_mm} mm`,
  }
}
