import { memo, useState } from 'react'
import { type StrengthRow, strengthPlace, strengthRows, type Told } from '../../report/index.ts'
import type { FingerSeen } from '../state/use-finger-view.ts'
import { Value } from './value.tsx'

/** Checks that are listed until somebody asks for all. */
const FIRST_ROWS = 8

/** What gives first: every check of strength in the order in which things would give way, and those that could not be worked out. */
export const GivesFirst = memo(function GivesFirst({
  evaluation,
  show,
}: { readonly evaluation: Told } & Pick<FingerSeen, 'show'>) {
  const [isWhole, setWhole] = useState(false)
  const rows = strengthRows(evaluation)
  const { open = [], ranked = [] } = evaluation.strength ?? {}
  const listed = isWhole ? rows : rows.slice(0, FIRST_ROWS)
  return (
    <section aria-labelledby="gives-first">
      <h2 id="gives-first">What gives first</h2>
      {rows.length === 0 ? (
        <p className="aside">No load presses a part whose strength could be worked out.</p>
      ) : (
        <table className="rows compact findings">
          <thead>
            <tr>
              <th scope="col">What would give way</th>
              <th scope="col">Where the margin is least</th>
              <th scope="col" className="number">
                Factor
              </th>
              <th scope="col" className="number">
                Margin
              </th>
            </tr>
          </thead>
          <tbody>
            {listed.map((row, index) => (
              <Row key={row.id} row={row} place={strengthPlace(ranked[index])} show={show} />
            ))}
          </tbody>
        </table>
      )}
      {rows.length <= FIRST_ROWS ? null : (
        <button type="button" className="plain screen-only" onClick={() => setWhole(!isWhole)}>
          {isWhole ? 'Only the first' : `All ${rows.length} checks`}
        </button>
      )}
      {open.length === 0 ? null : (
        <ul className="aside">
          {open.map(({ figure, words, why }) => (
            <li key={figure}>
              {words} cannot be worked out: {why}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
})

function Row(about: { readonly row: StrengthRow; readonly place: ReturnType<typeof strengthPlace> } & Pick<FingerSeen, 'show'>) {
  const { row, place, show } = about
  return (
    <tr>
      <th scope="row">
        {row.words}
        <span className="reason">
          {row.says}
          {row.part === undefined ? '' : `, ${row.part}`}
        </span>
      </th>
      <td data-label="Where">
        {row.under === undefined ? null : (
          <>
            {row.under.loadCase}, {row.under.doing} at <Value value={row.under.drive} />{' '}
            {place === undefined ? null : (
              <button type="button" className="plain screen-only" onClick={() => show(place)}>
                draw it
              </button>
            )}
          </>
        )}
      </td>
      <td className="number" data-label="Factor">
        <Value value={row.factor} />
      </td>
      <td className="number" data-label="Margin">
        <Value value={row.margin} />
      </td>
    </tr>
  )
}
