import styles from '../parts/question-list.module.css'
import { useRevisionBook } from './revision-book.ts'

/** The way to the revisions, below the questions, with how many there are. */
export function RevisionsLink({ name, isOpen }: { readonly name: string | undefined; readonly isOpen: boolean }) {
  const { revisions = [] } = useRevisionBook(name)
  const count = revisions.length === 0 ? 'none kept yet' : `${revisions.length} kept, the newest ${revisions[0].number}`
  return (
    <nav aria-label="Revisions" className={styles.list}>
      <a href="#revisions" aria-current={isOpen ? 'page' : undefined} className={styles.question}>
        <span className={styles.word}>Revisions</span>
        {name === undefined ? null : <span className={styles.governing}>{count}</span>}
      </a>
    </nav>
  )
}
