import { createInterface } from 'node:readline'
import { type Readable, Writable } from 'node:stream'

/** Where a question is put and answered. */
export interface Keyboard {
  readonly input: Readable
  readonly output: Writable
}

/**
 * Asks for a line that is not shown while it is typed; deleting and the like work as in any line.
 *
 * @returns what was typed; undefined when the reader ended it with Ctrl-C or Ctrl-D
 */
export function askHidden(question: string, { input, output }: Keyboard): Promise<string | undefined> {
  const nowhere = new Writable({ write: (_echo, _encoding, done) => done() })
  const line = createInterface({ input, output: nowhere, terminal: true, historySize: 0 })
  output.write(question)
  return new Promise((resolve) => {
    line.once('line', (typed) => {
      resolve(typed)
      line.close()
    })
    line.once('SIGINT', () => line.close())
    line.once('close', () => {
      output.write('\n')
      resolve(undefined)
    })
  })
}
