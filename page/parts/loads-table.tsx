import { memo } from 'react'
import type { Evaluation } from '../../engine/index.ts'
import { type LoadCell, loadRows } from '../../report/index.ts'
import { Value } from './value.tsx'

/** Who carries each load at the closed posture, and what the wearer gives. */
export const LoadsTable = memo(function LoadsTable({ evaluation }: { readonly evaluation: Evaluation }) {
  const rows = loadRows(evaluation)
  if (rows.length === 0) return <p className="aside">The design asks for no load.</p>
  const hasKeeper = rows.some((row) => row.keeper.value !== undefined)
  return (
    <table className="rows loads">
      <thead>
        <tr>
          <th scope="col">Load</th>
          <th scope="col">Carried by</th>
          <th scope="col" className="number">
            To close
          </th>
          <th scope="col" className="number">
            To hold
          </th>
          <th scope="col" className="number">
            To let go
          </th>
          {hasKeeper ? (
            <th scope="col" className="number">
              Keeper
            </th>
          ) : null}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.id}>
            <th scope="row">
              {row.name} <span className="unit">{row.load}</span>
            </th>
            <Cell cell={row.heldBy} className="words" />
            <Cell cell={row.toClose} />
            <Cell cell={row.toHold} />
            <Cell cell={row.toLetGo} />
            {hasKeeper ? <Cell cell={row.keeper} /> : null}
          </tr>
        ))}
      </tbody>
    </table>
  )
})

function Cell({ cell, className = 'number' }: { readonly cell: LoadCell; readonly className?: string }) {
  if (cell.value !== undefined) {
    return (
      <td className={className}>
        <Value value={cell.value} />
      </td>
    )
  }
  return (
    <td className={className}>
      <span className="none" title={cell.why}>
        {cell.why === undefined ? '–' : 'none'}
      </span>
    </td>
  )
}
