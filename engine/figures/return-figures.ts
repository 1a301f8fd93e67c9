/** Figures of letting go: the return reserve over the way back, the jam angles, play and release. */
import { standingLoad } from '../forces/force-bench.ts'
import { effortToOpen, openingPort } from '../forces/letting-go.ts'
import { framesNear } from '../forces/states.ts'
import type { FigureSheet } from './figure-sheet.ts'
import { addJamAngles } from './jam-figures.ts'
import { addPlay } from './play-figures.ts'
import { type ReturnFound, returnFound } from './return-found.ts'
import { frictionLines, NO_REST } from './return-lines.ts'
import { addReserves } from './return-reserves.ts'
import type { Survey } from './survey.ts'

/** Return reserves (N·mm a pin), jam angles and play (rad), release effort. @returns what load cases and the travel's events build on */
export function addReturnFigures(sheet: FigureSheet, survey: Survey): ReturnFound {
  const found = returnFound(survey)
  addReserves(sheet, survey, found)
  addJamAngles(sheet, survey, { found, figure: 'jamAngle' })
  addJamAngles(sheet, survey, { found, figure: 'runJamAngle' })
  addPlay(sheet, survey, found)
  if (survey.design.release && sheet.asks('release.effort')) addRelease(sheet, survey)
  return found
}

/** Release at its own port from the closed posture; springs help. */
function addRelease(sheet: FigureSheet, survey: Survey): void {
  const { design, closed, bench } = survey
  const frames = framesNear(closed, closed.node.posture)
  if (!frames || !design.release) {
    sheet.add('release.effort', { why: NO_REST })
    return
  }
  const port = openingPort(bench, frames.opening, design.release.port)
  if (!port) {
    sheet.add('release.effort', { why: 'a cable or chain cannot push: it releases nothing' })
    return
  }
  const load = standingLoad(bench, frames.opening, 'letting go')
  const found = effortToOpen(bench, frames.opening, { port, load: load.out })
  sheet.add('release.effort', {
    value: found.kind === 'effort' ? found.effort : undefined,
    ...(found.kind === 'jams' && { beyond: 'above any' as const }),
    why: found.kind === 'jams' ? 'it jams: this port opens no finger from the worst rest, however hard' : NO_REST,
    inputs: frictionLines(survey, 'rest'),
  })
}
