import type { CheckAsked, CheckTold } from './check-worker.ts'
import { readingsNow } from './readings.ts'

/** A file of readings larger than this is none. */
const FILE_most_bytes = 50_000_000

/** The worker of the file that was opened last; an earlier one must not answer after it. */
let counting: Worker | undefined

/** Has a file of readings judged against a design, apart from the page; the answer stands in `readingsNow`. */
export async function judgeFile(text: string, file: File): Promise<void> {
  if (file.size > FILE_most_bytes) {
    const problem = { code: 'too large', place: '', found: `${file.size} bytes`, needed: `at most ${FILE_most_bytes} bytes` }
    readingsNow.set({ file: file.name, text, problems: [problem] })
    return
  }
  const asked: CheckAsked = { text, file: file.name, csv: await file.text() }
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
