/** Letting go with the load still on: at the drive, and at the release port where the design has one. */
import type { LoadCase, Port } from '../design/design.ts'
import { standingLoad } from '../forces/force-bench.ts'
import type { FramePair } from '../forces/force-frame.ts'
import { effortToOpen, type LettingGo, openingPort } from '../forces/letting-go.ts'
import { addLoadCase } from '../forces/loads.ts'
import type { AddToCase } from './case-sheet.ts'
import type { FigureEntry } from './figure-sheet.ts'
import type { Survey } from './survey.ts'

/** Efforts (N or N·mm, as their ports) and the reserve at the drive, N·mm. @param frames of the loaded state; absent without one */
export function addLetGoUnderLoad(at: AddToCase, survey: Survey, loadCase: LoadCase, frames: FramePair | undefined): void {
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
