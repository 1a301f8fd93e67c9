import type { FigureMove, Finding, WhatMoved } from '../../engine/index.ts'
import { type ComparedFingers, neededWords, shownApart } from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { useUnits } from '../state/units.ts'
import styles from './revisions.module.css'

/** What both sides come to by today's engine, as a table of the findings and figures that moved. */
export function ComparedResults({ before, after, moved }: ComparedFingers & { readonly moved: WhatMoved }) {
  if (moved.findings.length + moved.figures.length === 0) return null
  const words = [before.words, after.words] as const
  return (
    <table className={`rows findings ${styles.compared}`}>
      <caption>Findings and figures that moved</caption>
      <thead>
        <tr>
          <th scope="col">What moved</th>
          <th scope="col">{before.words}</th>
          <th scope="col">{after.words}</th>
        </tr>
      </thead>
      <tbody>
        {moved.findings.map(({ requirement, figure, before: was, after: is }) => (
          <MoveRow key={requirement} {...{ figure, was, is, words }} />
        ))}
        {moved.figures.map((figure) => (
          <MoveRow key={figure.figure} {...{ figure, words }} />
        ))}
      </tbody>
    </table>
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
  const units = useUnits()
  const shown = shownApart(figure, units)
  const [wasNeeded, isNeeded] = [was, is].map((finding) => finding && neededWords(finding, units))
  const needed = wasNeeded === isNeeded ? wasNeeded : `${wasNeeded ?? 'nothing'} before, ${isNeeded ?? 'nothing'} after`
  return (
    <tr>
      <th scope="row">
        {figure.title}
        {needed === undefined ? null : <span className="reason">needed: {needed}</span>}
      </th>
      <td data-label={words[0]}>
        {shown[0]} {was === undefined ? null : <MarkWithWord answer={was.verdict} />}
      </td>
      <td data-label={words[1]}>
        {shown[1]} {is === undefined ? null : <MarkWithWord answer={is.verdict} />}
      </td>
    </tr>
  )
}
