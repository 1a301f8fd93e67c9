import { useMemo } from 'react'
import { toldIn } from '../report/index.ts'
import { CheckPage } from './check/check-page.tsx'
import { MakePage } from './make/make-page.tsx'
import styles from './notebook.module.css'
import { DesignShelf } from './parts/design-shelf.tsx'
import { DesignTables } from './parts/design-tables.tsx'
import { OpenQuestion } from './parts/open-question.tsx'
import { OtherPage } from './parts/other-page.tsx'
import { QuestionList } from './parts/question-list.tsx'
import { Refusal } from './parts/refusal.tsx'
import { SignedOut } from './parts/signed-out.tsx'
import { WorkBar } from './parts/work-bar.tsx'
import { ProvePage } from './prove/prove-page.tsx'
import { RevisionsLink } from './revisions/revisions-link.tsx'
import { RevisionsPage } from './revisions/revisions-page.tsx'
import { SpreadPage } from './spread/spread-page.tsx'
import { isKeptHere } from './state/open-design.ts'
import { useSignedIn } from './state/signed-in.ts'
import { useUnits } from './state/units.ts'
import { useDesigns } from './state/use-designs.ts'
import { useDroppedFile } from './state/use-dropped-file.ts'
import { isQuestion, useOpenPage } from './state/use-open-page.ts'

/** The page: questions at the left, the open one from sentence to working, the scale of the travel at the foot. */
export function Notebook() {
  const { store, state } = useDesigns()
  const page = useOpenPage()
  const units = useUnits()
  const { open, shown, refused, unreachable } = state
  const told = useMemo(() => shown && toldIn(units, shown.evaluation), [units, shown])
  const isIn = useSignedIn()
  useDroppedFile(store)
  return (
    <div className={styles.notebook}>
      <header className={styles.column}>
        <p className={styles.name}>Fingerwright</p>
        <QuestionList open={page} evaluation={told} />
        <RevisionsLink name={open !== undefined && isKeptHere(open) ? open.name : undefined} isOpen={page === 'revisions'} />
        <DesignShelf store={store} state={state} />
      </header>
      <main className={styles.main}>
        <SignedOut store={store} />
        {unreachable === undefined || !isIn ? null : (
          <p role="alert">
            The designs could not be fetched ({unreachable}). Start fingerwright again, or open a design file from disk.
          </p>
        )}
        {open === undefined ? null : <OtherPage store={store} open={open} />}
        {refused === undefined ? null : (
          <Refusal refused={refused} dismiss={() => store.dismissRefused()} keeps={shown !== undefined} />
        )}
        {open === undefined ? null : page === 'revisions' ? (
          <RevisionsPage {...{ store, open, shown }} />
        ) : shown !== undefined && page === 'spread' ? (
          <SpreadPage {...{ store, open }} design={shown.evaluation.design} />
        ) : shown !== undefined && page === 'make' ? (
          <MakePage {...{ store, open, shown }} />
        ) : shown !== undefined && page === 'check' ? (
          <CheckPage {...{ store, open }} design={shown.evaluation.design} />
        ) : told !== undefined && page === 'prove' ? (
          <ProvePage {...{ store, open, told }} />
        ) : shown !== undefined && told !== undefined && isQuestion(page) ? (
          <OpenQuestion {...{ store, state, open, shown, question: page, told }} />
        ) : (
          <>
            <WorkBar store={store} open={open} />
            <DesignTables store={store} text={open.history.text} />
          </>
        )}
      </main>
    </div>
  )
}
