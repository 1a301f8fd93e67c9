/** Whether the finger hits itself on its travel, and how near it comes to that. */
import { nearestOver } from '../motion/clearance.ts'
import { type Collision, collisionsOver, unseenParts } from '../motion/collision.ts'
import type { Overlapping } from './evaluation.ts'
import { type FigureSheet, line } from './figure-sheet.ts'
import { driveUnit } from './motion-figures.ts'
import type { Survey } from './survey.ts'
import { postureOf } from './travel-report.ts'

/**
 * Deepest overlap over the travel, mm; undecided while a part cannot be looked at, unless another pair already collides.
 *
 * @returns the pairs that collide, deepest first
 */
export function addCollisionFigures(sheet: FigureSheet, survey: Survey): readonly Overlapping[] {
  if (sheet.asks('motion.clearance')) addClearance(sheet, survey)
  if (!sheet.asks('motion.collides', 'motion.collisionDepth')) return []
  const { design, path, nodes } = survey
  const report = collisionsOver(path.bench, nodes)
  const collisions = report.collisions.toSorted((a, b) => b.overlap.depth_mm - a.overlap.depth_mm)
  const { notLookedAt } = report
  const unseen = namesOf(survey, notLookedAt)
  const deepest = collisions[0]
  const inputs = [line('parts without outline or place across the width', unseen || 'none', 'words')]
  const steps = collisions.flatMap(({ parts, first, deepest: worst, overlap }) => {
    const names = parts.map((part) => design.parts[part].id).join(' and ')
    return [
      line(`${names} first touch at drive`, path.drive.value(first.posture), driveUnit(survey)),
      line(`${names} deepest at drive`, path.drive.value(worst.posture), driveUnit(survey)),
      line(`${names} overlap`, overlap.depth_mm, 'mm'),
    ]
  })
  const why = unseenWords(unseen)
  const decided = deepest !== undefined || notLookedAt.length === 0
  sheet.add('motion.collides', { value: decided ? deepest !== undefined : undefined, why, inputs, steps })
  sheet.add('motion.collisionDepth', { value: decided ? (deepest?.overlap.depth_mm ?? 0) : undefined, why, inputs, steps })
  return collisions.map((collision) => overlapping(survey, collision))
}

/** Open while a part cannot be looked at, unless two others overlap already. */
function addClearance(sheet: FigureSheet, survey: Survey): void {
  const { design, path, nodes } = survey
  const nearest = nearestOver(path.bench, nodes)
  const unseen = namesOf(survey, unseenParts(design.parts))
  const inputs = [line('parts without outline or place across the width', unseen || 'none', 'words')]
  const isDecided = unseen === '' || (nearest !== undefined && nearest.clearance_mm < 0)
  if (!nearest || !isDecided) {
    const apart = 'no two parts lie side by side across the width'
    sheet.add('motion.clearance', unseen ? { why: unseenWords(unseen), inputs } : { why: apart, beyond: 'above any', inputs })
    return
  }
  const { parts, node, clearance_mm } = nearest
  const steps = [
    line('nearest are', namesOf(survey, parts, ' and '), 'words'),
    line('at drive', path.drive.value(node.posture), driveUnit(survey)),
  ]
  sheet.add('motion.clearance', { value: clearance_mm, inputs, steps })
}

function namesOf({ design }: Survey, parts: readonly number[], between = ', '): string {
  return parts.map((part) => design.parts[part].id).join(between)
}

function unseenWords(unseen: string): string {
  return `not looked at: ${unseen}. State outline and across of these parts`
}

function overlapping({ path }: Survey, { parts, first, deepest, overlap }: Collision): Overlapping {
  const [met, worst] = [postureOf(path, first), postureOf(path, deepest)]
  return {
    parts,
    first_ratio: met.arc_ratio,
    deepest_ratio: worst.arc_ratio,
    firstDrive: met.drive,
    deepestDrive: worst.drive,
    depth_mm: overlap.depth_mm,
    at: { x_mm: overlap.x_mm, y_mm: overlap.y_mm },
  }
}
