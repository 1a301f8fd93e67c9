import { useCallback, useDeferredValue, useMemo, useState } from 'react'
import { type Evaluation, forcesAt, type Point, type Question } from '../engine/index.ts'
import { caution, holdSentence, motionSentence, type QuestionName, readTravel, travelEnd } from '../report/index.ts'
import styles from './notebook.module.css'
import { DesignShelf } from './parts/design-shelf.tsx'
import { FiguresTable } from './parts/figures-table.tsx'
import { FindingsTable } from './parts/findings-table.tsx'
import { FingerView } from './parts/finger-view.tsx'
import { ForceChooser } from './parts/force-chooser.tsx'
import { ForcesTable } from './parts/forces-table.tsx'
import { LoadsTable } from './parts/loads-table.tsx'
import { MovedHoles } from './parts/moved-holes.tsx'
import { Plots } from './parts/plots.tsx'
import { askedBy, QuestionList } from './parts/question-list.tsx'
import { ProblemList, Refusal } from './parts/refusal.tsx'
import { driveName, TravelPointer } from './parts/travel-pointer.tsx'
import type { DesignState, DesignStore, Shown } from './state/design-store.ts'
import { type MovableHole, movableHoles, withHoleAt } from './state/design-text.ts'
import { useDesigns } from './state/use-designs.ts'
import { useDroppedFile } from './state/use-dropped-file.ts'
import { useQuestion } from './state/use-question.ts'

/** The page: questions at the left, the open one from sentence to working, the scale of the travel at the foot. */
export function Notebook() {
  const { store, state } = useDesigns()
  const question = useQuestion()
  const { shown, refused, unreachable } = state
  useDroppedFile(store)
  return (
    <div className={styles.notebook}>
      <header className={styles.column}>
        <p className={styles.name}>Fingerwright</p>
        <QuestionList open={question} {...(shown === undefined ? {} : { evaluation: shown.evaluation })} />
        <DesignShelf store={store} state={state} />
      </header>
      <main className={styles.main}>
        {unreachable === undefined ? null : (
          <p role="alert">
            The designs could not be fetched ({unreachable}). Start fingerwright again, or open a design file from disk.
          </p>
        )}
        {refused === undefined ? null : (
          <Refusal refused={refused} dismiss={() => store.dismissRefused()} keeps={shown !== undefined} />
        )}
        {shown === undefined ? null : <OpenQuestion {...{ store, state, shown, question }} />}
      </main>
    </div>
  )
}

interface OpenQuestionProps {
  readonly store: DesignStore
  readonly state: DesignState
  readonly shown: Shown
  readonly question: QuestionName
}

function OpenQuestion({ store, state, shown, question }: OpenQuestionProps) {
  const { evaluation } = shown
  const drawn = evaluation.travel === undefined ? state.drawn : evaluation
  return (
    <>
      <p className={styles.title}>{evaluation.design.title}</p>
      <h1 className={styles.asks}>{askedBy(question)}</h1>
      <p className={styles.sentence} aria-live="polite" data-testid="sentence">
        {question === 'motion' ? motionSentence(evaluation) : holdSentence(evaluation)}
      </p>
      {evaluation.problems.length === 0 ? null : <ProblemList file={shown.name} problems={evaluation.problems} />}
      {drawn === undefined ? <Unmoving {...{ shown, question }} /> : <Moving {...{ store, state, shown, question, drawn }} />}
    </>
  )
}

/** A finger that cannot be moved has no drawing, only what is required of it. */
function Unmoving({ shown, question }: Pick<OpenQuestionProps, 'shown' | 'question'>) {
  return (
    <section aria-labelledby="required">
      <h2 id="required">What is required</h2>
      <FindingsTable evaluation={shown.evaluation} question={question} />
      <p className={styles.caution} role="note">
        {caution}
      </p>
    </section>
  )
}

/** Everything that stands on a travel: drawing, tables, plots and the scale. */
function Moving({ store, state, shown, question, drawn }: OpenQuestionProps & { readonly drawn: Evaluation }) {
  const [pointed, setPointed] = useState(1)
  const arc_ratio = Math.min(pointed, drawn.travel === undefined ? 1 : travelEnd(drawn.travel))
  const point = useCallback((ratio: number) => setPointed(ratio), [])
  const calm = useDeferredValue(shown.evaluation)
  const isStale = drawn !== shown.evaluation
  return (
    <>
      {isStale ? <p className="aside">The drawing shows the finger as it last could be moved.</p> : null}
      {drawn.travel === undefined ? null : (
        <p className={styles.posture}>
          Drawn at {driveName(drawn.design)} {readTravel(drawn.travel, arc_ratio)}.
        </p>
      )}
      <DrawnFinger {...{ store, state, shown, question, drawn, arc_ratio }} />
      {question === 'hold' ? (
        <section aria-labelledby="carries">
          <h2 id="carries">Who carries the load</h2>
          <LoadsTable evaluation={calm} />
        </section>
      ) : null}
      <section aria-labelledby="required">
        <h2 id="required">What is required</h2>
        <FindingsTable evaluation={calm} question={question} />
      </section>
      <p className={styles.caution} role="note">
        {caution}
      </p>
      <section aria-labelledby="over-travel">
        <h2 id="over-travel">Over the travel</h2>
        <Plots {...{ evaluation: drawn, question, arc_ratio, point }}>
          <p className={styles.printedCaution}>{caution}</p>
        </Plots>
      </section>
      <section aria-labelledby="figures" className={styles.figures}>
        <h2 id="figures">Figures and their working</h2>
        <FiguresTable evaluation={calm} question={question} />
      </section>
      {drawn.travel === undefined ? null : (
        <TravelPointer {...{ design: drawn.design, travel: drawn.travel, arc_ratio, point }} />
      )}
    </>
  )
}

function DrawnFinger(about: OpenQuestionProps & { readonly drawn: Evaluation; readonly arc_ratio: number }) {
  const { store, shown, question, drawn, arc_ratio } = about
  const [asked, setAsked] = useState<Question>({ kind: 'return' })
  const known = asked.kind === 'return' || drawn.design.loadCases.some((loadCase) => loadCase.id === asked.loadCase)
  const chosen: Question = known ? asked : { kind: 'return' }
  const forces = useMemo(
    () => (question === 'hold' ? forcesAt(drawn, arc_ratio, chosen) : undefined),
    [question, drawn, arc_ratio, chosen],
  )
  const movable = useMemo(() => movableHoles(shown.evaluation.design, shown.text), [shown])
  const move = (hole: MovableHole, at: Point): void => store.change(withHoleAt(shown.text, hole, at))
  return (
    <section aria-labelledby="finger">
      <h2 id="finger" className="visually-hidden">
        The finger
      </h2>
      {question === 'hold' ? <ForceChooser design={drawn.design} chosen={chosen} choose={setAsked} /> : null}
      <FingerView
        evaluation={drawn}
        sheetKey={shown.fileText}
        {...{ arc_ratio, movable, move }}
        {...(forces === undefined ? {} : { forces, asked: chosen })}
      />
      <MovedHoles shown={shown} putBack={() => store.change(shown.fileText)} />
      {forces === undefined ? null : <ForcesTable design={drawn.design} forces={forces} />}
    </section>
  )
}
