/** TEST SUPPORT. What a page does: it saves one step after another, and knows which saves were acknowledged. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { askJson, type JsonAnswer } from '../server/test-support/asked-json.ts'

const heron = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
/** Inside of the design's note, where any words may stand. */
const PLACE = heron.indexOf('"note": "') + '"note": "'.length

interface Work {
  readonly version: number
  readonly steps: readonly { readonly said: string }[]
}

/** Revisions are kept after every so many steps. */
const STEPS_A_REVISION = 10

/** Saves to one server after another, and everything that was acknowledged so far. */
export class KeptWork {
  readonly steps: string[] = []
  readonly revisions: { readonly number: number; readonly why: string }[] = []
  #version = 0
  #count = 0

  /** Sends one save: a step of the draft, or a revision. The save counts when its answer has come. */
  async save(address: string): Promise<JsonAnswer> {
    const words = `save ${this.#count}`
    if (this.#count % STEPS_A_REVISION === STEPS_A_REVISION - 1) {
      const body = { version: this.#version, who: 'K1', why: words }
      const answer = await askJson(address, ['POST', '/api/designs/heron/revisions', body])
      if (answer.status === 201) this.revisions.push({ number: Number(answer.json.number), why: words })
      return this.#counted(answer, answer.status === 201)
    }
    const step = { splice: { at: PLACE, removed: '', inserted: '.' }, said: words }
    const body = { version: this.#version, keep: this.steps.length, steps: [step], position: this.steps.length + 1 }
    const answer = await askJson(address, ['PUT', '/api/designs/heron/work', body])
    if (answer.status === 200) this.#take({ version: Number(answer.json.version), steps: [...this.steps, words] })
    return this.#counted(answer, answer.status === 200)
  }

  /** Looks what a server has, as a page does that was loaded again: a save whose answer never came may be there or not. */
  async reload(address: string): Promise<readonly string[]> {
    const work = (await askJson(address, ['GET', '/api/designs/heron/work'])).json as unknown as Work
    this.#take({ version: work.version, steps: work.steps.map(({ said }) => said) })
    return this.steps
  }

  #take({ version, steps }: { readonly version: number; readonly steps: readonly string[] }): void {
    this.#version = version
    this.steps.splice(0, this.steps.length, ...steps)
  }

  #counted(answer: JsonAnswer, isKept: boolean): JsonAnswer {
    if (isKept) this.#count++
    return answer
  }
}
