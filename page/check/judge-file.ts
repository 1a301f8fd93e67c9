import type { CheckAsked, CheckTold } from './check-worker.ts'
import { readTableFile } from './read-table-file.ts'
import { readingsNow } from './readings.ts'

/** The worker of the file that was opened last; an earlier one must not answer after it. */
let counting: Worker | undefined

/** Has a file of readings judged against a design, apart from the page; the answer stands in `readingsNow`. */
export async function judgeFile(text: string, file: File): Promise<void> {
  const asked: CheckAsked = { text, file: file.name, bytes: await readTableFile(file) }
  counting?.terminate()
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
