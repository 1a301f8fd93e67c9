import { memo, useState } from 'react'
import type { Evaluation } from '../../engine/index.ts'
import { type FigureRow, figureRows, type QuestionName } from '../../report/index.ts'
import styles from './figures-table.module.css'
import { MarkWithWord } from './mark.tsx'
import { Value } from './value.tsx'
import { Working } from './working.tsx'

/** All figures of a question under their headings; each opens its working. */
export const FiguresTable = memo(function FiguresTable(about: {
  readonly evaluation: Evaluation
  readonly question: QuestionName
}) {
  const rows = figureRows(about.evaluation, about.question)
  const groups = [...new Set(rows.map((row) => row.group))]
  return (
    <table className={`rows ${styles.figures}`}>
      <thead className="visually-hidden">
        <tr>
          <th scope="col">Figure</th>
          <th scope="col">Value</th>
          <th scope="col">Required</th>
        </tr>
      </thead>
      {groups.map((group) => (
        <tbody key={group}>
          <tr className={styles.heading}>
            <th scope="rowgroup" colSpan={3}>
              {group}
            </th>
          </tr>
          {rows
            .filter((row) => row.group === group)
            .map((row) => (
              <Row key={row.id} row={row} />
            ))}
        </tbody>
      ))}
    </table>
  )
})

function Row({ row }: { readonly row: FigureRow }) {
  const [isOpen, setOpen] = useState(false)
  const working = `working-${row.id}`
  return (
    <>
      <tr>
        <th scope="row">
          <button
            type="button"
            className={styles.opener}
            aria-expanded={isOpen}
            aria-controls={isOpen ? working : undefined}
            onClick={() => setOpen(!isOpen)}
          >
            <span className={styles.sign} aria-hidden="true" />
            {row.title}
          </button>
        </th>
        <td className="number">{row.value === undefined ? <span className="none">none</span> : <Value value={row.value} />}</td>
        <td className={styles.required}>
          {row.finding === undefined ? (
            <span className="none">{row.value === undefined ? row.why : null}</span>
          ) : (
            <>
              {row.finding.needed} <MarkWithWord answer={row.finding.verdict} />
            </>
          )}
        </td>
      </tr>
      {isOpen ? (
        <tr id={working} className={styles.open}>
          <td colSpan={3}>
            {row.why === undefined ? null : <p className="aside">{row.why}</p>}
            <Working working={row.figure.working} />
          </td>
        </tr>
      ) : null}
    </>
  )
}
