/**
 * Keeps the work on one design at the server: every step, and how many of them stand. What was done is kept within a second; when
 * another page was faster nothing is overwritten, and whoever sits here is asked.
 */
import { type History, type Step, taken } from './history.ts'
import { leave, takeLeft } from './left-behind.ts'
import { reasonOf, wordsOf } from './server-words.ts'
import { noteStatus } from './signed-in.ts'

/** Work as the server has it. Its version grows with each save, so that an older page is noticed. */
export interface Work {
  readonly version: number
  readonly history: History
  /** The file that the server was given has changed since this work began. */
  readonly givenChanged: boolean
}

/** How the work stands with the server. */
export type Keeping =
  | { readonly kind: 'not begun' }
  | { readonly kind: 'from disk' }
  | { readonly kind: 'kept'; readonly at: Date }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'not kept'; readonly why: string }
  | { readonly kind: 'other page'; readonly theirs: Work }

/** Time in which further steps are gathered into one save: well below the second that is promised. */
const GATHER_MS = 300
/** A server that does not answer is asked again after this time. */
const AGAIN_MS = 4000
/** A save on the way out arrives within a moment or not at all. */
const ARRIVAL_MS = 50
const ARRIVALS_ASKED = 12

interface WorkAnswer {
  readonly version: number
  /** As it stands after `position` steps. */
  readonly text: string
  readonly steps: readonly Step[]
  readonly position: number
  readonly givenChanged?: boolean
}

/** Names of the designs that the server has, those first that it was given. */
export async function fetchNames(): Promise<readonly string[]> {
  const response = await fetch('/api/designs')
  if (!response.ok) throw new Error(await reasonOf(response))
  const { designs } = (await response.json()) as { designs: readonly { name: string }[] }
  return designs.map(({ name }) => name)
}

/** The text of a design as it was given or saved last, where no work on it can be had. */
export async function fetchText(name: string): Promise<string> {
  const response = await fetch(`/api/designs/${encodeURIComponent(name)}`)
  if (!response.ok) throw new Error(await reasonOf(response))
  return response.text()
}

/**
 * The work on a design with all its steps, from its newest revision or the given file where nobody has begun. Work that this page was left
 * with a moment ago is waited for; where it never arrives it is one step more.
 */
export async function fetchWork(name: string): Promise<Work> {
  const left = takeLeft(name)
  let work = await askForWork(name)
  for (let asked = 1; left !== undefined && work.version <= left.version && asked < ARRIVALS_ASKED; asked++) {
    await new Promise((resolve) => setTimeout(resolve, ARRIVAL_MS))
    work = await askForWork(name)
  }
  if (left === undefined || work.version > left.version) return work
  return { ...work, history: taken(work.history, { text: left.text, said: 'as it stood when the page was left' }) }
}

async function askForWork(name: string): Promise<Work> {
  const response = await fetch(addressOf(name))
  if (!response.ok) throw new Error(await reasonOf(response))
  const { version, text, steps, position, givenChanged = false } = (await response.json()) as WorkAnswer
  return { version, history: { text, steps, position }, givenChanged }
}

/** Saves the work on one design; one save is under way at a time. */
export class WorkKeeper {
  readonly #name: string
  readonly #tell: (keeping: Keeping) => void
  #version: number
  #known: readonly Step[]
  #wanted: History
  #timer: ReturnType<typeof setTimeout> | undefined
  #isUnderWay = false
  #isClosed = false

  constructor(name: string, work: Work, tell: (keeping: Keeping) => void) {
    this.#name = name
    this.#version = work.version
    this.#known = work.history.steps
    this.#wanted = work.history
    this.#tell = tell
    addEventListener('pagehide', this.#leave)
  }

  /** Takes note of the history as it is now; it is saved a moment later. */
  keep(history: History): void {
    if (history === this.#wanted) return
    this.#wanted = history
    if (this.#timer !== undefined) return
    this.#tell({ kind: 'waiting' })
    this.#timer = setTimeout(() => this.#save(), GATHER_MS)
  }

  /** Tries what waits at once: what was in the way is gone. */
  again(): void {
    if (this.#timer !== undefined) void this.#save()
  }

  /** Saves what waits and saves nothing more. */
  close(): void {
    this.#leave()
    this.#isClosed = true
    removeEventListener('pagehide', this.#leave)
  }

  readonly #leave = (): void => {
    if (this.#timer === undefined) return
    leave({ name: this.#name, version: this.#version, text: this.#wanted.text })
    void this.#save({ keepalive: true })
  }

  async #save(options: RequestInit = {}): Promise<void> {
    clearTimeout(this.#timer)
    this.#timer = undefined
    if (this.#isUnderWay) {
      this.#timer = setTimeout(() => this.#save(), GATHER_MS)
      return
    }
    this.#isUnderWay = true
    const saved = this.#wanted
    const keeping = await this.#put(saved, options).catch((reason: unknown): Keeping => {
      return { kind: 'not kept', why: wordsOf(reason) }
    })
    this.#isUnderWay = false
    if (this.#isClosed) return
    if (keeping.kind === 'not kept') this.#timer ??= setTimeout(() => this.#save(), AGAIN_MS)
    if (this.#timer === undefined || keeping.kind !== 'kept') this.#tell(keeping)
  }

  async #put(history: History, options: RequestInit): Promise<Keeping> {
    const { steps, position } = history
    const differs = steps.findIndex((step, index) => step !== this.#known[index])
    const keep = differs < 0 ? steps.length : differs
    const body = JSON.stringify({ version: this.#version, keep, steps: steps.slice(keep), position })
    const headers = { 'Content-Type': 'application/json' }
    const response = await fetch(addressOf(this.#name), { method: 'PUT', headers, body, ...options })
    if (response.status === 409) return { kind: 'other page', theirs: await fetchWork(this.#name) }
    if (!response.ok) throw new Error(await reasonOf(response))
    const { version } = (await response.json()) as { version: number }
    noteStatus(response.status)
    this.#version = version
    this.#known = steps
    return { kind: 'kept', at: new Date() }
  }
}

function addressOf(name: string): string {
  return `/api/designs/${encodeURIComponent(name)}/work`
}
