import { memo } from 'react'
import type { HelpingChanges } from '../../engine/index.ts'
import { helpingGround, helpingHeads, helpingRows, helpingSentence } from '../../report/index.ts'
import { goTo } from '../state/attention.ts'
import { helpingRun } from '../state/helping-run.ts'
import { RunLine } from './run-line.tsx'
import styles from './sensitivities.module.css'
import { Value } from './value.tsx'

/** Steps that are listed. */
const FIRST_ROWS = 12

/** Which change helps most against breaking: tried size by size when somebody wants to know. */
export const HelpsMost = memo(function HelpsMost({ text }: { readonly text: string }) {
  const run = helpingRun.use()
  const reached = run?.reached
  return (
    <section aria-labelledby="helps-most">
      <h2 id="helps-most">Which change helps most?</h2>
      {reached === undefined ? null : <p>{helpingSentence(reached)}</p>}
      <RunLine {...{ run, text }} begin={() => helpingRun.begin({ text })} stop={helpingRun.stop} />
      {reached === undefined || reached.changes.length === 0 ? null : <Helping found={reached} />}
    </section>
  )
})

function Helping({ found }: { readonly found: HelpingChanges }) {
  const { title, typed, step, margin, first, costs } = helpingHeads
  return (
    <>
      <table className="rows compact">
        <thead>
          <tr>
            <th scope="col">{title}</th>
            {[typed, step, margin].map((head) => (
              <th key={head} scope="col" className="number">
                {head}
              </th>
            ))}
            <th scope="col">{first}</th>
            <th scope="col">{costs}</th>
          </tr>
        </thead>
        <tbody>
          {helpingRows(found)
            .slice(0, FIRST_ROWS)
            .map((row) => (
              <tr key={`${row.place.join('.')} ${row.step}`}>
                <th scope="row">
                  <button type="button" className={`plain ${styles.input}`} onClick={() => goTo(row.place.join('.'))}>
                    {row.title}
                  </button>
                </th>
                <td className="number">{row.typed}</td>
                <td className="number">{row.step}</td>
                <td className="number">
                  <Value value={row.margin} />
                </td>
                <td>{row.first}</td>
                <td>{row.costs}</td>
              </tr>
            ))}
        </tbody>
      </table>
      <p className="aside">{helpingGround}</p>
    </>
  )
}
