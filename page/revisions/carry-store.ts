/** The whole store as one file: fetched from the server, and brought back to one. */
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
  /** Lots that stay behind in the file. */
  readonly lots?: number
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

/** What came of a design, in sentences. */
export function broughtInWords({ lots = 0, ...design }: BroughtIn): string {
  const came = cameWords(design)
  return lots === 0
    ? came
    : `${came} ${lots === 1 ? 'Its lot' : `Its ${lots} lots`} with all readings stay in the file: lots are not brought in.`
}

function cameWords({ name, came, as, revisions }: BroughtIn): string {
  const count = revisions === 0 ? 'no revision' : revisions === 1 ? 'one revision' : `${revisions} revisions`
  if (came === 'there') return `${name} was here already, with everything that the file has of it.`
  if (came === 'further') return `${name} was here and goes on: ${revisions === 0 ? 'later work on it' : count} came to it.`
  if (as === name) return `${name} came in with ${count}.`
  return `${name} came in as ${as} with ${count}: another design of that name was here.`
}
