/** Loads, changes and evaluates the design on the page, and tells whoever listens. */
import { changeDocument, type Evaluation, type Problem } from '../../engine/index.ts'
import { startEvaluator } from './evaluator.ts'
import { begun, type Deed, type History, standing, taken } from './history.ts'
import { fetchText, fetchWork, type Keeping, type Work, WorkKeeper } from './kept-work.ts'
import type { Answer, Request } from './messages.ts'
import type { DesignState, Edit, OpenDesign } from './open-design.ts'
import { wordsOf } from './server-words.ts'

/** The example that the documentation walks through; opened first where the server was given it. */
const FIRST_TO_READ = 'heron'

const FROM_DISK: Keeping = { kind: 'from disk' }

/** A design that is being opened, until it is known whether it can be read. */
interface Opening {
  readonly open: OpenDesign
  /** Absent for a file from disk, which the server does not keep. */
  readonly work?: Work
}

/** The one design of the page. */
export class DesignStore {
  #state: DesignState = { names: [] }
  #opening: Opening | undefined
  #openings_count = 0
  /** The gesture that goes on, and the history at its begin: what it does is one step from there. */
  #gesture: { readonly of: object; readonly from: History } | undefined
  #before: Evaluation | undefined
  #keeper: WorkKeeper | undefined
  readonly #listeners = new Set<() => void>()
  readonly #evaluator = startEvaluator((answer, request) => this.#take(answer, request))

  readonly state = (): DesignState => this.#state

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** Asks the server which designs it has and opens the first. */
  async start(): Promise<void> {
    const names = await this.list()
    const first = names.find((name) => name === FIRST_TO_READ) ?? names[0]
    if (first !== undefined) await this.openNamed(first)
  }

  /** Asks the server which designs it has: at the start, and when something was brought in. */
  async list(): Promise<readonly string[]> {
    const names = await this.#reached(async () => {
      const response = await fetch('/api/designs')
      if (!response.ok) throw new Error(`the server answers ${response.status}`)
      const { designs } = (await response.json()) as { designs: readonly { name: string }[] }
      return designs.map(({ name }) => name)
    })
    if (names !== undefined) this.#set({ ...this.#state, names })
    return names ?? []
  }

  /** Opens a design that the server has, with everything that was done to it. */
  async openNamed(name: string): Promise<void> {
    try {
      const work = await fetchWork(name)
      const { history, givenChanged } = work
      this.#begin({ open: { ...this.#newlyOpened(name), history, givenChanged, keeping: { kind: 'not begun' } }, work })
    } catch (reason) {
      // What cannot be kept can be looked at and tried all the same; the page says that it is not kept.
      const text = await this.#reached(() => fetchText(name))
      if (text === undefined) return
      const keeping: Keeping = { kind: 'not kept', why: wordsOf(reason) }
      this.#begin({ open: { ...this.#newlyOpened(name), history: begun(text), givenChanged: false, keeping } })
    }
  }

  /** Opens a design file from disk. */
  async openFile(file: File): Promise<void> {
    try {
      const history = begun(await file.text())
      const name = file.name.replace(/\.json$/i, '')
      this.#begin({ open: { ...this.#newlyOpened(name), history, givenChanged: false, keeping: FROM_DISK } })
    } catch (reason) {
      const needed = 'a file that this browser may read'
      const problem = { code: 'file cannot be read', place: '', found: String(reason), needed }
      this.#set({ ...this.#state, refused: { name: file.name, problems: [problem], isEdit: false } })
    }
  }

  /** Changes values of the design that is open. */
  edit({ changes, said, gesture }: Edit): void {
    const from = this.#from(gesture)
    if (from !== undefined) this.put({ text: changeDocument(from.text, changes), said }, gesture)
  }

  /** Puts another text in place of the one that is open: a step, or the one step of its gesture. */
  put(deed: Deed, gesture?: object): void {
    const { open } = this.#state
    const from = this.#from(gesture)
    if (open === undefined || from === undefined) return
    const goesOn = gesture !== undefined && this.#gesture?.of === gesture
    this.#gesture = gesture && { of: gesture, from }
    this.#follow({ ...open, history: taken(from, deed) }, goesOn)
  }

  /** Goes back or forth to where so many steps stand. */
  stand(position: number): void {
    const { open } = this.#state
    this.#gesture = undefined
    if (open !== undefined) this.#follow({ ...open, history: standing(open.history, position) })
  }

  /**
   * Ends that another page saved work on this design. Either this page's text stands, as one step more upon the other's work; or the
   * other's does, and this page's text waits to be done again.
   */
  settle(whose: 'mine' | 'theirs'): void {
    const { open } = this.#state
    if (open?.keeping.kind !== 'other page') return
    const { theirs } = open.keeping
    const both = taken(theirs.history, { text: open.history.text, said: 'as it stood on the other page' })
    const history = whose === 'mine' ? both : standing(both, theirs.history.position)
    this.#gesture = undefined
    this.#keepFrom(open.name, theirs)
    this.#follow({ ...open, keeping: { kind: 'waiting' }, history })
  }

  /** Puts the list of problems away. */
  dismissRefused(): void {
    const { refused: _, ...rest } = this.#state
    this.#set(rest)
  }

  #newlyOpened(name: string): Pick<OpenDesign, 'name' | 'opening'> {
    this.#openings_count += 1
    return { name, opening: this.#openings_count }
  }

  #begin(opening: Opening): void {
    this.#opening = opening
    const { name, opening: number, history } = opening.open
    this.#evaluator.ask({ name, opening: number, text: history.text })
  }

  #keepFrom(name: string, work: Work | undefined): void {
    this.#keeper?.close()
    this.#keeper = work && new WorkKeeper(name, work, (keeping) => this.#heardOf(keeping))
  }

  #heardOf(keeping: Keeping): void {
    const { open } = this.#state
    if (open !== undefined) this.#set({ ...this.#state, open: { ...open, keeping } })
  }

  /** The history that the next deed starts from. */
  #from(gesture: object | undefined): History | undefined {
    return gesture !== undefined && this.#gesture?.of === gesture ? this.#gesture.from : this.#state.open?.history
  }

  /** Shows another place of a history, has it kept and evaluated. */
  #follow(open: OpenDesign, goesOn = false): void {
    const { open: left, shown } = this.#state
    if (open.history === left?.history) return
    if (!goesOn) this.#before = shown?.evaluation
    this.#set({ ...this.#state, open })
    this.#keeper?.keep(open.history)
    this.#evaluator.ask({ name: open.name, opening: open.opening, text: open.history.text })
  }

  #take(answer: Answer, request: Request): void {
    if (this.#opening?.open.opening === request.opening) this.#open(this.#opening, answer)
    const { open, drawn: before } = this.#state
    // An answer about a design that was left in the meantime comes too late.
    if (open?.opening !== request.opening) return
    if (answer.problems !== undefined) {
      // A text that was refused and has changed since needs no words.
      if (request.text === open.history.text) this.#refuse(request.name, answer.problems)
      return
    }
    const { refused: _, ...rest } = this.#state
    const { evaluation } = answer
    const drawn = evaluation.travel === undefined ? before : evaluation
    const { name, opening, text } = request
    const shown = { name, opening, text, evaluation, ...(this.#before === undefined ? {} : { before: this.#before }) }
    this.#set({ ...rest, ...(drawn === undefined ? {} : { drawn }), shown })
  }

  /** Takes up a design that can be read, or whose steps lead back to one that can. */
  #open({ open, work }: Opening, answer: Answer): void {
    this.#opening = undefined
    if (answer.problems !== undefined && open.history.position === 0) {
      this.#set({ ...this.#state, refused: { name: open.name, problems: answer.problems, isEdit: false } })
      return
    }
    this.#gesture = undefined
    this.#before = undefined
    this.#keepFrom(open.name, work)
    this.#set({ names: this.#state.names, open })
  }

  #refuse(name: string, problems: readonly Problem[]): void {
    const isEdit = (this.#state.open?.history.position ?? 0) > 0
    this.#set({ ...this.#state, refused: { name, problems, isEdit } })
  }

  async #reached<T>(ask: () => Promise<T>): Promise<T | undefined> {
    try {
      return await ask()
    } catch (reason) {
      this.#set({ ...this.#state, unreachable: wordsOf(reason) })
      return undefined
    }
  }

  #set(state: DesignState): void {
    this.#state = state
    for (const listener of this.#listeners) listener()
  }
}
