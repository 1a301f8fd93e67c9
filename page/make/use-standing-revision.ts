import { useRevisionBook } from '../revisions/revision-book.ts'
import { useRevision } from '../revisions/use-revision.ts'
import { isKeptHere, type OpenDesign } from '../state/open-design.ts'

/** What stands in the title blocks: the newest revision where the text is that of it, else after which one it was changed; absent where none is kept. */
export function useStandingRevision(open: OpenDesign, text: string): string | undefined {
  const newest = useRevisionBook(isKeptHere(open) ? open.name : undefined).revisions?.[0]
  const { revision } = useRevision(open.name, newest?.number)
  if (newest === undefined || revision === undefined) return undefined
  return revision.text === text ? String(newest.number) : `${newest.number}, changed`
}
