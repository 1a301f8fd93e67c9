/** Whether the finger lets go again by its own springs, as a clause: with what reserve, or where and why it jams. */
import { answerOf, figureOf, numberOf } from '../tables/figure-lookup.ts'
import type { Told } from '../tables/told.ts'
import { say } from '../tables/value-text.ts'
import { inside } from './words.ts'

/** `it lets go`, `from rest it jams at 70.2°, …` or why it is undecided. */
export function returnClause(evaluation: Told): string {
  const letsGo = answerOf(evaluation, 'return.letsGo')
  if (letsGo === undefined) {
    return `whether it lets go is undecided: ${inside(figureOf(evaluation, 'return.letsGo')?.why ?? 'not calculated')}`
  }
  return letsGo ? letsGoClause(evaluation) : jamClause(evaluation)
}

function letsGoClause(evaluation: Told): string {
  const reserve = numberOf(evaluation, 'return.reserveFromRest')
  return reserve === undefined
    ? 'it lets go'
    : `it lets go, with ${say(reserve, 'N·mm', evaluation.units)} of drag a pin to spare`
}

function jamClause(evaluation: Told): string {
  const fromRest = numberOf(evaluation, 'return.reserveFromRest')
  const moving = numberOf(evaluation, 'return.reserveMoving')
  const where = worstWords(evaluation)
  const why = figureOf(evaluation, 'return.letsGo')?.why
  const because = why === undefined ? '' : `: ${inside(why)}`
  const released = releaseWords(evaluation)
  if (fromRest === undefined) return `it does not let go by itself${where}${because}${released}`
  const reason =
    noSpring(evaluation) ??
    toggleReason(evaluation) ??
    `friction outweighs the springs by ${say(Math.abs(fromRest), 'N·mm', evaluation.units)} a pin`
  if (moving !== undefined && moving > 0) return `it may stick${where}, though once moving it keeps moving: ${reason}${released}`
  return `it jams${where} and does not let go: ${reason}${heldAlike(evaluation)}${released}`
}

/** A load that friction holds by itself, and springs that do not open the finger: the same thing seen twice. */
function heldAlike(evaluation: Told): string {
  const { design } = evaluation
  const held = design.loadCases.filter(({ id }) => {
    const carrier = String(figureOf(evaluation, `loadCase.${id}.heldBy`)?.value)
    return carrier.includes('friction') && answerOf(evaluation, `loadCase.${id}.holdsByItself`) === true
  })
  if (held.length === 0 || design.springs.length === 0) return ''
  return `; what holds ${held.map(({ name }) => inside(name)).join(' and ')} by itself holds the springs too`
}

function noSpring({ design }: Told): string | undefined {
  return design.springs.length === 0 ? 'the design has no spring that would open it' : undefined
}

/** A toggle inside its jam angle: no spring that acts through it helps, however strong, so the way out is said too. */
function toggleReason(evaluation: Told): string | undefined {
  for (const { id } of evaluation.design.toggles) {
    const margin = numberOf(evaluation, `closed.toggle.${id}.deadCentreMargin`)
    const jam = numberOf(evaluation, `closed.toggle.${id}.jamAngle`)
    if (margin === undefined || jam === undefined || margin <= 0 || margin >= jam) continue
    return (
      `at rest friction holds the toggle wherever it is less than ${say(jam, 'rad')} short of dead centre; ` +
      'a stronger spring does not mend that: less friction, thinner pins or an earlier stop would'
    )
  }
  return undefined
}

/** What forces a finger open that has gone past dead centre, where the design has a release. */
function releaseWords(evaluation: Told): string {
  const effort = numberOf(evaluation, 'release.effort')
  const unit = figureOf(evaluation, 'release.effort')?.unit
  return effort === undefined || unit === undefined || effort <= 0
    ? ''
    : `; ${say(effort, unit, evaluation.units)} at its release opens it`
}

function worstWords(evaluation: Told): string {
  const worst = numberOf(evaluation, 'return.worstAt')
  const unit = figureOf(evaluation, 'return.worstAt')?.unit
  return worst === undefined || unit === undefined ? '' : ` at ${say(worst, unit, evaluation.units)} of the drive`
}
