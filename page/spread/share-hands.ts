import type { Hands, Share, ShareAsked } from '../../engine/index.ts'
import type { ToShareWorker } from './share-worker.ts'

/** More would wait for each other's memory, and each holds an engine of its own. */
const hands_most = 8

/** As many workers as the machine has processors; they end with the one that starts them. */
export function shareHands(text: string): Hands {
  const count = Math.min(hands_most, navigator.hardwareConcurrency)
  const workers = Array.from({ length: count }, () => {
    const worker = new Worker(new URL('./share-worker.ts', import.meta.url), { type: 'module' })
    send(worker, { text })
    return worker
  })
  return { count, make: (hand, asked) => shareOf(workers[hand], asked) }
}

function shareOf(worker: Worker, asked: ShareAsked): Promise<Share> {
  return new Promise((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<Share>) => resolve(data)
    worker.onerror = ({ message }) => reject(new Error(message))
    send(worker, asked)
  })
}

function send(worker: Worker, message: ToShareWorker): void {
  worker.postMessage(message)
}
