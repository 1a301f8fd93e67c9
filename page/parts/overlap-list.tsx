import { memo } from 'react'
import { overlapRows, type Told } from '../../report/index.ts'
import { Value } from './value.tsx'

/** Parts that run into each other: which, where in the travel, by how much. One click shows the place where it is worst. */
export const OverlapList = memo(function OverlapList(about: {
  readonly evaluation: Told
  readonly point: (arc_ratio: number) => void
}) {
  const rows = overlapRows(about.evaluation)
  if (rows.length === 0) return null
  return (
    <section aria-labelledby="overlaps">
      <h2 id="overlaps">Parts that run into each other</h2>
      <table className="rows">
        <thead>
          <tr>
            <th scope="col">Parts</th>
            <th scope="col">They meet at</th>
            <th scope="col">Deepest at</th>
            <th scope="col" className="number">
              By
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, parts, first, deepest, depth }) => (
            <tr key={id}>
              <th scope="row">{parts}</th>
              <td>{first.words}</td>
              <td>
                <button type="button" className="plain" onClick={() => about.point(deepest.arc_ratio)}>
                  {deepest.words}
                </button>
              </td>
              <td className="number">
                <Value value={depth} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="aside">
        Where two parts lie in the same place the drawing hatches it closely. Press a place to see it there.
      </p>
    </section>
  )
})
