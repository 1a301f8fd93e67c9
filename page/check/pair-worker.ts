/// <reference lib="webworker" />
/** Pairs the pieces of measured sets apart from the page. It is stopped by being ended. */
import { type PairedLot, pairingLot, readVariation } from '../../engine/index.ts'
import { measuredPieces } from '../../report/index.ts'
import type { Told } from '../state/background-run.ts'
import type { PairAsked } from './pairing.ts'

addEventListener('message', ({ data }: MessageEvent<PairAsked>) => {
  const { value } = readVariation(data.text)
  if (value === undefined) return
  const steps = pairingLot(value, measuredPieces(data.sets))
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done === true) {
      tell({ done: 1, of: 1, reached: step.value, isAll: true })
      return
    }
    const { given_count, kinds_count } = step.value
    tell({ done: given_count, of: Math.max(ROUNDS_usual * kinds_count, given_count) })
  }
})

/** Rounds over all kinds of pieces in which the search mostly ends. */
const ROUNDS_usual = 3

function tell(told: Told<PairedLot>): void {
  postMessage(told)
}
