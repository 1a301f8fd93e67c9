/** Figures of one load case at the closed posture: efforts, who carries it, keeper, slip, letting go under it. */
import type { Design, LoadCase, Port } from '../design/design.ts'
import { pairsInUse } from '../design/pairs-in-use.ts'
import { effortToHold, portRow } from '../forces/effort.ts'
import { standingLoad } from '../forces/force-bench.ts'
import { type FramePair, powerIn } from '../forces/force-frame.ts'
import type { Carrier } from '../forces/holding.ts'
import { effortToOpen, type LettingGo, openingPort } from '../forces/letting-go.ts'
import { addLoadCase } from '../forces/loads.ts'
import { findSlip, type Slip } from '../forces/slip.ts'
import { framesNear, type Loaded, statedStiffness, underLoad } from '../forces/states.ts'
import { stopBand } from '../forces/stop-force.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { elasticChange } from './elastic-change.ts'
import type { WorkingValue } from './evaluation.ts'
import { type FigureEntry, type FigureSheet, line, writtenLines } from './figure-sheet.ts'
import type { ReturnFound } from './return-figures.ts'
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

const WEDGES = 'at rest friction could wedge the finger onto its stop with any force: there is no largest'

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

type Add = (tail: string, entry: FigureEntry) => void

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

function addEfforts(at: Add, survey: Survey, { efforts, loadCase }: CaseSurvey): void {
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

function addHolding(at: Add, loaded: Loaded | undefined, letsGo: () => boolean | undefined): void {
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

function addKeeper(at: Add, survey: Survey, loadCase: LoadCase, frames: FramePair | undefined): void {
  const { keeper } = loadCase
  if (!keeper || !frames) {
    at('sustainingLoad', {})
    at('keeperRatio', {})
    return
  }
  const port = portRow(survey.bench, frames.opening, keeper.port)
  const closes = powerIn(frames.closing, port) > 0
  const effort = effortToHold(survey.bench, frames.opening, { port, addLoads: (row) => addLoadCase(row, loadCase) })
  const needed = closes && effort?.amplitude !== undefined ? Math.max(0, effort.amplitude) : undefined
  const load = loadCase.forces.reduce((sum, force) => sum + force.force_N, 0)
  const why = closes ? undefined : 'this keeper does not close the finger at its closed posture'
  const allowed = line(
    'allowed on the keeper',
    keeper.allowed,
    keeper.port.kind === 'force' ? 'N' : 'N·mm',
    `loadCases.${loadCase.id}.keeper.allowed`,
  )
  at('sustainingLoad', {
    value: needed,
    why,
    inputs: [allowed],
    steps: effort ? [line('without friction', effort.free, keeper.port.kind === 'force' ? 'N' : 'N·mm')] : [],
  })
  at('keeperRatio', {
    value: needed !== undefined && load > 0 ? needed / load : undefined,
    why: load > 0 ? why : 'this case has no force to compare with',
  })
}

const SLIP_WORDS: Record<Exclude<Slip['kind'], 'at'>, string> = {
  noWindow: 'already at the jam the keeper needs more than it is allowed: there is no window',
  never: 'the keeper never needs more than it is allowed',
  unknown: 'no equilibrium was found on the way outward',
}

function addSlip(at: Add, survey: Survey, loadCase: LoadCase, { jam }: ReturnFound): Slip | undefined {
  const { path } = survey
  const noKeeper = 'this case has no keeper, so nothing is allowed that could be exceeded'
  const noToggle = 'the design watches no toggle'
  if (!loadCase.keeper || path.toggles.length === 0 || jam.kind === 'everywhere' || jam.kind === 'unknown') {
    const why = !loadCase.keeper ? noKeeper : path.toggles.length === 0 ? noToggle : 'there is no jam angle to go outward from'
    at('slipAngle', { why })
    at('holdWindow', { why })
    return undefined
  }
  const from = jam.kind === 'never' ? path.beyond[path.beyond.length - 1] : jam.node
  const slip = findSlip(survey.bench, path, loadCase, from)
  const margin = slip.kind === 'at' ? toggleMargin(path.toggles[0], slip.node.posture) : undefined
  const why = slip.kind === 'at' ? '' : SLIP_WORDS[slip.kind]
  const allowed = line('allowed on the keeper', loadCase.keeper.allowed, loadCase.keeper.port.kind === 'force' ? 'N' : 'N·mm')
  const name = line('margin of toggle', survey.design.toggles[0].id, 'words')
  at('slipAngle', { value: margin, why, ...(slip.kind === 'never' && { beyond: 'above any' as const }), inputs: [allowed, name] })
  const jamMargin = jam.kind === 'at' ? toggleMargin(path.toggles[0], jam.node.posture) : undefined
  const window = slip.kind === 'noWindow' ? 0 : margin !== undefined && jamMargin !== undefined ? margin - jamMargin : undefined
  at('holdWindow', { value: window, why: why || 'without a jam the window has one side only', inputs: [allowed, name] })
  return slip
}

/** Letting go with the load still on: at the drive, and at the release port where the design has one. */
function addLetGoUnderLoad(at: Add, survey: Survey, loadCase: LoadCase, frames: FramePair | undefined): void {
  const { release } = survey.design
  const atDrive = frames && lettingGo(survey, loadCase, frames, { kind: 'drive' })
  at('letGoUnderLoadEffort', atDrive ? openingEntry(atDrive) : {})
  at('letGoUnderLoadReserve', { value: atDrive?.found.reserve_Nmm })
  if (release) at('releaseEffort', frames ? openingEntry(lettingGo(survey, loadCase, frames, release.port)) : {})
}

interface PortOpening {
  readonly found: LettingGo
  readonly asked: Port
  /** Whether the port can open the finger at all. */
  readonly opens: boolean
}

function lettingGo(survey: Survey, loadCase: LoadCase, { opening }: FramePair, asked: Port): PortOpening {
  const { bench } = survey
  const load = standingLoad(bench, opening, 'letting go')
  addLoadCase(load, loadCase)
  const port = openingPort(bench, opening, asked)
  const found = effortToOpen(bench, opening, { port: port ?? new Float64Array(load.out.length), load: load.out })
  return { found, asked, opens: port !== undefined }
}

function openingEntry({ found, asked, opens }: PortOpening): FigureEntry {
  if (found.kind !== 'jams') return { value: found.kind === 'effort' ? found.effort : undefined }
  const where = asked.kind === 'drive' ? 'the drive' : 'the release'
  const why = opens
    ? `it jams: ${where} opens it under this load from no worst rest, however hard`
    : 'it does not open by itself, and a cable or chain cannot push'
  return { why, beyond: 'above any' }
}

function addLoadedMargin(at: Add, survey: Survey, loaded: Loaded | undefined): void {
  const { path } = survey
  const toggle = path.toggles[0]
  const why = toggle ? 'the play does not settle under this load' : 'the design watches no toggle'
  at('loadedMargin', {
    value: toggle && loaded && toggleMargin(toggle, loaded.posture),
    why,
    steps: loaded ? [line('rounds of posture and forces', loaded.rounds, '1')] : [],
  })
}

/** @returns the entry of the largest force */
function addStopBand(at: Add, survey: Survey, loadCase: LoadCase, frames: FramePair | undefined): FigureEntry {
  const { path, bench, design } = survey
  const stop = path.end.by === 'stop' ? design.stops[path.end.stop] : undefined
  if (!stop || !frames) {
    const entry = stop ? {} : { why: 'the travel does not end at a stop' }
    at('stopForceLeast', entry)
    at('stopForceMost', entry)
    return entry
  }
  const load = standingLoad(bench, frames.opening, 'stopped')
  addLoadCase(load, loadCase)
  const band = stopBand(bench, frames.opening, { stop, load: load.out })
  const inputs = [line(`at rest, most: ${stop.friction.name}`, stop.friction.rest.most, '1', `stops.${stop.id}.friction`)]
  at('stopForceLeast', { value: band?.least_N, inputs })
  const wedges = band && band.most_N === undefined
  const most: FigureEntry = wedges ? { why: WEDGES, beyond: 'above any', inputs } : { value: band?.most_N, inputs }
  at('stopForceMost', most)
  return most
}
