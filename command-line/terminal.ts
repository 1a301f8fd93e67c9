/** What the command line needs of the world, so that tests can stand in for a terminal with plain values. */
export interface Terminal {
  readonly write: (text: string) => void
  readonly writeError: (text: string) => void
  readonly input: () => AsyncIterable<Uint8Array>
  /** Asks for a line that is not shown; undefined when the reader ended it. Left out where nobody types. */
  readonly askHidden?: (question: string) => Promise<string | undefined>
  /** Shows how far long work is, over what was shown before; an empty text takes it away. Left out where nobody looks on. */
  readonly tellProgress?: (text: string) => void
  /** The program's own file, which workers run; left out where work stays in one thread. */
  readonly workerFile?: URL
  /** Whether marks and headings may be coloured. */
  readonly colour: boolean
  /** Folder of the installed program: holds `designs/` and `build/page/`. */
  readonly home: string
  readonly environment: Readonly<Record<string, string | undefined>>
  /** The clock that dates what is saved. */
  readonly now: () => Date
  /** Resolves when the user wants a server to end. */
  readonly stopped: () => Promise<void>
}

/** Wrong use of the command, or a file that cannot be opened or written; the message says which and why. Ends with status 64. */
export class WrongUse extends Error {}
