import { marks, proveWords, type Told } from '../../report/index.ts'
import { DrawnMark } from '../parts/mark.tsx'
import styles from '../parts/question-list.module.css'
import { useDesigns } from '../state/use-designs.ts'
import { usePaced } from '../state/use-paced.ts'
import { useProof } from './use-proof.ts'

/** Prove in the list of questions: its verdict, with what was counted and worked through of this very text. */
export function ProveInList({ evaluation, isOpen }: { readonly evaluation: Told | undefined; readonly isOpen: boolean }) {
  const { state } = useDesigns()
  const proof = useProof({ open: state.open, evaluation, text: usePaced(state.shown?.text) })?.proof
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
