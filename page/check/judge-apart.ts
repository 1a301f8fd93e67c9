import type { CheckAsked, CheckTold } from './check-worker.ts'
import { pairing } from './pairing.ts'
import { readingsNow } from './readings.ts'

/** The worker of what was opened last; an earlier one must not answer after it. */
let counting: Worker | undefined

/** Has readings judged apart from the page; the answer stands in `readingsNow`. */
export function judgeApart(asked: CheckAsked): void {
  counting?.terminate()
  // What was paired of other sets says nothing of these.
  pairing.forget()
  const worker = new Worker(new URL('./check-worker.ts', import.meta.url), { type: 'module' })
  counting = worker
  worker.onmessage = ({ data }: MessageEvent<CheckTold>) => {
    if (data.isAll) worker.terminate()
    readingsNow.set(data.opened)
  }
  worker.onerror = (event) => {
    worker.terminate()
    throw new Error(`the calculation stopped: ${event.message}`)
  }
  worker.postMessage(asked)
}
