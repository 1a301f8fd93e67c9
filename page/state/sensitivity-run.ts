/** A run through the sensitivities: begun by hand, shown as it goes, stopped at any time; what was reached is kept until another begins. */
import type { Sensitivity, SensitivityProgress } from '../../engine/index.ts'
import { sharedState, useShared } from './shared-state.ts'

/** How far a run is. */
export interface SensitivityRun {
  /** The text that it is about. */
  readonly text: string
  readonly isGoing: boolean
  readonly done: number
  /** 0 before the first is found. */
  readonly of: number
  readonly found: readonly Sensitivity[]
  /** Time that it will still take, by what was done so far; absent before the first is found. */
  readonly remaining_s?: number
}

const shared = sharedState<SensitivityRun | undefined>(undefined)
let worker: Worker | undefined

/** Begins a run about a text; one that goes on is given up. */
export function beginSensitivities(text: string): void {
  worker?.terminate()
  worker = new Worker(new URL('./sensitivity-worker.ts', import.meta.url), { type: 'module' })
  const begun_ms = performance.now()
  shared.set({ text, isGoing: true, done: 0, of: 0, found: [] })
  worker.onmessage = ({ data }: MessageEvent<SensitivityProgress | 'done'>) => {
    const run = shared.now()
    if (run === undefined) return
    if (data === 'done') {
      stopSensitivities()
      return
    }
    const { done, of, found } = data
    const each_ms = (performance.now() - begun_ms) / done
    shared.set({ ...run, done, of, found: [...run.found, found], remaining_s: Math.ceil(((of - done) * each_ms) / 1000) })
  }
  worker.onerror = (event) => {
    stopSensitivities()
    throw new Error(`the calculation stopped: ${event.message}`)
  }
  worker.postMessage(text)
}

/** Ends the run; what was found stays. */
export function stopSensitivities(): void {
  worker?.terminate()
  worker = undefined
  const run = shared.now()
  if (run !== undefined) shared.set({ ...run, isGoing: false })
}

/** The run of now; absent before the first. */
export function useSensitivities(): SensitivityRun | undefined {
  return useShared(shared)
}
