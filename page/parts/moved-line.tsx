import { useMemo } from 'react'
import { type UnitSystem, whatMoved } from '../../engine/index.ts'
import { movedSentence } from '../../report/index.ts'
import type { Shown } from '../state/open-design.ts'
import { usePaced } from '../state/use-paced.ts'
import { useTallest } from '../state/use-tallest.ts'
import styles from './open-question.module.css'

/** What the last edit, undoing or trial moved. */
export function MovedLine({ shown, units }: { readonly shown: Shown; readonly units: UnitSystem }) {
  const { before, evaluation, opening } = usePaced(shown)
  const moved = useMemo(() => (before === undefined ? undefined : whatMoved(before, evaluation)), [before, evaluation])
  const line = useTallest<HTMLParagraphElement>(`${opening} ${units}`)
  return (
    <p ref={line} className={`${styles.moved} screen-only`} aria-live="polite" data-testid="moved">
      {moved === undefined ? (
        ''
      ) : (
        <>
          <span className="hint">What moved: </span>
          {movedSentence(moved, units)}
        </>
      )}
    </p>
  )
}
