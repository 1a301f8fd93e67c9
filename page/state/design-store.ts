/** The design on the page: where it came from, its text, its evaluation, and what was refused. */
import type { Evaluation, Problem } from '../../engine/index.ts'
import { startEvaluator } from './evaluator.ts'
import type { Answer, Request } from './messages.ts'

/** The example that the documentation walks through; opened first where the server was given it. */
const FIRST_TO_READ = 'heron'

/** A file that could not be shown; the design before it stays. */
export interface Refused {
  readonly name: string
  readonly problems: readonly Problem[]
}

/** What the page shows of a design. */
export interface Shown {
  readonly name: string
  /** As it is in the file. */
  readonly fileText: string
  /** As it stands after pins were dragged. */
  readonly text: string
  readonly evaluation: Evaluation
}

/** Everything that is known at one time. */
export interface DesignState {
  /** Designs that the server was given. */
  readonly names: readonly string[]
  readonly shown?: Shown
  /** The last evaluation that could be moved: it is drawn while an edit cannot close. */
  readonly drawn?: Evaluation
  readonly refused?: Refused
  readonly unreachable?: string
}

/** Loads, changes and evaluates designs, and tells whoever listens. */
export class DesignStore {
  #state: DesignState = { names: [] }
  #asked: Omit<Request, 'id'> | undefined
  readonly #listeners = new Set<() => void>()
  readonly #evaluator = startEvaluator((answer, request) => this.#take(answer, request))

  readonly state = (): DesignState => this.#state

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** Asks the server which designs it was given and opens the first. */
  async start(): Promise<void> {
    const text = await this.#fetched('/api/designs')
    if (text === undefined) return
    const { designs } = JSON.parse(text) as { designs: readonly { name: string }[] }
    this.#set({ ...this.#state, names: designs.map(({ name }) => name) })
    const first = designs.find(({ name }) => name === FIRST_TO_READ) ?? designs[0]
    if (first !== undefined) await this.openNamed(first.name)
  }

  /** Opens a design that the server was given. */
  async openNamed(name: string): Promise<void> {
    const text = await this.#fetched(`/api/designs/${encodeURIComponent(name)}`)
    if (text !== undefined) this.#ask({ name, fileText: text, text })
  }

  /** Opens a design file from disk. */
  async openFile(file: File): Promise<void> {
    try {
      const text = await file.text()
      this.#ask({ name: file.name.replace(/\.json$/i, ''), fileText: text, text })
    } catch (reason) {
      const problem = {
        code: 'file cannot be read',
        place: '',
        found: String(reason),
        needed: 'a file that this browser may read',
      }
      this.#set({ ...this.#state, refused: { name: file.name, problems: [problem] } })
    }
  }

  /** Evaluates a changed text of the design that is open. */
  change(text: string): void {
    const { shown } = this.#state
    if (shown !== undefined) this.#ask({ name: shown.name, fileText: shown.fileText, text })
  }

  /** Puts the list of problems away. */
  dismissRefused(): void {
    const { refused: _, ...rest } = this.#state
    this.#set(rest)
  }

  #ask(question: Omit<Request, 'id'>): void {
    this.#asked = question
    this.#evaluator.ask(question)
  }

  #take(answer: Answer, { name, fileText, text }: Request): void {
    // An answer about a file that was left in the meantime comes too late.
    if (this.#asked?.fileText !== fileText) return
    if (answer.problems !== undefined) {
      this.#set({ ...this.#state, refused: { name, problems: answer.problems } })
      return
    }
    const { evaluation } = answer
    const { refused: _, drawn: before, ...rest } = this.#state
    // Only an edit of the same file may keep the drawing of its last closing posture.
    const kept = this.#state.shown?.fileText === fileText ? before : undefined
    const drawn = evaluation.travel === undefined ? kept : evaluation
    this.#set({ ...rest, ...(drawn === undefined ? {} : { drawn }), shown: { name, fileText, text, evaluation } })
  }

  async #fetched(address: string): Promise<string | undefined> {
    try {
      const response = await fetch(address)
      if (!response.ok) throw new Error(`${address} answers ${response.status}`)
      return await response.text()
    } catch (reason) {
      this.#set({ ...this.#state, unreachable: String(reason) })
      return undefined
    }
  }

  #set(state: DesignState): void {
    this.#state = state
    for (const listener of this.#listeners) listener()
  }
}
