import { useMemo } from 'react'
import { proofOf } from '../../engine/index.ts'
import { marks, proveWords, type Told } from '../../report/index.ts'
import { DrawnMark } from '../parts/mark.tsx'
import styles from '../parts/question-list.module.css'
import { useDesigns } from '../state/use-designs.ts'
import { useCountedSpread } from './use-counted-spread.ts'

/** Prove in the list of questions: its verdict, with the sets that were counted of this very text. */
export function ProveInList({ evaluation, isOpen }: { readonly evaluation: Told | undefined; readonly isOpen: boolean }) {
  const { state } = useDesigns()
  const spread = useCountedSpread(state.shown?.text)
  const proof = useMemo(() => evaluation && proofOf({ evaluation, ...(spread && { spread }) }), [evaluation, spread])
  const answer = proof?.verdict ?? 'notAsked'
  return (
    <li>
      <a href="#prove" aria-current={isOpen ? 'page' : undefined} className={styles.question}>
        <span className={styles.word}>Prove</span>
        {proof === undefined ? null : (
          <>
            <span className={`verdict verdict-${answer} ${styles.verdict}`}>
              <DrawnMark answer={answer} />
              {marks[answer].word}
            </span>
            <span className={styles.governing}>{proveWords(proof)}</span>
          </>
        )}
      </a>
    </li>
  )
}
