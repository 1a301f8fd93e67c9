/** How the finger stands when it is closed, as a clause: short of dead centre, past it, or that it does not close. */
import type { Toggle } from '../../engine/index.ts'
import { answerOf, figureOf, numberOf } from '../tables/figure-lookup.ts'
import type { Told } from '../tables/told.ts'
import { say } from '../tables/value-text.ts'
import { inside } from './words.ts'

/** The toggle that stands nearest to its jam when closed; absent for a finger without toggles. */
export function governingToggle(evaluation: Told): Toggle | undefined {
  const roomOf = (toggle: Toggle): number => {
    const margin = numberOf(evaluation, `closed.toggle.${toggle.id}.deadCentreMargin`) ?? Infinity
    return margin - (numberOf(evaluation, `closed.toggle.${toggle.id}.jamAngle`) ?? 0)
  }
  return [...evaluation.design.toggles].sort((one, other) => roomOf(one) - roomOf(other))[0]
}

/** Why the finger has no closed posture, as a clause; absent when it closes. */
export function cannotCloseClause(evaluation: Told): string | undefined {
  const { travel, problems } = evaluation
  if (travel === undefined) {
    const problem = problems[0]
    return problem === undefined
      ? 'the finger cannot be assembled'
      : `the finger cannot be moved: ${inside(problem.found)}; needed: ${inside(problem.needed)}`
  }
  if (travel.endsBy === 'breaks') return `the finger does not close: ${inside(travel.endWords)}`
  if (answerOf(evaluation, 'motion.closes') === false) {
    const why = inside(figureOf(evaluation, 'motion.closes')?.why ?? travel.endWords)
    const last = travel.postures.at(-1)
    const where = last === undefined ? '' : ` at ${say(last.drive, travel.driveUnit, evaluation.units)} of the drive`
    return evaluation.design.stops.length > 0
      ? `the finger does not reach its stop: ${why}${where}`
      : `the finger does not close: ${why}${where}`
  }
  return undefined
}

/** `closed, pin B stands 8.7° short of dead centre`; the closed drive position where there is no toggle. */
export function closedClause(evaluation: Told): string {
  const toggle = governingToggle(evaluation)
  const margin = toggle && numberOf(evaluation, `closed.toggle.${toggle.id}.deadCentreMargin`)
  if (toggle === undefined || margin === undefined) return closedDriveClause(evaluation)
  const pin = evaluation.design.pins[toggle.b].id
  const side = margin >= 0 ? 'short of' : 'past'
  return `closed, pin ${pin} stands ${say(Math.abs(margin), 'rad')} ${side} dead centre`
}

/** `at rest it would jam below 5.1° and slips above 13.9°`: the hold window of the governing toggle, as far as it is known. */
export function windowClause(evaluation: Told): string | undefined {
  const toggle = governingToggle(evaluation)
  if (toggle === undefined) return undefined
  const jam = numberOf(evaluation, `closed.toggle.${toggle.id}.jamAngle`)
  const slips = evaluation.design.loadCases
    .map((loadCase) => numberOf(evaluation, `loadCase.${loadCase.id}.slipAngle`))
    .filter((angle) => angle !== undefined)
  const jamWords = jam === undefined ? [] : [`at rest it would jam below ${say(jam, 'rad')}`]
  const slipWords = slips.length === 0 ? [] : [`it slips above ${say(Math.min(...slips), 'rad')}`]
  const words = [...jamWords, ...slipWords]
  return words.length === 0 ? undefined : words.join(' and ')
}

function closedDriveClause(evaluation: Told): string {
  const travel = evaluation.travel
  const drive = numberOf(evaluation, 'closed.drive')
  const where =
    drive === undefined || travel === undefined ? '' : ` at ${say(drive, travel.driveUnit, evaluation.units)} of the drive`
  return travel?.endsBy === 'stop' ? `closed${where}, it stands against its stop` : `it closes${where}`
}
