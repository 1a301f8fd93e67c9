import { memo, useMemo } from 'react'
import { lotWorking } from '../../engine/index.ts'
import { drawRun, drawSteps, figureUnitOf, lotRows, studiedLots, svgText } from '../../report/index.ts'
import { OpenedWorking } from '../parts/opened-working.tsx'
import { useUnits } from '../state/units.ts'
import styles from './check.module.css'
import type { PageSet } from './readings.ts'

/** What the sets, in the order in which they stand in the file, say of the process that made them. */
export const LotSection = memo(function LotSection({ sets }: { readonly sets: readonly PageSet[] }) {
  const units = useUnits()
  const lots = useMemo(() => studiedLots(sets), [sets])
  if (lots.length === 0) return null
  return (
    <section aria-labelledby="lot">
      <h2 id="lot">The lot</h2>
      <p className="aside">
        Cpk goes by the step from one piece to the next, Ppk by all pieces together; in brackets where the true one lies, 95 %
        sure.
      </p>
      <table className="rows compact">
        <thead>
          <tr>
            <th scope="col" className="number">
              No.
            </th>
            <th scope="col">Characteristic</th>
            <th scope="col" className="number">
              Read
            </th>
            <th scope="col">Mean, deviation</th>
            <th scope="col">Cp, Cpk</th>
            <th scope="col">Pp, Ppk</th>
            <th scope="col">95 % of pieces, 95 % sure</th>
          </tr>
        </thead>
        <tbody>
          {lotRows(lots, units).map((row) => (
            <tr key={row.words}>
              <td className="number">{row.number}</td>
              <th scope="row" className={styles.what}>
                {row.words}
                {row.told === '' ? null : <span className="reason">{row.told}</span>}
              </th>
              <td className="number">{row.count}</td>
              <td className={styles.pair}>{`${row.mean}\n${row.deviation}`}</td>
              <td className={styles.pair}>{`${row.cp}\n${row.cpk}`}</td>
              <td className={styles.pair}>{`${row.pp}\n${row.ppk}`}</td>
              <td className={styles.pair}>{row.interval.replace(' to ', ' to\n')}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <details>
        <summary>Readings in their order, and how the numbers come about</summary>
        <p className="aside">
          Above the readings, below the step from each to the next. Thin lines: what chance explains, by the moving range; between
          them the mean. Dashed: what the drawing allows. Ringed: not chance alone.
        </p>
        <div className={styles.drawings}>
          {lots.map((lot) => {
            const drawn = [drawRun(lot), drawSteps(lot)].flatMap((one) => one ?? [])
            return drawn.length === 0 ? null : (
              <figure key={lot.words} className={styles.run}>
                <figcaption>
                  <OpenedWorking working={lotWorking(lot.study, figureUnitOf(lot.unit))}>{lot.words}</OpenedWorking>
                </figcaption>
                <div dangerouslySetInnerHTML={{ __html: drawn.map(svgText).join('') }} />
              </figure>
            )
          })}
        </div>
      </details>
    </section>
  )
})
