import { useMemo, useState } from 'react'
import { gaugeStudy, gaugeWorking } from '../../engine/index.ts'
import { readStudy, readTolerance, studyRows, studySentence, tableRows } from '../../report/index.ts'
import { OpenedWorking } from '../parts/opened-working.tsx'
import { ProblemList } from '../parts/refusal.tsx'
import styles from './bench/bench.module.css'

/** How much of what a gauge says is the gauge: a crossed study, pasted from a spreadsheet. */
export function GaugeSection() {
  const [text, setText] = useState('')
  const [tolerance, setTolerance] = useState('')
  return (
    <section aria-labelledby="gauge-study">
      <h2 id="gauge-study">How good is the gauge?</h2>
      <details className="screen-only">
        <summary>Paste a gauge study</summary>
        <div className={styles.entry}>
          <p className="aside">
            With its heading: part, appraiser, found. Every part is read equally often, at least twice, by everybody; one person
            alone is enough. A number without a unit is in mm.
          </p>
          <label htmlFor="study-rows" className="visually-hidden">
            Rows of the gauge study
          </label>
          <textarea id="study-rows" rows={5} value={text} onChange={({ target }) => setText(target.value)} />
          <p className={styles.field}>
            <label htmlFor="study-tolerance">Tolerance</label>
            <input
              id="study-tolerance"
              value={tolerance}
              autoComplete="off"
              onChange={({ target }) => setTolerance(target.value)}
            />
            <span className="hint">width that the gauge is to judge, such as 0.02 mm; may be left empty</span>
          </p>
        </div>
      </details>
      {text.trim() === '' ? null : <Study text={text} tolerance={tolerance} />}
    </section>
  )
}

function Study({ text, tolerance }: { readonly text: string; readonly tolerance: string }) {
  const read = useMemo(() => {
    const rows = tableRows(text)
    return rows.problems === undefined ? readStudy(rows.value) : rows
  }, [text])
  if (read.problems !== undefined) return <ProblemList file="the study" problems={read.problems} />
  const found = gaugeStudy(read.value.study)
  return (
    <>
      <OpenedWorking working={gaugeWorking(found)}>{studySentence(read.value, found, readTolerance(tolerance))}</OpenedWorking>
      <table className="rows compact">
        <thead>
          <tr>
            <th scope="col">From</th>
            <th scope="col" className="number">
              Deviation, mm
            </th>
            <th scope="col" className="number">
              Of the variance
            </th>
          </tr>
        </thead>
        <tbody>
          {studyRows(found).map(({ from, deviation, share }) => (
            <tr key={from}>
              <th scope="row">{from}</th>
              <td className="number">{deviation}</td>
              <td className="number">{share}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}
