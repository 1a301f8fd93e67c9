import { memo } from 'react'
import {
  findingsOf,
  governingFinding,
  marks,
  neededWords,
  overallVerdict,
  type QuestionName,
  questions,
  setCostWords,
  spreadWords,
  type Told,
} from '../../report/index.ts'
import { checkWords, useReadings } from '../check/readings.ts'
import { ProveInList } from '../prove/prove-in-list.tsx'
import { spreadRun } from '../spread/spread-run.ts'
import { useSetValue, useUnits } from '../state/units.ts'
import type { FurtherPage, OpenPage } from '../state/use-open-page.ts'
import { usePaced } from '../state/use-paced.ts'
import { DrawnMark } from './mark.tsx'
import styles from './question-list.module.css'
import { Value } from './value.tsx'

interface QuestionListProps {
  /** What is shown of the design; absent while nothing is. */
  readonly evaluation: Told | undefined
  readonly open: OpenPage
}

/** The questions in order, each with its verdict and the figure that governs it. */
export function QuestionList({ evaluation, open }: QuestionListProps) {
  return <Questions evaluation={usePaced(evaluation)} open={open} />
}

const Questions = memo(function Questions({ evaluation, open }: QuestionListProps) {
  const spread = spreadRun.use()?.reached
  const readings = useReadings()
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
        <Further page="spread" word="Spread" open={open} says={spread === undefined ? 'not counted yet' : spreadWords(spread)} />
        <Further page="make" word="Make" open={open} says={evaluation && setCostWords(evaluation.design)} />
        <Further page="check" word="Check" open={open} says={checkWords(readings)} />
        <ProveInList evaluation={evaluation} isOpen={open === 'prove'} />
      </ul>
    </nav>
  )
})

/** A question that is answered by work of its own. */
function Further(about: {
  readonly page: FurtherPage
  readonly word: string
  readonly open: OpenPage
  readonly says: string | undefined
}) {
  const { page, word, open, says } = about
  return (
    <li>
      <a href={`#${page}`} aria-current={page === open ? 'page' : undefined} className={styles.question}>
        <span className={styles.word}>{word}</span>
        {says === undefined ? null : <span className={styles.governing}>{says}</span>}
      </a>
    </li>
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
