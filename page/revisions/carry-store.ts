/** The whole store as one file: fetched from the server, and brought back to one. */
import { cameAlong } from '../../report/index.ts'
import { reasonOf } from '../state/server-words.ts'

/** The media type that the server asks for. */
const STORE_FILE = 'application/vnd.sqlite3'

/** What came of one design of a store that was brought in. */
export interface BroughtIn {
  readonly name: string
  /** `there`: nothing new in it. `further`: its later revisions or steps were added. `new`: came in as `as`. */
  readonly came: 'there' | 'further' | 'new'
  readonly as: string
  readonly revisions: number
  /** Lots and entries of the bench book that came with it. */
  readonly lots?: number
  readonly entries?: number
}

/** The store as a file. */
export async function fetchStore(): Promise<Blob> {
  const response = await fetch('/api/store')
  if (!response.ok) throw new Error(await reasonOf(response))
  return response.blob()
}

/** Brings a store back; nothing is overwritten. */
export async function bringInStore(file: Blob): Promise<readonly BroughtIn[]> {
  const response = await fetch('/api/store', { method: 'POST', headers: { 'Content-Type': STORE_FILE }, body: file })
  if (!response.ok) throw new Error(await reasonOf(response))
  const { designs } = (await response.json()) as { readonly designs: readonly BroughtIn[] }
  return designs
}

/** What came of a design, in a sentence. */
export function broughtInWords({ name, came, as, ...more }: BroughtIn): string {
  const along = cameAlong(more)
  if (came === 'there') return `${as} was here already, with everything that the file has of ${as === name ? 'it' : name}.`
  if (came === 'further') return `${name} was here and goes on: ${along === '' ? 'later work on it' : along} came to it.`
  const words = along === '' ? 'no revision' : along
  if (as === name) return `${name} came in with ${words}.`
  return `${name} came in as ${as} with ${words}: another design of that name was here.`
}
