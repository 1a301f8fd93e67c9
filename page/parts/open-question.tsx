import { useMemo } from 'react'
import { caution, problemsAsked, questionNamed, toldIn } from '../../report/index.ts'
import type { OpenedQuestion } from '../state/opened-question.ts'
import { useTallest } from '../state/use-tallest.ts'
import { DesignTables } from './design-tables.tsx'
import { FindingsTable } from './findings-table.tsx'
import { MovedLine } from './moved-line.tsx'
import { MovingFinger } from './moving-finger.tsx'
import styles from './open-question.module.css'
import { ReadyTrials } from './ready-trials.tsx'
import { ProblemList } from './refusal.tsx'
import { WorkBar } from './work-bar.tsx'

/** One question from its sentence to its working. */
export function OpenQuestion(about: OpenedQuestion) {
  const { store, state, open, shown, question, told } = about
  const { units = 'metric' } = told
  const { asks, sentence: answer } = questionNamed(question)
  const sentence = useTallest<HTMLParagraphElement>(`${question} ${shown.opening} ${units}`)
  const problems = problemsAsked(told, question)
  const drawn = useMemo(
    () => (told.travel === undefined ? state.drawn && toldIn(units, state.drawn.evaluation) : told),
    [told, state.drawn, units],
  )
  return (
    <>
      <p className={styles.title}>{told.design.title}</p>
      <h1 className={styles.asks}>{asks}</h1>
      <div className={styles.verdict}>
        <div>
          <p ref={sentence} className={styles.sentence} aria-live="polite" data-testid="sentence">
            {answer(told)}
          </p>
          <MovedLine shown={shown} units={units} />
        </div>
        <ReadyTrials store={store} history={open.history} shown={shown} />
      </div>
      <WorkBar store={store} open={open} />
      {problems.length === 0 ? null : <ProblemList file={shown.name} problems={problems} />}
      {drawn === undefined ? <Unmoving {...about} /> : <MovingFinger {...about} drawn={drawn} />}
    </>
  )
}

/** A finger that cannot be moved has no drawing, only its values and what is required of it. */
function Unmoving({ store, open, told, question }: OpenedQuestion) {
  return (
    <>
      <DesignTables store={store} text={open.history.text} />
      <section aria-labelledby="required">
        <h2 id="required">What is required</h2>
        <FindingsTable evaluation={told} question={question} />
        <p className={styles.caution} role="note">
          {caution}
        </p>
      </section>
    </>
  )
}
