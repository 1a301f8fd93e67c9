import { memo, useMemo } from 'react'
import { type Design, partsList } from '../../engine/index.ts'
import { type ItemRow, itemRows, massText, partsFile } from '../../report/index.ts'
import { Value } from '../parts/value.tsx'
import { saveFile } from '../revisions/save-file.ts'
import { useUnits } from '../state/units.ts'

/** Everything that a finger is put together from, numbered, with what it weighs. */
export const PartsTable = memo(function PartsTable({ design, name }: { readonly design: Design; readonly name: string }) {
  const units = useUnits()
  const list = useMemo(() => partsList(design), [design])
  const save = (): void => saveFile(new Blob([partsFile(design)], { type: 'text/csv' }), `${name}-parts-list.csv`)
  return (
    <>
      <table className="rows compact">
        <thead>
          <tr>
            <th scope="col" className="number">
              No.
            </th>
            <th scope="col">Item</th>
            <th scope="col" className="number">
              A finger
            </th>
            <th scope="col" className="number">
              A set
            </th>
            <th scope="col">Material and coating</th>
            <th scope="col">Size</th>
            <th scope="col" className="number">
              Mass of one
            </th>
          </tr>
        </thead>
        <tbody>
          {itemRows(list, units).map((row) => (
            <Row key={row.number} row={row} />
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={6}>
              A finger weighs{list.unweighed.length === 0 ? '' : ', as far as it is known'}
            </th>
            <td className="number">
              <Value value={massText(list.mass_kg)} />
            </td>
          </tr>
        </tfoot>
      </table>
      <p className="screen-only">
        <button type="button" className="plain" onClick={save}>
          Save the list for a spreadsheet
        </button>
      </p>
    </>
  )
})

function Row({ row }: { readonly row: ItemRow }) {
  return (
    <tr>
      <td className="number">{row.number}</td>
      <th scope="row">
        {row.title}
        {row.why === undefined ? null : <span className="reason">not weighed: {row.why}</span>}
      </th>
      <td className="number">{row.perFinger}</td>
      <td className="number">{row.perSet}</td>
      <td>{row.material}</td>
      <td className="needed">{row.size}</td>
      <td className="number">{row.mass === undefined ? <span className="none">–</span> : <Value value={row.mass} />}</td>
    </tr>
  )
}
