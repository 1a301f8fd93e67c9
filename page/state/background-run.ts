/** Long work apart from the page: begun by hand, shown as it goes, stopped at any time; what was reached is kept until another begins. */
import { sharedState, useShared } from './shared-state.ts'

/** How far a run is. */
export interface BackgroundRun<Reached> {
  /** The text of the design that it is about. */
  readonly text: string
  readonly isGoing: boolean
  readonly done: number
  /** 0 before the first word. */
  readonly of: number
  /** What is being done, where a run has several parts. */
  readonly doing?: string
  readonly reached?: Reached
  /** Time that the part of now will still take, by what was done of it so far. */
  readonly remaining_s?: number
}

/** What a worker tells: how far it is, what is reached, and whether that is all. */
export interface Told<Reached> {
  readonly done: number
  readonly of: number
  readonly doing?: string
  readonly reached?: Reached
  readonly isAll?: true
}

/** One kind of long work. `Asked` is what its worker is handed; it always has the text of the design. */
export interface LongWork<Asked, Reached> {
  readonly begin: (asked: Asked) => void
  readonly stop: () => void
  /** Stops, and puts away what was reached. */
  readonly forget: () => void
  readonly use: () => BackgroundRun<Reached> | undefined
}

/** @param start the worker of this work; it is sent what is asked for, and answers with `Told` */
export function longWork<Asked extends { readonly text: string }, Reached>(start: () => Worker): LongWork<Asked, Reached> {
  const shared = sharedState<BackgroundRun<Reached> | undefined>(undefined)
  let worker: Worker | undefined
  const stop = (): void => {
    worker?.terminate()
    worker = undefined
    const run = shared.now()
    if (run !== undefined) shared.set({ ...run, isGoing: false })
  }
  const begin = (asked: Asked): void => {
    worker?.terminate()
    worker = start()
    let [begun_ms, told_ms] = [performance.now(), performance.now()]
    shared.set({ text: asked.text, isGoing: true, done: 0, of: 0 })
    worker.onmessage = ({ data }: MessageEvent<Told<Reached>>) => {
      const run = shared.now()
      if (run === undefined) return
      const { done, of, isAll, ...more } = data
      // Another part has another pace; it began when the last word of the one before it came.
      if (more.doing !== run.doing || done < run.done) begun_ms = told_ms
      told_ms = performance.now()
      const each_ms = (told_ms - begun_ms) / Math.max(done, 1)
      shared.set({ ...run, ...more, done, of, remaining_s: Math.ceil(((of - done) * each_ms) / 1000) })
      if (isAll) stop()
    }
    worker.onerror = (event) => {
      stop()
      throw new Error(`the calculation stopped: ${event.message}`)
    }
    worker.postMessage(asked)
  }
  const forget = (): void => {
    worker?.terminate()
    worker = undefined
    shared.set(undefined)
  }
  return { begin, stop, forget, use: () => useShared(shared) }
}
