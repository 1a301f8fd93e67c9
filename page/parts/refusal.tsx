import { type Problem, sentence } from '../../engine/index.ts'
import type { Refused } from '../state/open-design.ts'
import styles from './refusal.module.css'

/** Every problem of a refused file; the design before it stays on the page. */
export function Refusal({
  refused,
  dismiss,
  keeps,
}: {
  readonly refused: Refused
  readonly dismiss: () => void
  readonly keeps: boolean
}) {
  const count = refused.problems.length
  return (
    <section role="alert" className={styles.refusal} aria-labelledby="refused">
      <h2 id="refused">
        {refused.name}
        {refused.isEdit ? ' as it stands now' : ''} was refused: {count === 1 ? 'one problem' : `${count} problems`}
      </h2>
      {keeps ? (
        <p>
          {refused.isEdit
            ? 'Below stands what could be read last; undoing brings it back.'
            : 'The design below is the one that was open before.'}
        </p>
      ) : null}
      <ProblemList file={refused.name} problems={refused.problems} />
      <button type="button" className="plain" onClick={dismiss}>
        Put this away
      </button>
    </section>
  )
}

/** Problems as sentences: where, what was found, what is needed, a way out. */
export function ProblemList({ file, problems }: { readonly file: string; readonly problems: readonly Problem[] }) {
  return (
    <ul className={styles.problems}>
      {problems.map((problem) => (
        <li key={sentence(file, problem)}>{sentence(file, problem)}</li>
      ))}
    </ul>
  )
}
