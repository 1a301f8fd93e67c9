import { useState } from 'react'
import type { CostWorking } from '../../engine/index.ts'
import { writtenCostWorking } from '../../report/index.ts'
import { Formula } from '../parts/formula.tsx'
import opened from '../parts/opener.module.css'
import { Opener } from '../parts/opener.tsx'
import styles from '../parts/working.module.css'
import { goTo } from '../state/attention.ts'

/** One row of the cost table with a column a batch; it opens its working. */
export function CostRow(about: {
  readonly words: string
  /** One for each batch, or words that stand over all of them. */
  readonly cells: readonly string[] | string
  /** Sets in each batch. */
  readonly batches: readonly number[]
  readonly working: CostWorking | undefined
}) {
  const { words, cells, batches, working } = about
  const [isOpen, setOpen] = useState(false)
  return (
    <>
      <tr>
        <th scope="row">
          {working === undefined ? words : <Opener words={words} isOpen={isOpen} toggle={() => setOpen(!isOpen)} />}
        </th>
        {typeof cells === 'string' ? (
          <td colSpan={batches.length}>{cells}</td>
        ) : (
          batches.map((sets, column) => (
            <td key={sets} className="number">
              {cells[column]}
            </td>
          ))
        )}
      </tr>
      {isOpen && working !== undefined ? (
        <tr className={opened.open}>
          <td colSpan={1 + batches.length}>
            <CostWorkingShown working={working} />
          </td>
        </tr>
      ) : null}
    </>
  )
}

function CostWorkingShown({ working }: { readonly working: CostWorking }) {
  const { method, formula, inputs, heads, steps, source } = writtenCostWorking(working)
  return (
    <div className={styles.working}>
      <p>{method}</p>
      <Formula formula={formula} />
      {inputs.length === 0 ? null : (
        <table className={styles.values}>
          <caption>From</caption>
          <tbody>
            {inputs.map(({ name, value, place }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td className="number">{value}</td>
                <td className={styles.from}>{place === undefined ? 'counted in the design' : <Place place={place} />}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <table className={styles.values}>
        <caption>Steps</caption>
        <thead>
          <tr>
            <td />
            {heads.map((head) => (
              <th key={head} scope="col" className="number">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {steps.map(({ name, cells }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {heads.map((head, column) => (
                <td key={head} className="number">
                  {cells[column]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p className={styles.source}>Source: {source}</p>
    </div>
  )
}

/** Leads to where it stands in the design. */
function Place({ place }: { readonly place: string }) {
  return (
    <button type="button" className="plain" onClick={() => goTo(place)}>
      {place}
    </button>
  )
}
