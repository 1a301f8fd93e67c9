import { memo } from 'react'
import { type TraceRow, traceSays } from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { goTo } from '../state/attention.ts'

/** What is asked against what shows it; what is not shown stands at the top. */
export const TraceTable = memo(function TraceTable({ rows }: { readonly rows: readonly TraceRow[] }) {
  if (rows.length === 0) return <p className="aside">The design asks for nothing yet.</p>
  return (
    <table className="rows compact">
      <thead>
        <tr>
          <th scope="col">Asked</th>
          <th scope="col">Shown by</th>
          <th scope="col">Verdict</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.place} row={row} />
        ))}
      </tbody>
    </table>
  )
})

function Row({ row }: { readonly row: TraceRow }) {
  return (
    <tr>
      <th scope="row">
        <button type="button" className="plain" onClick={() => goTo(row.place)}>
          {row.asks}
        </button>
        <span className="reason">
          {row.reason} <span className="source">{row.source}</span>
        </span>
      </th>
      <td data-label="Shown by">
        {row.ways.map(({ words, verdict }) => (
          <span key={words} className="reason">
            {words} – {traceSays[verdict]}
          </span>
        ))}
      </td>
      <td data-label="Verdict">
        <MarkWithWord answer={row.verdict} word={traceSays[row.verdict]} />
      </td>
    </tr>
  )
}
