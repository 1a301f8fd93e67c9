import { memo, useMemo } from 'react'
import { findingsOf, type QuestionName, type SensitivityRow, sensitivityRows, type Told } from '../../report/index.ts'
import { goTo } from '../state/attention.ts'
import { beginSensitivities, type SensitivityRun, stopSensitivities, useSensitivities } from '../state/sensitivity-run.ts'
import styles from './sensitivities.module.css'
import { Value } from './value.tsx'

/** What a step of each input does to the figures that are asked for: found one by one, when somebody wants to know. */
export const Sensitivities = memo(function Sensitivities(about: {
  readonly evaluation: Told
  readonly text: string
  readonly question: QuestionName
}) {
  const { evaluation, text, question } = about
  const run = useSensitivities()
  const rows = useMemo(() => sensitivityRows(run?.found ?? [], evaluation, evaluation.units), [evaluation, run])
  return (
    <section aria-labelledby="sensitivities" className="screen-only">
      <h2 id="sensitivities">What a small step of each value does</h2>
      <p className="aside">
        0.1 mm, 1° or 10 % of every value that was typed, one after the other, each with the whole finger worked out again.{' '}
        {run?.isGoing ? (
          <button type="button" className="plain" onClick={stopSensitivities}>
            Stop
          </button>
        ) : (
          <button type="button" className="plain" onClick={() => beginSensitivities(text)}>
            {run === undefined ? 'Work it out' : 'Work it out again'}
          </button>
        )}
      </p>
      {run === undefined ? null : <Progress run={run} isOld={run.text !== text} />}
      {rows.length === 0 ? null : <Steps rows={rows} columns={columnsOf(evaluation, question)} />}
    </section>
  )
})

interface Column {
  readonly figure: string
  readonly title: string
}

/** The figures that the requirements of a question watch. */
function columnsOf(evaluation: Told, question: QuestionName): readonly Column[] {
  const watched = findingsOf(evaluation, question).flatMap(({ figure }) => figure ?? [])
  return [...new Map(watched.map(({ id, title }) => [id, { figure: id, title }])).values()]
}

function Progress({ run, isOld }: { readonly run: SensitivityRun; readonly isOld: boolean }) {
  const { isGoing, done, of, remaining_s } = run
  const words = of === 0 ? 'beginning' : `${done} of ${of}`
  const left = isGoing && remaining_s !== undefined ? `, about ${remaining_s} s to go` : ''
  return (
    <div className={styles.progress}>
      {isGoing ? <progress value={done} max={Math.max(of, 1)} aria-label="Values worked through" /> : null}
      <span data-testid="sensitivities-reached">
        {words}
        {left}
        {isOld ? '. The design has changed since.' : ''}
      </span>
    </div>
  )
}

function Steps({ rows, columns }: { readonly rows: readonly SensitivityRow[]; readonly columns: readonly Column[] }) {
  const moving = rows.filter(
    (row) => row.refused.length > 0 || row.cells.some(({ figure }) => columns.some((one) => one.figure === figure)),
  )
  return (
    <>
      <div className={styles.wide}>
        <table className="rows compact">
          <thead>
            <tr>
              <th scope="col">Value</th>
              <th scope="col">Step</th>
              {columns.map(({ figure, title }) => (
                <th key={figure} scope="col" className={`number ${styles.change}`}>
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {moving.map((row) => (
              <Step key={row.place.join('.')} row={row} columns={columns} />
            ))}
          </tbody>
        </table>
      </div>
      {moving.length === rows.length ? null : (
        <p className="aside">Steps of {rows.length - moving.length} other values change none of these.</p>
      )}
    </>
  )
}

function Step({ row, columns }: { readonly row: SensitivityRow; readonly columns: readonly Column[] }) {
  return (
    <tr>
      <th scope="row">
        <button type="button" className={`plain ${styles.input}`} onClick={() => goTo(row.place.join('.'))}>
          {row.title}
        </button>
        {row.takes === undefined ? null : <span className="reason">takes {row.takes}</span>}
        {row.refused.map((words) => (
          <span key={words} className="reason">
            {words}
          </span>
        ))}
      </th>
      <td className="needed">{row.step}</td>
      {columns.map(({ figure }) => {
        const cell = row.cells.find((one) => one.figure === figure)
        return (
          <td key={figure} className={`number ${styles.change}`}>
            {cell === undefined ? null : <Value value={cell.change} />}
            {cell?.side === undefined ? null : <span className="reason">{cell.side}</span>}
          </td>
        )
      })}
    </tr>
  )
}
