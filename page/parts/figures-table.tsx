import { memo, useState } from 'react'
import type { Design } from '../../engine/index.ts'
import { type FigureRow, figureRows, type QuestionName, type Told } from '../../report/index.ts'
import { FigureWorking } from './figure-working.tsx'
import styles from './figures-table.module.css'
import { MarkWithWord } from './mark.tsx'
import opened from './opener.module.css'
import { Opener } from './opener.tsx'
import { Value } from './value.tsx'

/** All figures of a question under their headings; each opens its working. The many figures of a load stay folded until asked for. */
export const FiguresTable = memo(function FiguresTable(about: { readonly evaluation: Told; readonly question: QuestionName }) {
  const { evaluation, question } = about
  const rows = figureRows(evaluation, question)
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
        <Group key={group} design={evaluation.design} heading={group} rows={rows.filter((row) => row.group === group)} />
      ))}
    </table>
  )
})

interface GroupProps {
  readonly design: Design
  readonly heading: string
  readonly rows: readonly FigureRow[]
}

function Group({ design, heading, rows }: GroupProps) {
  const folds = rows.every((row) => row.id.startsWith('loadCase.'))
  const [isOpen, setOpen] = useState(!folds)
  return (
    <tbody>
      <tr className={styles.heading}>
        <th scope="rowgroup" colSpan={3}>
          {folds ? <Opener words={heading} isOpen={isOpen} toggle={() => setOpen(!isOpen)} /> : heading}
        </th>
      </tr>
      {isOpen ? rows.map((row) => <Row key={row.id} design={design} row={row} />) : null}
    </tbody>
  )
}

function Row({ design, row }: { readonly design: Design; readonly row: FigureRow }) {
  const [isOpen, setOpen] = useState(false)
  return (
    <>
      <tr>
        <th scope="row">
          <Opener words={row.title} isOpen={isOpen} toggle={() => setOpen(!isOpen)} />
        </th>
        <td className="number">{row.value === undefined ? <span className="none">none</span> : <Value value={row.value} />}</td>
        <td className={styles.required}>
          {row.finding === undefined ? null : (
            <>
              {row.finding.needed} <MarkWithWord answer={row.finding.verdict} />
            </>
          )}
        </td>
      </tr>
      {isOpen ? (
        <tr className={opened.open}>
          <td colSpan={3}>
            {row.why === undefined ? null : <p className="aside">{row.why}</p>}
            <FigureWorking design={design} figure={row.id} />
          </td>
        </tr>
      ) : null}
    </>
  )
}
