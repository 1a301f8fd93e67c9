import {
  findingsOf,
  governingFinding,
  marks,
  neededWords,
  overallVerdict,
  type QuestionName,
  questions,
  setCostWords,
  type Told,
} from '../../report/index.ts'
import { useSetValue, useUnits } from '../state/units.ts'
import type { OpenPage } from '../state/use-open-page.ts'
import { DrawnMark } from './mark.tsx'
import styles from './question-list.module.css'
import { Value } from './value.tsx'

/** The questions in order, each with its verdict and the figure that governs it. */
export function QuestionList({ evaluation, open }: { readonly evaluation?: Told; readonly open: OpenPage }) {
  return (
    <nav aria-label="Questions" className={styles.list}>
      <ul>
        {questions.map(({ name, word }) => (
          <li key={name}>
            <a href={`#${name}`} aria-current={name === open ? 'page' : undefined} className={styles.question}>
              <span className={styles.word}>{word}</span>
              {evaluation === undefined ? null : <Governing evaluation={evaluation} question={name} />}
            </a>
          </li>
        ))}
        <li>
          <a href="#make" aria-current={open === 'make' ? 'page' : undefined} className={styles.question}>
            <span className={styles.word}>Make</span>
            {evaluation === undefined ? null : <span className={styles.governing}>{setCostWords(evaluation.design)}</span>}
          </a>
        </li>
      </ul>
    </nav>
  )
}

function Governing({ evaluation, question }: { readonly evaluation: Told; readonly question: QuestionName }) {
  const findings = findingsOf(evaluation, question)
  const setValue = useSetValue()
  const units = useUnits()
  const answer = overallVerdict(findings)
  const governing = governingFinding(findings)
  const figure = governing?.figure
  return (
    <>
      <span className={`verdict verdict-${answer} ${styles.verdict}`}>
        <DrawnMark answer={answer} />
        {marks[answer].word}
      </span>
      {governing === undefined ? null : (
        <span className={styles.governing}>
          {figure?.title ?? governing.requirement.figure}:{' '}
          {figure?.value === undefined ? null : <Value value={setValue(figure.value, figure.unit)} />}
          <span className={styles.needed}>
            {' '}
            ({governing.requirement.bound.kind === 'is' ? 'needed: ' : ''}
            {neededWords(governing, units)})
          </span>
        </span>
      )}
    </>
  )
}
