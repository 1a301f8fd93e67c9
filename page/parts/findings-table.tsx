import { memo } from 'react'
import { type FindingRow, findingRows, type QuestionName, type Told } from '../../report/index.ts'
import { MarkWithWord } from './mark.tsx'
import { Value } from './value.tsx'

/** What is required, what was found, and by how much it is met or missed. */
export const FindingsTable = memo(function FindingsTable(about: { readonly evaluation: Told; readonly question: QuestionName }) {
  const rows = findingRows(about.evaluation, about.question)
  if (rows.length === 0) return <p className="aside">The design states no requirement for this question.</p>
  return (
    <table className="rows findings">
      <thead>
        <tr>
          <th scope="col">Required</th>
          <th scope="col" className="number">
            Found
          </th>
          <th scope="col">Needed</th>
          <th scope="col" className="number">
            Margin
          </th>
          <th scope="col">Verdict</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.id} row={row} />
        ))}
      </tbody>
    </table>
  )
})

function Row({ row }: { readonly row: FindingRow }) {
  return (
    <tr>
      <th scope="row">
        {row.title}
        <span className="reason">
          {row.reason} <span className="source">{row.source}</span>
        </span>
        {row.why === undefined ? null : <span className="reason">{row.why}</span>}
      </th>
      <td className="number" data-label="Found">
        {row.found === undefined ? 'none' : <Value value={row.found} />}
      </td>
      <td className="needed" data-label="Needed">
        {row.needed}
      </td>
      <td className="number" data-label="Margin">
        {row.margin === undefined ? null : <Value value={row.margin} />}
      </td>
      <td data-label="Verdict">
        <MarkWithWord answer={row.verdict} />
      </td>
    </tr>
  )
}
