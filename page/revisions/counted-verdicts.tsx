import { marks } from '../../report/index.ts'
import { DrawnMark } from '../parts/mark.tsx'
import type { RevisionEntry } from './revision.ts'

/** What falls short is read first. */
const IN_ORDER = ['short', 'undecided', 'met'] as const

/** How many requirements a revision met, missed or left open, each by its mark and word. */
export function CountedVerdicts({ findings, problems }: Pick<RevisionEntry, 'findings' | 'problems'>) {
  const asked = IN_ORDER.filter((verdict) => findings[verdict] > 0)
  const troubles = problems === 1 ? 'one problem when it moves' : `${problems} problems when it moves`
  return (
    <>
      {asked.length > 0 ? (
        asked.map((verdict) => (
          <span key={verdict} className={`verdict verdict-${verdict}`}>
            <DrawnMark answer={verdict} />
            {findings[verdict]} {marks[verdict].word}
          </span>
        ))
      ) : (
        <span className="verdict">
          <DrawnMark answer="notAsked" />
          {marks.notAsked.word}
        </span>
      )}
      {problems === 0 ? null : <span>{troubles}</span>}
    </>
  )
}
