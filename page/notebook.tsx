import { useMemo } from 'react'
import { toldIn } from '../report/index.ts'
import styles from './notebook.module.css'
import { DesignShelf } from './parts/design-shelf.tsx'
import { DesignTables } from './parts/design-tables.tsx'
import { OpenQuestion } from './parts/open-question.tsx'
import { OtherPage } from './parts/other-page.tsx'
import { QuestionList } from './parts/question-list.tsx'
import { Refusal } from './parts/refusal.tsx'
import { WorkBar } from './parts/work-bar.tsx'
import { useUnits } from './state/units.ts'
import { useDesigns } from './state/use-designs.ts'
import { useDroppedFile } from './state/use-dropped-file.ts'
import { useQuestion } from './state/use-question.ts'

/** The page: questions at the left, the open one from sentence to working, the scale of the travel at the foot. */
export function Notebook() {
  const { store, state } = useDesigns()
  const question = useQuestion()
  const units = useUnits()
  const { open, shown, refused, unreachable } = state
  const told = useMemo(() => shown && toldIn(units, shown.evaluation), [units, shown])
  useDroppedFile(store)
  return (
    <div className={styles.notebook}>
      <header className={styles.column}>
        <p className={styles.name}>Fingerwright</p>
        <QuestionList open={question} {...(told === undefined ? {} : { evaluation: told })} />
        <DesignShelf store={store} state={state} />
      </header>
      <main className={styles.main}>
        {unreachable === undefined ? null : (
          <p role="alert">
            The designs could not be fetched ({unreachable}). Start fingerwright again, or open a design file from disk.
          </p>
        )}
        {open === undefined ? null : <OtherPage store={store} open={open} />}
        {refused === undefined ? null : (
          <Refusal refused={refused} dismiss={() => store.dismissRefused()} keeps={shown !== undefined} />
        )}
        {open !== undefined && shown !== undefined && told !== undefined ? (
          <OpenQuestion {...{ store, state, open, shown, question, told }} />
        ) : open === undefined ? null : (
          <>
            <WorkBar store={store} open={open} />
            <DesignTables store={store} text={open.history.text} />
          </>
        )}
      </main>
    </div>
  )
}
