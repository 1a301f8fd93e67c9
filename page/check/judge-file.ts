import type { CheckAsked } from './check-worker.ts'
import { type OpenedReadings, readingsNow } from './readings.ts'

/** A file of readings larger than this is none. */
const FILE_most_bytes = 50_000_000

/** Has a file of readings judged against a design, apart from the page; the answer stands in `readingsNow`. */
export async function judgeFile(text: string, file: File): Promise<void> {
  if (file.size > FILE_most_bytes) {
    const problem = { code: 'too large', place: '', found: `${file.size} bytes`, needed: `at most ${FILE_most_bytes} bytes` }
    readingsNow.set({ file: file.name, text, problems: [problem] })
    return
  }
  const asked: CheckAsked = { text, file: file.name, csv: await file.text() }
  const worker = new Worker(new URL('./check-worker.ts', import.meta.url), { type: 'module' })
  worker.onmessage = ({ data }: MessageEvent<OpenedReadings>) => {
    worker.terminate()
    readingsNow.set(data)
  }
  worker.onerror = (event) => {
    worker.terminate()
    throw new Error(`the calculation stopped: ${event.message}`)
  }
  worker.postMessage(asked)
}
