import type { DrawingsAsked } from '../../report/index.ts'
import { reasonOf } from '../state/server-words.ts'

/** What is being made, how much of how much is done, and how long it will still take once that is known. */
export interface PackStep {
  readonly doing: string
  readonly done: number
  readonly of: number
  readonly remaining_s?: number
}

interface Wanted {
  readonly text: string
  readonly name: string
  readonly asked: DrawingsAsked
  readonly onStep: (step: PackStep) => void
  /** Stops the work at the server too. */
  readonly signal: AbortSignal
}

interface Pack {
  readonly zip: Blob
  readonly left: readonly string[]
}

/**
 * Asks the server for what goes to the shop, and tells its steps as they begin.
 *
 * @returns the zip, and what is not in it and why
 * @throws Error in words when there is none, and when it was stopped
 */
export async function fetchPack({ text, name, asked, onStep, signal }: Wanted): Promise<Pack> {
  const { paper, projection: views, revision } = asked
  const words = new URLSearchParams({ name, paper, views, ...(revision !== undefined && { revision }) })
  const headers = { 'Content-Type': 'application/json', Accept: 'application/x-ndjson' }
  const response = await fetch(`/api/shop-pack?${words}`, { method: 'POST', headers, body: text, signal })
  if (!response.ok || response.body === null) throw new Error(await reasonOf(response))
  for await (const line of linesOf(response.body)) {
    const told = JSON.parse(line) as PackStep | { readonly zip: string; readonly left: readonly string[] }
    if ('zip' in told) return { zip: new Blob([bytesOf(told.zip)], { type: 'application/zip' }), left: told.left }
    onStep(told)
  }
  throw new Error('the server broke off before the pack was done')
}

async function* linesOf(body: ReadableStream<Uint8Array<ArrayBuffer>>): AsyncGenerator<string> {
  const reader = body.pipeThrough(new TextDecoderStream()).getReader()
  let rest = ''
  for (let read = await reader.read(); !read.done; read = await reader.read()) {
    const lines = (rest + read.value).split('\n')
    rest = lines.pop() ?? ''
    yield* lines
  }
}

function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
}
