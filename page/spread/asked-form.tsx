import type { DesignSpreadAsked } from '../../engine/index.ts'
import styles from './spread.module.css'

/** What is counted unless the reader says otherwise. */
export const USUAL_ASKED: DesignSpreadAsked = { samples: 1024, seed: 1, target_ratio: 0.99, advice: true }

const SAMPLES = [256, 1024, 4096, 16384]
const CLOSED = [0, 10_000, 100_000]
const TARGETS = [0.9, 0.95, 0.99, 0.999]

/** How many sets are counted, from which seed, which share is wanted, and whether changes are tried. */
export function AskedForm(about: { readonly asked: DesignSpreadAsked; readonly change: (asked: DesignSpreadAsked) => void }) {
  const { asked, change } = about
  return (
    <form className={`${styles.asked} screen-only`} onSubmit={(event) => event.preventDefault()}>
      <label>
        Sets counted{' '}
        <select value={asked.samples} onChange={({ target }) => change({ ...asked, samples: Number(target.value) })}>
          {SAMPLES.map((count) => (
            <option key={count}>{count}</option>
          ))}
        </select>
      </label>
      <label>
        looked at closed alone{' '}
        <select value={asked.closed ?? 0} onChange={({ target }) => change({ ...asked, closed: Number(target.value) })}>
          {CLOSED.map((count) => (
            <option key={count} value={count}>
              {count === 0 ? 'none' : count}
            </option>
          ))}
        </select>
      </label>
      <label>
        Share that has to meet everything{' '}
        <select value={asked.target_ratio} onChange={({ target }) => change({ ...asked, target_ratio: Number(target.value) })}>
          {TARGETS.map((share) => (
            <option key={share} value={share}>
              {Number((100 * share).toPrecision(4))} %
            </option>
          ))}
        </select>
      </label>
      <label>
        Seed{' '}
        <input
          type="number"
          min={0}
          max={2 ** 32 - 1}
          step={1}
          value={asked.seed}
          onChange={({ target }) => change({ ...asked, seed: Math.max(0, Math.trunc(target.valueAsNumber || 0)) })}
        />
      </label>
      <label>
        <input type="checkbox" checked={asked.advice} onChange={({ target }) => change({ ...asked, advice: target.checked })} />{' '}
        try changes as well
      </label>
    </form>
  )
}
