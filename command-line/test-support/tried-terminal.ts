import { join } from 'node:path'
import { runCommandLine } from '../program.ts'
import type { Terminal } from '../terminal.ts'
import { testFolder } from './example.ts'

/** Store of every command of one test file that names no other: never the one of the person who runs the tests. */
const store = testFolder()

/** What a command left behind: its exit status and everything that it printed. */
export interface Tried {
  readonly status: number
  readonly output: string
  readonly errors: string
}

/** What the terminal holds ready besides the words of the command. */
export interface Around {
  readonly input?: string | Uint8Array
  /** What is typed at each question that is not shown, undefined where the reader ends it; left out, nobody types. */
  readonly typed?: readonly (string | undefined)[]
  readonly environment?: Readonly<Record<string, string>>
  readonly colour?: boolean
  /** The installed program's folder; this checkout when it is left out. */
  readonly home?: string
  /** Called with everything printed so far when a server waits to be ended; the server ends when it is done. */
  readonly whileServing?: (output: string) => Promise<void>
}

/** Runs one command in this process, in a terminal that keeps what is printed. */
export async function tryCommand(words: readonly string[], around: Around = {}): Promise<Tried> {
  let output = ''
  let errors = ''
  const answers = [...(around.typed ?? [])]
  const terminal: Terminal = {
    ...(around.typed === undefined ? {} : { askHidden: async () => answers.shift() }),
    write: (text) => {
      output += text
    },
    writeError: (text) => {
      errors += text
    },
    input: async function* () {
      yield Buffer.from(around.input ?? '')
    },
    colour: around.colour ?? false,
    home: around.home ?? join(import.meta.dirname, '../..'),
    environment: { FINGERWRIGHT_STORE: store, ...around.environment },
    now: () => new Date('2031-04-05T06:07:08.009Z'),
    stopped: async () => around.whileServing?.(output),
  }
  const status = await runCommandLine(words, terminal)
  return { status, output, errors }
}
