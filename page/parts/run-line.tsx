import type { BackgroundRun } from '../state/background-run.ts'
import styles from './sensitivities.module.css'

/** Begins and stops long work, and says how far it is and how long it will still take. */
export function RunLine(about: {
  readonly run: BackgroundRun<unknown> | undefined
  readonly text: string
  readonly begin: () => void
  readonly stop: () => void
}) {
  const { run, text, begin, stop } = about
  return (
    <p className="aside screen-only">
      {run?.isGoing ? (
        <button type="button" className="plain" onClick={stop}>
          Stop
        </button>
      ) : (
        <button type="button" className="plain" onClick={begin}>
          {run === undefined ? 'Work it out' : 'Work it out again'}
        </button>
      )}{' '}
      {run === undefined ? null : <Reached run={run} isOld={run.text !== text} />}
    </p>
  )
}

function Reached({ run, isOld }: { readonly run: BackgroundRun<unknown>; readonly isOld: boolean }) {
  const { isGoing, done, of, doing, remaining_s } = run
  const share = of === 0 ? 'beginning' : `${Math.floor((100 * done) / of)} %`
  const left = isGoing && of > 0 && remaining_s !== undefined ? `, about ${remaining_s} s to go` : ''
  return (
    <span className={styles.progress}>
      {isGoing ? <progress value={done} max={Math.max(of, 1)} aria-label="Share that is worked through" /> : null}
      <span data-testid="run-reached">
        {isGoing ? `${doing === undefined ? '' : `${doing}: `}${share}${left}` : ''}
        {isOld ? ' The design has changed since.' : ''}
      </span>
    </span>
  )
}
