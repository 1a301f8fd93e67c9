import { useId } from 'react'
import { type BenchColumn, benchColumns, columnWords, type NamedColumns, type TableRows } from '../../../report/index.ts'
import styles from './bench.module.css'

/** Rows that are shown: enough to see what stands in a column. */
const ROWS_shown = 5

/** The first rows of a table as they stand, and over each column what it is taken for. */
export function ColumnTable(props: {
  readonly rows: TableRows
  readonly named: NamedColumns
  readonly setNamed: (named: NamedColumns) => void
}) {
  const { rows, named, setNamed } = props
  const heading = (rows[0] ?? []).map((cell) => cell.trim())
  const columns = heading.map((name, index) => ({ name, key: `${index} ${name}` }))
  const shown = rows.slice(1, 1 + ROWS_shown).map((row, index) => ({ row, number: index + 2 }))
  const more = rows.length - 1 - ROWS_shown
  return (
    <section className={styles.wide} aria-label="Columns">
      <table className="rows compact">
        <thead>
          <tr>
            <th scope="col">Row</th>
            {columns.map(({ name, key }) => (
              <th key={key} scope="col">
                {name === '' ? <span className="aside">no heading</span> : <ColumnSelect {...{ name, named, setNamed }} />}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shown.map(({ row, number }) => (
            <tr key={number}>
              <th scope="row" className="number">
                {number}
              </th>
              {columns.map(({ key }, column) => (
                <td key={key}>{row[column]}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {more > 0 ? <p className="aside">and {more === 1 ? 'one row' : `${more} rows`} more</p> : null}
    </section>
  )
}

interface OneColumn {
  readonly name: string
  readonly named: NamedColumns
  readonly setNamed: (named: NamedColumns) => void
}

function ColumnSelect({ name, named, setNamed }: OneColumn) {
  const id = useId()
  const taken = benchColumns.find((column) => named[column] === name)
  // A column is one thing, and one thing has one column.
  const choose = (column: string): void => {
    const others = Object.entries(named).filter(([other, heading]) => other !== column && heading !== name)
    setNamed(Object.fromEntries(column === '' ? others : [...others, [column as BenchColumn, name]]))
  }
  return (
    <span className={styles.column}>
      <label htmlFor={id}>{name}</label>
      <select id={id} value={taken ?? ''} onChange={({ target }) => choose(target.value)}>
        <option value="">not taken</option>
        {benchColumns.map((column) => (
          <option key={column} value={column}>
            {columnWords[column]}
          </option>
        ))}
      </select>
    </span>
  )
}
