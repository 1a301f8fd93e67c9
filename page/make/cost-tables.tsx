import { memo, useMemo } from 'react'
import type { Design } from '../../engine/index.ts'
import { costTable } from '../../report/index.ts'
import { goTo } from '../state/attention.ts'
import styles from './make.module.css'

/** What a set costs in batches of several sizes, and where it comes from; each source leads to its place in the design. */
export const CostTables = memo(function CostTables({ design }: { readonly design: Design }) {
  const table = useMemo(() => costTable(design), [design])
  const sets = table?.batches.map((batch) => batch.sets) ?? []
  return (
    <section aria-labelledby="cost">
      <h2 id="cost">What a set costs</h2>
      {table === undefined ? (
        <p className="aside">
          The design states no prices. Orders, bought items and making, at the end of its values, are where they stand.
        </p>
      ) : (
        <>
          <p className="aside">
            In {table.currency}. Set-up is paid once a batch; work by hand takes less time with every finger; fingers that cannot
            be sold are paid by the others.
          </p>
          <table className={`rows compact ${styles.costs}`}>
            <thead>
              <tr>
                <th scope="col">Sets in the batch</th>
                {table.batches.map(({ sets }) => (
                  <th key={sets} scope="col" className="number">
                    {sets}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              <Figures sets={sets} words="A set costs" cells={table.batches.map(({ perSet }) => perSet)} />
              <Figures
                sets={sets}
                words="The batch costs, to be paid before the first set is sold"
                cells={table.batches.map(({ total }) => total)}
              />
              <Figures sets={sets} words="Fingers made" cells={table.batches.map(({ made }) => String(made))} />
              <tr>
                <th scope="rowgroup" colSpan={1 + table.batches.length}>
                  <span className="reason">of which, in one set:</span>
                </th>
              </tr>
              {table.sources.map(({ id, words, perSet }) => (
                <Figures key={id} sets={sets} words={words} cells={perSet} place={id === 'scrap' ? 'making.goodShare' : id} />
              ))}
            </tbody>
          </table>
        </>
      )}
    </section>
  )
})

/** One row with a column a batch. */
function Figures(about: {
  readonly words: string
  readonly sets: readonly number[]
  readonly cells: readonly string[]
  readonly place?: string
}) {
  const { words, sets, cells, place } = about
  return (
    <tr>
      <th scope="row">
        {place === undefined ? (
          words
        ) : (
          <button type="button" className="plain" onClick={() => goTo(place)}>
            {words}
          </button>
        )}
      </th>
      {sets.map((count, column) => (
        <td key={count} className="number">
          {cells[column]}
        </td>
      ))}
    </tr>
  )
}
