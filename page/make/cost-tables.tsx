import { memo, useMemo } from 'react'
import { costWorkings, type Design, type DesignSpread } from '../../engine/index.ts'
import { costTable, countedCost, countedCostRow, USUAL_BATCHES } from '../../report/index.ts'
import { CostRow } from './cost-row.tsx'
import styles from './make.module.css'

/** What a set costs in batches of several sizes, and where it comes from; each number opens its working. */
export const CostTables = memo(function CostTables(about: {
  readonly design: Design
  /** The sets of this very design, where they are counted. */
  readonly counted: DesignSpread | undefined
}) {
  const { design, counted } = about
  const table = useMemo(() => costTable(design), [design])
  const workings = useMemo(
    () => (design.making === undefined ? undefined : costWorkings(design, design.making, USUAL_BATCHES)),
    [design],
  )
  const scrap = useMemo(() => counted && countedCost(design, counted), [design, counted])
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
              <CostRow
                words="A set costs"
                cells={table.batches.map(({ perSet }) => perSet)}
                working={workings?.get('perSet')}
                batches={USUAL_BATCHES}
              />
              <CostRow
                words="The batch costs, to be paid before the first set is sold"
                cells={table.batches.map(({ total }) => total)}
                working={workings?.get('total')}
                batches={USUAL_BATCHES}
              />
              {scrap === undefined ? null : <CostRow {...countedCostRow(scrap)} working={undefined} batches={USUAL_BATCHES} />}
              <CostRow
                words="Fingers made"
                cells={table.batches.map(({ made }) => String(made))}
                working={workings?.get('made')}
                batches={USUAL_BATCHES}
              />
              {table.pays === undefined ? null : (
                <CostRow words="Pays for itself" cells={table.pays} working={workings?.get('pays')} batches={USUAL_BATCHES} />
              )}
              <tr>
                <th scope="rowgroup" colSpan={1 + USUAL_BATCHES.length}>
                  <span className="reason">of which, in one set:</span>
                </th>
              </tr>
              {table.sources.map(({ id, words, perSet }) => (
                <CostRow key={id} words={words} cells={perSet} working={workings?.get(id)} batches={USUAL_BATCHES} />
              ))}
            </tbody>
          </table>
          {scrap === undefined ? (
            <p className="aside">
              The share of good fingers is the one that the design states. Count sets in Spread, and what a set costs with the
              scrap that was counted stands here too.
            </p>
          ) : null}
          {table.lacks === undefined ? null : <p className="aside">{table.lacks}</p>}
        </>
      )}
    </section>
  )
})
