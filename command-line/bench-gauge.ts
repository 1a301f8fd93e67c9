import { calibrationSaid, readGaugeEntry } from '../report/index.ts'
import { aligned, type Cell } from './columns.ts'
import type { ExitStatus } from './exit-status.ts'
import { refuseUnknown } from './find-design.ts'
import { type Entering, keepOne } from './keep-one.ts'
import { momentText } from './revision-text.ts'
import type { Terminal } from './terminal.ts'
import { lookInStore, type StoreAsked } from './use-store.ts'

/** A gauge to be entered, as typed. */
export interface GaugeAsked extends Entering {
  readonly name: string
  readonly gauge: string
  readonly resolution: string
  readonly uncertainty: string
  readonly calibrated: string
}

/** Enters a gauge, its next calibration, or what stands in the place of a wrong one. @throws WrongUse when the store cannot be used */
export function enterGauge(
  { name, gauge, resolution, uncertainty, calibrated, ...options }: GaugeAsked,
  terminal: Terminal,
): Promise<ExitStatus> {
  const read = () => readGaugeEntry({ gauge, resolution, uncertainty, calibrated })
  const said = `${gauge} is kept as calibrated on ${calibrated}.`
  return keepOne({ name, options, about: `gauge ${gauge}`, read, said }, terminal)
}

const left = (text: string): Cell => ({ text, side: 'left' })
const right = (text: string): Cell => ({ text, side: 'right' })

/** Prints every calibration of every gauge, those that were corrected too. @throws WrongUse for a name that is not in the store */
export async function listGauges(name: string, asked: StoreAsked): Promise<void> {
  const all = await lookInStore(asked, (store) => {
    refuseUnknown(store, name)
    return store.bench.calibrations()
  })
  const heading = [left('gauge'), right('steps, mm'), right('leaves open, mm'), left('calibrated'), left('who and when')]
  const rows = all.map((one) => [
    left(one.gauge),
    ...[one.resolution_mm, one.uncertainty_mm].map((size) => right(String(size))),
    ...[one.calibrated, calibrationSaid(one, momentText)].map(left),
  ])
  const none = `No gauge was entered yet: fingerwright enter-gauge ${name} GAUGE enters one\n`
  asked.terminal.write(all.length === 0 ? none : `${aligned([heading, ...rows]).join('\n')}\n`)
}
