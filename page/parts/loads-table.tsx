import { memo } from 'react'
import { type LoadCell, loadRows, type Told } from '../../report/index.ts'
import { Value } from './value.tsx'

/** Who carries each load at the closed posture, and what the wearer gives. */
export const LoadsTable = memo(function LoadsTable({ evaluation }: { readonly evaluation: Told }) {
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
            <Cell cell={row.heldBy} label="Carried by" className="words" />
            <Cell cell={row.toClose} label="To close" />
            <Cell cell={row.toHold} label="To hold" />
            <Cell cell={row.toLetGo} label="To let go" />
            {hasKeeper ? <Cell cell={row.keeper} label="Keeper" /> : null}
          </tr>
        ))}
      </tbody>
    </table>
  )
})

function Cell(about: { readonly cell: LoadCell; readonly label: string; readonly className?: string }) {
  const { cell, label, className = 'number' } = about
  return (
    <td className={className} data-label={label}>
      {cell.value === undefined ? (
        <span className="none" title={cell.why}>
          {cell.why === undefined ? '–' : 'none'}
        </span>
      ) : (
        <Value value={cell.value} />
      )}
    </td>
  )
}
