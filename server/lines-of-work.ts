/** Long work that is answered line by line, one JSON document a line: how far it is, and at the end what came of it. */

/** Type of such an answer, by which it is asked for. */
export const LINES_TYPE = 'application/x-ndjson'

/**
 * Answers with the lines that the work tells and, at last, with what it returns. Whoever stops reading stops the work.
 *
 * @param work gives up with an error once its signal is aborted; any other error of it breaks the answer off
 */
export function linesOfWork(work: (tell: (line: object) => void, signal: AbortSignal) => Promise<object>): Response {
  const stop = new AbortController()
  const letters = new TextEncoder()
  const body = new ReadableStream<Uint8Array>({
    start: async (answer) => {
      const tell = (line: object): void => {
        if (!stop.signal.aborted) answer.enqueue(letters.encode(`${JSON.stringify(line)}\n`))
      }
      try {
        tell(await work(tell, stop.signal))
        if (!stop.signal.aborted) answer.close()
      } catch (error) {
        if (!stop.signal.aborted) answer.error(error)
      }
    },
    cancel: () => stop.abort(),
  })
  return new Response(body, { headers: { 'Content-Type': LINES_TYPE } })
}
