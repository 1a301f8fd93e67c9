/** Whether the finger hits itself on its travel. */
import { collisionsOver } from '../motion/collision.ts'
import { type FigureSheet, line } from './figure-sheet.ts'
import { driveUnit } from './motion-figures.ts'
import type { Survey } from './survey.ts'

/** Deepest overlap over the travel, mm; undecided while a part cannot be looked at, unless another pair already collides. */
export function addCollisionFigures(sheet: FigureSheet, survey: Survey): void {
  const { design, path, nodes } = survey
  const { collisions, notLookedAt } = collisionsOver(path.bench, nodes)
  const unseen = notLookedAt.map((part) => design.parts[part].id).join(', ')
  const deepest = collisions.toSorted((a, b) => b.overlap.depth_mm - a.overlap.depth_mm)[0]
  const inputs = [line('parts without outline or place across the width', unseen || 'none', 'words')]
  const steps = collisions.flatMap(({ parts, first, deepest: worst, overlap }) => {
    const names = parts.map((part) => design.parts[part].id).join(' and ')
    return [
      line(`${names} first touch at drive`, path.drive.value(first.posture), driveUnit(survey)),
      line(`${names} deepest at drive`, path.drive.value(worst.posture), driveUnit(survey)),
      line(`${names} overlap`, overlap.depth_mm, 'mm'),
    ]
  })
  const why = `not looked at: ${unseen}. State outline and across of these parts`
  const decided = deepest !== undefined || notLookedAt.length === 0
  sheet.add('motion.collides', { value: decided ? deepest !== undefined : undefined, why, inputs, steps })
  sheet.add('motion.collisionDepth', { value: decided ? (deepest?.overlap.depth_mm ?? 0) : undefined, why, inputs, steps })
}
