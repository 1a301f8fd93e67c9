import { useMemo } from 'react'
import { type FigureMove, type Finding, whatMoved } from '../../engine/index.ts'
import { type ComparedFinger, movedSentence, neededWords, shownApart } from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { useUnits } from '../state/units.ts'
import { ComparedDrawing } from './compared-drawing.tsx'
import styles from './revisions.module.css'

/** What both sides come to by today's engine: what moved, in words and as a table, and the two drawings over each other. */
export function ComparedResults({ before, after }: { readonly before: ComparedFinger; readonly after: ComparedFinger }) {
  const units = useUnits()
  const moved = useMemo(() => whatMoved(before.evaluation, after.evaluation), [before.evaluation, after.evaluation])
  const isStill = moved.findings.length + moved.figures.length === 0
  return (
    <>
      <p className={styles.moved} data-testid="compared">
        {movedSentence(moved, units)} <span className="hint">Both by the engine of today.</span>
      </p>
      {isStill ? null : (
        <table className={`rows findings ${styles.compared}`}>
          <caption className="visually-hidden">Findings and figures that moved</caption>
          <thead>
            <tr>
              <th scope="col">What moved</th>
              <th scope="col">{before.words}</th>
              <th scope="col">{after.words}</th>
            </tr>
          </thead>
          <tbody>
            {moved.findings.map(({ requirement, figure, before: was, after: is }) => (
              <MoveRow key={requirement} {...{ figure, was, is }} words={[before.words, after.words]} />
            ))}
            {moved.figures.map((figure) => (
              <MoveRow key={figure.figure} figure={figure} words={[before.words, after.words]} />
            ))}
          </tbody>
        </table>
      )}
      <ComparedDrawing before={before} after={after} />
    </>
  )
}

interface MoveRowProps {
  readonly figure: FigureMove
  readonly was?: Finding | undefined
  readonly is?: Finding | undefined
  /** What the two sides are called. */
  readonly words: readonly [string, string]
}

/** One figure on both sides, with the requirement that watches it. */
function MoveRow({ figure, was, is, words }: MoveRowProps) {
  const shown = shownApart(figure, useUnits())
  return (
    <tr>
      <th scope="row">{figure.title}</th>
      <td data-label={words[0]}>
        {shown[0]} {was === undefined ? null : <Judged finding={was} />}
      </td>
      <td data-label={words[1]}>
        {shown[1]} {is === undefined ? null : <Judged finding={is} />}
      </td>
    </tr>
  )
}

function Judged({ finding }: { readonly finding: Finding }) {
  const units = useUnits()
  return (
    <>
      <MarkWithWord answer={finding.verdict} />
      <span className="reason">needed: {neededWords(finding, units)}</span>
    </>
  )
}
