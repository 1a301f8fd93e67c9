import { useId, useMemo, useState } from 'react'
import { costMoved, countsMoved, type Design, readDesign } from '../../engine/index.ts'
import { costMovedSentence, countsSentence, USUAL_BATCHES } from '../../report/index.ts'
import { useRevisionBook } from '../revisions/revision-book.ts'
import { useRevision } from '../revisions/use-revision.ts'
import { isKeptHere, type OpenDesign } from '../state/open-design.ts'

/** How many pieces a finger has more or fewer than in a revision that was kept, and what a set costs more or less. */
export function AgainstRevision({ open, design }: { readonly open: OpenDesign; readonly design: Design }) {
  const { revisions = [] } = useRevisionBook(isKeptHere(open) ? open.name : undefined)
  const [chosen, setChosen] = useState<number | undefined>()
  const { revision, fault } = useRevision(open.name, chosen)
  const said = useMemo(() => (revision === undefined ? undefined : sayMoved(revision.text, design)), [revision, design])
  const id = useId()
  if (revisions.length === 0) return null
  return (
    <div className="screen-only">
      <p>
        <label htmlFor={id}>Against</label>{' '}
        <select
          id={id}
          value={chosen ?? ''}
          onChange={({ target }) => setChosen(revisions.find(({ number }) => String(number) === target.value)?.number)}
        >
          <option value="">no revision</option>
          {revisions.map(({ number }) => (
            <option key={number} value={number}>
              revision {number}
            </option>
          ))}
        </select>
      </p>
      <p role="status">{chosen === undefined ? null : (fault ?? said)}</p>
    </div>
  )
}

function sayMoved(text: string, design: Design): string {
  const { value, problems = [] } = readDesign(text, design.name)
  if (value !== undefined) {
    return `${countsSentence(countsMoved(value, design))} ${costMovedSentence(costMoved(value, design, USUAL_BATCHES))}`
  }
  return `The revision is refused by the engine of today (${problems.length === 1 ? 'one problem' : `${problems.length} problems`}).`
}
