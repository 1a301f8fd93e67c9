import { type RefObject, useId, useMemo } from 'react'
import { whatMoved } from '../../engine/index.ts'
import { movedSentence } from '../../report/index.ts'
import { ProblemList } from '../parts/refusal.tsx'
import type { OpenDesign } from '../state/open-design.ts'
import { useUnits } from '../state/units.ts'
import { ComparedDrawing } from './compared-drawing.tsx'
import { ComparedResults } from './compared-results.tsx'
import { ComparedValues } from './compared-values.tsx'
import type { RevisionEntry } from './revision.ts'
import styles from './revisions.module.css'
import { type JudgedSide, type Side, sideWords, useSide } from './side.ts'

/** Two sides, and the way to choose others. */
export interface ComparisonProps {
  readonly open: OpenDesign
  readonly revisions: readonly RevisionEntry[]
  readonly before: Side
  readonly after: Side
  readonly choose: (sides: { readonly before?: Side; readonly after?: Side }) => void
  /** The heading, which takes the focus when a comparison is asked for. */
  readonly heading: RefObject<HTMLHeadingElement | null>
}

/** Two revisions, or one and what stands now, side by side: values, findings and figures, and both drawings over each other. */
export function Comparison({ open, revisions, before, after, choose, heading }: ComparisonProps) {
  const [was, is] = [useSide(open, before), useSide(open, after)]
  const offered = ['now' as const, ...revisions.map(({ number }) => number)]
  return (
    <section aria-labelledby="compare" data-testid="comparison">
      <h2 id="compare" ref={heading} tabIndex={-1}>
        Side by side
      </h2>
      <div className={styles.choice}>
        <SideChooser label="Before, dashed" chosen={before} {...{ offered }} choose={(side) => choose({ before: side })} />
        <SideChooser label="After, full" chosen={after} {...{ offered }} choose={(side) => choose({ after: side })} />
      </div>
      <Trouble file={open.name} side={was} />
      <Trouble file={open.name} side={is} />
      <Judged before={was} after={is} />
    </section>
  )
}

function SideChooser(about: {
  readonly label: string
  readonly chosen: Side
  readonly offered: readonly Side[]
  readonly choose: (side: Side) => void
}) {
  const { label, chosen, offered, choose } = about
  const id = useId()
  return (
    <p>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={String(chosen)}
        onChange={({ target }) => choose(offered.find((side) => String(side) === target.value) ?? 'now')}
      >
        {offered.map((side) => (
          <option key={side} value={String(side)}>
            {sideWords(side)}
          </option>
        ))}
      </select>
    </p>
  )
}

/** Why a side could not be had, or why it was refused. */
function Trouble({ file, side: { words, fault, answer } }: { readonly file: string; readonly side: JudgedSide }) {
  if (fault !== undefined) {
    return (
      <p role="alert" className={styles.fault}>
        {fault}
      </p>
    )
  }
  if (answer?.problems === undefined) return null
  return (
    <>
      <p>Of {words} there are no figures: it was refused.</p>
      <ProblemList file={file} problems={answer.problems} />
    </>
  )
}

/** As much as is known: values as soon as both texts are there, what they come to once both are worked out. */
function Judged({ before, after }: { readonly before: JudgedSide; readonly after: JudgedSide }) {
  const units = useUnits()
  const [was, is] = [before.answer?.evaluation, after.answer?.evaluation]
  const moved = useMemo(() => (was === undefined || is === undefined ? undefined : whatMoved(was, is)), [was, is])
  const values =
    before.text === undefined || after.text === undefined ? null : (
      <ComparedValues before={{ words: before.words, text: before.text }} after={{ words: after.words, text: after.text }} />
    )
  const isUnderWay = [before, after].some(({ answer, fault }) => answer === undefined && fault === undefined)
  if (was === undefined || is === undefined || moved === undefined)
    return (
      <>
        {isUnderWay ? <p className="aside">Both are being worked out …</p> : null}
        {values}
      </>
    )
  const fingers = { before: { words: before.words, evaluation: was }, after: { words: after.words, evaluation: is } }
  return (
    <>
      <p className={styles.moved} data-testid="compared">
        {movedSentence(moved, units)} <span className="hint">Both by the engine of today.</span>
      </p>
      <ComparedDrawing {...fingers}>
        {values}
        <ComparedResults {...fingers} moved={moved} />
      </ComparedDrawing>
    </>
  )
}
