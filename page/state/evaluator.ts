/**
 * Asks the worker for evaluations. One question is under way at a time; while it is, only the newest one waits and those between are dropped.
 * A pin that is dragged therefore never builds up a queue.
 */
import type { Answer, Request } from './messages.ts'

/** Somebody who evaluates and answers the newest question. */
export interface Evaluator {
  readonly ask: (design: Omit<Request, 'id'>) => void
  readonly close: () => void
}

/** @param answered called with each answer and the question it belongs to; whether it is still wanted is for the caller to judge */
export function startEvaluator(answered: (answer: Answer, request: Request) => void): Evaluator {
  const worker = new Worker(new URL('./evaluation-worker.ts', import.meta.url), { type: 'module' })
  let newest = 0
  let underWay: Request | undefined
  let waiting: Request | undefined
  const send = (request: Request): void => {
    underWay = request
    worker.postMessage(request)
  }
  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    const request = underWay
    const next = waiting
    underWay = undefined
    waiting = undefined
    if (next !== undefined) send(next)
    if (request !== undefined) answered(data, request)
  }
  worker.onerror = (event) => {
    throw new Error(`the calculation stopped: ${event.message}`)
  }
  return {
    ask: (design) => {
      newest += 1
      const request = { id: newest, ...design }
      if (underWay === undefined) send(request)
      else waiting = request
    },
    close: () => worker.terminate(),
  }
}
