/** Loads, changes and evaluates the design on the page, and tells whoever listens. */
import { changeDocument, type Evaluation, type Problem } from '../../engine/index.ts'
import { startEvaluator } from './evaluator.ts'
import { begun, type Deed, type History, standing, taken } from './history.ts'
import { fetchNames, fetchText, fetchWork, type Keeping, type Work, WorkKeeper } from './kept-work.ts'
import type { Answer, Request } from './messages.ts'
import { NextFrame } from './next-frame.ts'
import type { DesignState, Edit, OpenDesign } from './open-design.ts'
import { picturedNow } from './picture.ts'
import { wordsOf } from './server-words.ts'
import { sharedState } from './shared-state.ts'

const FROM_DISK: Keeping = { kind: 'from disk' }

/** A design that is being opened, until it is known whether it can be read. */
interface Opening {
  readonly open: OpenDesign
  /** Absent for a file from disk, which the server does not keep. */
  readonly work?: Work
}

/** The one design of the page. */
export class DesignStore {
  readonly shared = sharedState<DesignState>({ names: [] })
  #opening: Opening | undefined
  #openings_count = 0
  /** The gesture that goes on, and the history at its begin: what it does is one step from there. */
  #gesture: { readonly of: object; readonly from: History } | undefined
  #before: Evaluation | undefined
  #keeper: WorkKeeper | undefined
  readonly #nextFrame = new NextFrame()
  readonly #evaluator = startEvaluator((answer, request) => this.#hear(answer, request))

  /** Asks the server which designs it has and opens the first. */
  async start(): Promise<void> {
    const names = await this.list()
    const [first] = names
    if (first !== undefined) await this.openNamed(first)
  }

  /** Goes on after the server was out of reach: begins where nothing is open, else keeps what waits. */
  async comeBack(): Promise<void> {
    const { unreachable: _, ...rest } = this.shared.now()
    this.shared.set(rest)
    if (rest.open === undefined) await this.start()
    else this.#keeper?.again()
  }

  /** Asks the server which designs it has: at the start, and when something was brought in. */
  async list(): Promise<readonly string[]> {
    const names = await this.#reached(fetchNames)
    if (names !== undefined) this.shared.set({ ...this.shared.now(), names })
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
      this.shared.set({ ...this.shared.now(), refused: { name: file.name, problems: [problem], isEdit: false } })
    }
  }

  /** Changes values of the design that is open. */
  edit({ changes, said, gesture }: Edit): void {
    const from = this.#from(gesture)
    if (from !== undefined) this.put({ text: changeDocument(from.text, changes), said }, gesture)
  }

  /** Puts another text in place of the one that is open: a step, or the one step of its gesture. */
  put(deed: Deed, gesture?: object): void {
    const { open } = this.shared.now()
    const from = this.#from(gesture)
    if (open === undefined || from === undefined) return
    const goesOn = gesture !== undefined && this.#gesture?.of === gesture
    this.#gesture = gesture && { of: gesture, from }
    this.#follow({ ...open, history: taken(from, deed) }, goesOn)
  }

  /** Goes back or forth to where so many steps stand. */
  stand(position: number): void {
    const { open } = this.shared.now()
    this.#gesture = undefined
    if (open !== undefined) this.#follow({ ...open, history: standing(open.history, position) })
  }

  /**
   * Ends that another page saved work on this design. Either this page's text stands, as one step more upon the other's work; or the
   * other's does, and this page's text waits to be done again.
   */
  settle(whose: 'mine' | 'theirs'): void {
    const { open } = this.shared.now()
    if (open?.keeping.kind !== 'other page') return
    const { theirs } = open.keeping
    const both = taken(theirs.history, { text: open.history.text, said: 'as it stood on the other page' })
    const history = whose === 'mine' ? both : standing(both, theirs.history.position)
    this.#gesture = undefined
    this.#keepFrom(open.name, theirs)
    this.#follow({ ...open, keeping: { kind: 'waiting' }, history })
  }

  /** Puts the text of the file that the server was given in place of the work on it: one step more, nothing is lost. */
  async goOnFromFile(): Promise<void> {
    const { open } = this.shared.now()
    const text = open && (await this.#reached(() => fetchText(open.name)))
    if (text === undefined || this.shared.now().open?.opening !== open?.opening) return
    this.put({ text, said: 'the file as it stands on disk' })
    const { open: now } = this.shared.now()
    if (now !== undefined) this.shared.set({ ...this.shared.now(), open: { ...now, givenChanged: false } })
  }

  /** Puts the list of problems away. */
  dismissRefused(): void {
    const { refused: _, ...rest } = this.shared.now()
    this.shared.set(rest)
  }

  #newlyOpened(name: string): Pick<OpenDesign, 'name' | 'opening'> {
    this.#openings_count += 1
    return { name, opening: this.#openings_count }
  }

  #begin(opening: Opening): void {
    this.#opening = opening
    const { name, opening: number, history } = opening.open
    this.#ask({ name, opening: number, history })
  }

  #keepFrom(name: string, work: Work | undefined): void {
    this.#keeper?.close()
    this.#keeper = work && new WorkKeeper(name, work, (keeping) => this.#heardOf(keeping))
  }

  #heardOf(keeping: Keeping): void {
    const { open } = this.shared.now()
    if (open !== undefined) this.shared.set({ ...this.shared.now(), open: { ...open, keeping } })
  }

  /** The history that the next deed starts from. */
  #from(gesture: object | undefined): History | undefined {
    return gesture !== undefined && this.#gesture?.of === gesture ? this.#gesture.from : this.shared.now().open?.history
  }

  /** Shows another place of a history, has it kept and evaluated. */
  #follow(open: OpenDesign, goesOn = false): void {
    const { open: left, shown } = this.shared.now()
    if (open.history === left?.history) return
    if (!goesOn) this.#before = shown?.evaluation
    const next = { ...this.shared.now(), open }
    // While a gesture goes on its answer is near, and the page is shown once with both.
    if (goesOn) this.shared.hold(next)
    else this.shared.set(next)
    this.#keeper?.keep(open.history)
    this.#ask(open)
  }

  #ask({ name, opening, history }: Pick<OpenDesign, 'name' | 'opening' | 'history'>): void {
    this.#evaluator.ask({ name, opening, text: history.text, pictured: picturedNow.now() })
  }

  /**
   * While a gesture goes on an answer is shown with the next frame, after the hand's next move was asked about: the page then draws while
   * that is worked out.
   */
  #hear(answer: Answer, request: Request): void {
    this.#nextFrame.forget()
    if (this.#gesture === undefined) this.#take(answer, request)
    else this.#nextFrame.do(() => this.#take(answer, request))
  }

  #take(answer: Answer, request: Request): void {
    if (this.#opening?.open.opening === request.opening) this.#open(this.#opening, answer)
    const { open, drawn: before } = this.shared.now()
    // An answer about a design that was left in the meantime comes too late.
    if (open?.opening !== request.opening) return
    if (answer.problems !== undefined) {
      // A text that was refused and has changed since needs no words.
      if (request.text === open.history.text) this.#refuse(request.name, answer.problems)
      return
    }
    const { refused: _, ...rest } = this.shared.now()
    const { evaluation, picture } = answer
    const drawn = evaluation.travel === undefined ? before : { evaluation, ...(picture && { picture }) }
    const { name, opening, text } = request
    const shown = { name, opening, text, evaluation, ...(this.#before === undefined ? {} : { before: this.#before }) }
    this.shared.set({ ...rest, ...(drawn === undefined ? {} : { drawn }), shown })
  }

  /** Takes up a design that can be read, or whose steps lead back to one that can. */
  #open({ open, work }: Opening, answer: Answer): void {
    this.#opening = undefined
    if (answer.problems !== undefined && open.history.position === 0) {
      this.shared.set({ ...this.shared.now(), refused: { name: open.name, problems: answer.problems, isEdit: false } })
      return
    }
    this.#gesture = undefined
    this.#before = undefined
    this.#keepFrom(open.name, work)
    this.shared.set({ names: this.shared.now().names, open })
  }

  #refuse(name: string, problems: readonly Problem[]): void {
    const isEdit = (this.shared.now().open?.history.position ?? 0) > 0
    this.shared.set({ ...this.shared.now(), refused: { name, problems, isEdit } })
  }

  async #reached<T>(ask: () => Promise<T>): Promise<T | undefined> {
    try {
      return await ask()
    } catch (reason) {
      this.shared.set({ ...this.shared.now(), unreachable: wordsOf(reason) })
      return undefined
    }
  }
}
