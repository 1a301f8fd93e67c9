import { memo, useMemo } from 'react'
import { type Trial, trials } from '../../engine/index.ts'
import type { DesignStore } from '../state/design-store.ts'
import { type History, standing } from '../state/history.ts'
import type { Shown } from '../state/open-design.ts'
import { standingTrial, takingBack, trialChanges, trialOf, trialWords } from '../state/standing-trial.ts'
import { useSettled } from '../state/use-settled.ts'
import styles from './ready-trials.module.css'

/** What happens to the finger in use, each tried with one click and taken back with another. */
export function ReadyTrials(about: { readonly store: DesignStore; readonly history: History; readonly shown: Shown }) {
  const { store, history } = about
  const shown = useSettled(about.shown)
  const ready = useMemo(() => trials(shown.text, shown.evaluation), [shown])
  return (
    <section aria-labelledby="trials" className={`${styles.trials} screen-only`}>
      <h2 id="trials">Try what may happen</h2>
      <ul>
        {ready.map((trial) => (
          <TrialButton key={trial.id} trial={trial} store={store} history={history} step={standingTrial(history, trial.title)} />
        ))}
      </ul>
    </section>
  )
}

interface TrialButtonProps {
  readonly trial: Trial
  readonly store: DesignStore
  readonly history: History
  /** Which step made it, while it stands. */
  readonly step: number | undefined
}

const TrialButton = memo(function TrialButton({ trial, store, history, step }: TrialButtonProps) {
  const { id, title, cannot } = trial
  const stands = step !== undefined
  // A trial that stands may have nothing left to change; what it did is said by the text that it was made on.
  const madeOn = stands ? standing(history, step).text : undefined
  const made = useMemo(() => (madeOn === undefined ? undefined : trialOf(madeOn, id)), [madeOn, id])
  const now = made ?? trial
  const says = now.cannot === undefined ? now.says : undefined
  const words = trialWords(title)
  const press = (): void => {
    if (!stands) {
      store.edit({ changes: trialChanges(history.text, id), said: words.made })
      return
    }
    const way = takingBack(history, step)
    if ('position' in way) store.stand(way.position)
    else store.edit({ changes: way.changes, said: words.takenBack })
  }
  return (
    <li>
      <button
        type="button"
        className={styles.trial}
        aria-pressed={stands}
        aria-describedby={`trial-${id}`}
        title={says}
        disabled={!stands && cannot !== undefined}
        onClick={press}
      >
        <span className={styles.shape} aria-hidden="true" />
        {title}
      </button>
      <span id={`trial-${id}`} className={stands || cannot !== undefined ? styles.says : 'visually-hidden'}>
        {stands ? (says ?? '') : (cannot ?? says)}
      </span>
    </li>
  )
})
