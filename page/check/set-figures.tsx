import type { MeasuredSpread } from '../../engine/index.ts'
import { findingRows, measuredFigureRows, type Told } from '../../report/index.ts'
import { FigureWorking } from '../parts/figure-working.tsx'
import { MarkWithWord } from '../parts/mark.tsx'
import { Value } from '../parts/value.tsx'
import { useUnits } from '../state/units.ts'

/** What is required of a measured set, what it was found to do, the range that is still open; each figure opens its working. */
export function SetFigures(about: { readonly evaluation: Told; readonly spread: MeasuredSpread | undefined }) {
  const { evaluation, spread } = about
  const units = useUnits()
  const figures = new Map(evaluation.findings.map(({ requirement, figure }) => [requirement.id, figure]))
  const ranges = new Map((spread === undefined ? [] : measuredFigureRows(spread, units)).map((row) => [row.id, row.range]))
  return (
    <table className="rows compact">
      <thead>
        <tr>
          <th scope="col">Required of it</th>
          <th scope="col" className="number">
            Found
          </th>
          <th scope="col">Nine of ten open ways</th>
          <th scope="col">Needed</th>
          <th scope="col">Verdict</th>
        </tr>
      </thead>
      <tbody>
        {findingRows(evaluation).map(({ id, title, found, needed, verdict, why }) => {
          const figure = figures.get(id)
          return (
            <tr key={id}>
              <th scope="row">
                {figure === undefined ? (
                  title
                ) : (
                  <details>
                    <summary>{title}</summary>
                    <FigureWorking design={evaluation.design} figure={figure.id} />
                  </details>
                )}
                {why === undefined ? null : <span className="reason">{why}</span>}
              </th>
              <td className="number">{found === undefined ? 'none' : <Value value={found} />}</td>
              <td>{figure === undefined ? null : ranges.get(figure.id)}</td>
              <td>{needed}</td>
              <td>
                <MarkWithWord answer={verdict} />
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
