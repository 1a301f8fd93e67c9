import { fetchRevision, fetchRevisions } from '../revisions/revision.ts'
import { isKeptHere, type OpenDesign } from '../state/open-design.ts'

/** What stands at the foot of a document: the revision that a text is, or the file that it is not kept of. @throws Error in words */
export async function shownRevision(open: OpenDesign, text: string): Promise<string> {
  const { name } = open
  const [newest] = isKeptHere(open) ? await fetchRevisions(name) : []
  if (newest === undefined) return `${name}.json`
  const { number } = newest
  const kept = await fetchRevision({ name, number })
  return kept.text === text ? `${name}, revision ${number}` : `${name}, changed since revision ${number}`
}
