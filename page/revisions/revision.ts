/** Revisions as the server tells of them. A revision never changes: one that was fetched is not asked for again. */
import type { Problem } from '../../engine/index.ts'
import type { FigureEntry, FindingEntry } from '../../report/index.ts'
import { reasonOf } from '../state/server-words.ts'

/** A revision in the list: when it was kept, who said so and why, and what the engine of that day found. */
export interface RevisionEntry {
  readonly number: number
  /** ISO 8601 in UTC. */
  readonly saved: string
  readonly who: string
  readonly why: string
  readonly engine: string
  readonly findings: Readonly<Record<FindingEntry['verdict'], number>>
  /** How many problems showed when the finger was moved. */
  readonly problems: number
}

/** A revision with its text and what was found when it was kept. */
export interface Revision extends Omit<RevisionEntry, 'findings' | 'problems'> {
  readonly text: string
  readonly figures: Readonly<Record<string, FigureEntry>>
  readonly findings: readonly FindingEntry[]
  readonly problems: readonly Problem[]
}

/** Of which design, and which. */
export interface RevisionName {
  readonly name: string
  readonly number: number
}

const fetched = new Map<string, Promise<Revision>>()

/** Every revision of a design, newest first. */
export async function fetchRevisions(name: string): Promise<readonly RevisionEntry[]> {
  const response = await fetch(addressOf(name))
  if (!response.ok) throw new Error(await reasonOf(response))
  const { revisions } = (await response.json()) as { readonly revisions: readonly RevisionEntry[] }
  return [...revisions].sort((one, other) => other.number - one.number)
}

/** One revision. What could not be fetched is asked for again the next time. */
export function fetchRevision({ name, number }: RevisionName): Promise<Revision> {
  const address = `${addressOf(name)}/${number}`
  const known = fetched.get(address)
  if (known !== undefined) return known
  const asked = askFor(address)
  fetched.set(address, asked)
  asked.catch(() => fetched.delete(address))
  return asked
}

/** Address of a design's revisions at the server. */
export function addressOf(name: string): string {
  return `/api/designs/${encodeURIComponent(name)}/revisions`
}

async function askFor(address: string): Promise<Revision> {
  const response = await fetch(address)
  if (!response.ok) throw new Error(await reasonOf(response))
  return (await response.json()) as Revision
}
