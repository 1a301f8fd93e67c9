/** Figures of one load case at the closed posture: efforts, who carries it, keeper, slip, letting go under it. */
import type { Design, LoadCase } from '../design/design.ts'
import { pairsInUse } from '../design/pairs-in-use.ts'
import type { Carrier } from '../forces/holding.ts'
import type { Slip } from '../forces/slip.ts'
import { framesNear, type Loaded, statedStiffness, underLoad } from '../forces/states.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { addKeeper } from './case-keeper.ts'
import { addLetGoUnderLoad } from './case-letting-go.ts'
import type { AddToCase } from './case-sheet.ts'
import { addSlip } from './case-slip.ts'
import { addStopBand } from './case-stop.ts'
import { elasticChange } from './elastic-change.ts'
import type { WorkingValue } from './evaluation.ts'
import { type FigureEntry, type FigureSheet, line, writtenLines } from './figure-sheet.ts'
import type { ReturnFound } from './return-found.ts'
import type { CaseSurvey, Survey } from './survey.ts'

export interface CaseFound {
  readonly loadCase: LoadCase
  readonly loaded?: Loaded
  readonly slip?: Slip
  /** Largest force of the stop, as its figure says it. */
  readonly stopForceMost?: FigureEntry
}

const OUT_OF_PLANE = 'this case acts out of the plane of motion only: the hinges carry it'
const NO_BALANCE = 'no equilibrium was found at the closed posture'
const SNAPS =
  'posture and forces do not settle under this load: play in the pins and stretch of the links may let the toggle run through dead centre'
const WITH_WORDS: Record<Carrier, string> = {
  stop: 'stop',
  toggle: 'toggle with friction',
  friction: 'friction of the pins',
  spring: 'spring',
  weight: 'weight',
  wearer: 'wearer',
  keeper: 'keeper',
}

/** Names of the figures that every load case has. */
const IN_PLANE = [
  'effortToClose',
  'effortToHold',
  'effortFrictionless',
  'holdsByItself',
  'holdReserve',
  'sustainingLoad',
  'keeperRatio',
  'letGoUnderLoadEffort',
  'letGoUnderLoadReserve',
]
const MORE_IN_PLANE = [
  'slipAngle',
  'holdWindow',
  'loadedMargin',
  'pinForceMost',
  'stopForceLeast',
  'stopForceMost',
  'elasticMarginChange',
]

/** Figures of a case that only pushes sideways: carried by the hinges, all else does not exist and says why. */
export function addOutOfPlaneFigures(sheet: FigureSheet, { release }: Design, loadCase: LoadCase): void {
  const head = `loadCase.${loadCase.id}`
  sheet.add(`${head}.heldBy`, { value: 'hinges', inputs: loadCase.sideways.map((push) => line('sideways', push.force_N, 'N')) })
  for (const tail of [...IN_PLANE, ...MORE_IN_PLANE]) {
    if ((tail === 'sustainingLoad' || tail === 'keeperRatio') && !loadCase.keeper) continue
    sheet.add(`${head}.${tail}`, { why: OUT_OF_PLANE })
  }
  for (const carrier of Object.keys(WITH_WORDS)) sheet.add(`${head}.share.${carrier}`, { why: OUT_OF_PLANE })
  if (release) sheet.add(`${head}.releaseEffort`, { why: OUT_OF_PLANE })
}

/**
 * Figures of one load case.
 *
 * @param found jam of the finger, where the way outward to slip begins
 * @returns the loaded state and the slip, as far as they exist
 */
export function addCaseFigures(sheet: FigureSheet, survey: Survey, surveyed: CaseSurvey, found: ReturnFound): CaseFound {
  const { loadCase } = surveyed
  const stiffness = statedStiffness(survey.path)
  const loaded = underLoad(survey.closed, loadCase, { clearance: true, stiffnessOf: stiffness })
  const whyNot = loaded || !holdsRigid(survey, loadCase) ? NO_BALANCE : SNAPS
  const at = (tail: string, { why = whyNot, inputs, ...entry }: FigureEntry): void => {
    const all = (): readonly WorkingValue[] => [...loadLines(survey, loadCase), ...writtenLines(inputs)]
    sheet.add(`loadCase.${loadCase.id}.${tail}`, { ...entry, why, inputs: all })
  }
  const asks = (...tails: readonly string[]): boolean => sheet.asks(...tails.map((tail) => `loadCase.${loadCase.id}.${tail}`))
  if (asks('effortToClose', 'effortToHold', 'effortFrictionless', 'pinForceMost')) addEfforts(at, survey, surveyed)
  addHolding(at, loaded, () => found.letsGo)
  addLoadedMargin(at, survey, loaded)
  if (asks('elasticMarginChange')) at('elasticMarginChange', elasticChange(survey, loaded))
  const frames = loaded && framesNear(survey.closed, loaded.posture)
  if (loadCase.keeper && asks('sustainingLoad', 'keeperRatio')) addKeeper(at, survey, loadCase, frames)
  if (asks('letGoUnderLoadEffort', 'letGoUnderLoadReserve', 'releaseEffort')) addLetGoUnderLoad(at, survey, loadCase, frames)
  const asksStop =
    asks('stopForceLeast', 'stopForceMost') ||
    sheet.asksUnder('strength.stop.') ||
    sheet.asks('strength.least', 'strength.givesFirst')
  const stopForceMost = asksStop ? addStopBand(at, survey, loadCase, frames) : undefined
  const slip = asks('slipAngle', 'holdWindow') ? addSlip(at, survey, loadCase, found) : undefined
  return { loadCase, ...(loaded && { loaded }), ...(slip && { slip }), ...(stopForceMost && { stopForceMost }) }
}

/** Whether the closed finger would hold its case with neither play nor stretch. */
function holdsRigid(survey: Survey, loadCase: LoadCase): boolean {
  return underLoad(survey.closed, loadCase, { clearance: false, stiffnessOf: () => undefined }) !== undefined
}

function loadLines({ design }: Survey, loadCase: LoadCase): WorkingValue[] {
  const place = `loadCases.${loadCase.id}`
  const forces = loadCase.forces.map((force) => {
    const part = design.parts[force.part]
    return line(`force on ${part.id}.${part.pads[force.pad].id}`, force.force_N, 'N', place)
  })
  const couples = loadCase.couples.map((couple) =>
    line(`couple on ${design.parts[couple.part].id}`, couple.couple_Nmm, 'N·mm', place),
  )
  return [...forces, ...couples]
}

function addEfforts(at: AddToCase, survey: Survey, { efforts, loadCase }: CaseSurvey): void {
  const closed = efforts[efforts.length - 1]
  const why = 'the drive does no work at the closed posture (dead centre), or no equilibrium was found'
  const levels = pairsInUse(survey.design).map((pair) =>
    line(`moving, least to most: ${pair.name}`, `${pair.moving.least} to ${pair.moving.most}`, 'words', `friction.${pair.name}`),
  )
  at('effortToClose', { value: closed?.close, why, inputs: levels })
  at('effortToHold', { value: closed?.hold, why, inputs: levels })
  at('effortFrictionless', { value: closed?.free, why })
  const most = Math.max(0, ...efforts.map((effort) => effort?.pinForceMost_N ?? 0))
  at('pinForceMost', { value: most, steps: [line('postures looked at', loadCase.acts === 'travel' ? efforts.length : 1, '1')] })
}

function addHolding(at: AddToCase, loaded: Loaded | undefined, letsGo: () => boolean | undefined): void {
  const shares = loaded?.state.shares
  // What friction holds at its least, it holds all the more against springs in the same place: said, so that nobody wonders.
  const byFriction = loaded?.state.byItself && (loaded.state.carriedBy === 'toggle' || loaded.state.carriedBy === 'friction')
  const after = (): string => (letsGo() ? 'yes: the springs open it elsewhere' : 'no: what holds the load holds the springs too')
  at('holdsByItself', {
    value: loaded?.state.byItself,
    steps: byFriction ? [line('lets go once the load is gone', after(), 'words')] : [],
  })
  const noStop = loaded && 'what pushes it closed rests on no stop'
  at('holdReserve', { value: loaded?.state.reserve_Nmm, ...(noStop && { why: noStop }) })
  at('heldBy', { value: loaded && WITH_WORDS[loaded.state.carriedBy] })
  for (const carrier of Object.keys(WITH_WORDS) as Carrier[]) at(`share.${carrier}`, { value: shares?.[carrier] })
}

function addLoadedMargin(at: AddToCase, survey: Survey, loaded: Loaded | undefined): void {
  const { path } = survey
  const toggle = path.toggles[0]
  const why = toggle ? 'the play does not settle under this load' : 'the design watches no toggle'
  at('loadedMargin', {
    value: toggle && loaded && toggleMargin(toggle, loaded.posture),
    why,
    steps: loaded ? [line('rounds of posture and forces', loaded.rounds, '1')] : [],
  })
}
