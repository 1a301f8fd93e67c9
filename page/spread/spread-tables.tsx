import { memo } from 'react'
import type { DesignSpread } from '../../engine/index.ts'
import {
  adviceNotes,
  adviceRows,
  closedLines,
  failureLines,
  frictionLines,
  heldLines,
  type OpenedLine,
  offerLines,
  priceLines,
  type SpreadFigureRow,
  spreadFigureRows,
  surfaceLines,
  unreachedLines,
  type ValueText,
  wearerLines,
  yieldRows,
} from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { OpeningLines } from '../parts/opening-lines.tsx'
import { OpeningRow } from '../parts/opening-row.tsx'
import { Value } from '../parts/value.tsx'
import { useUnits } from '../state/units.ts'
import { FigureSets } from './figure-sets.tsx'
import styles from './spread.module.css'

/** Everything that a run has reached, in tables. */
export const SpreadTables = memo(function SpreadTables({ told }: { readonly told: DesignSpread }) {
  const units = useUnits()
  const advice = adviceRows(told, units)
  const notes = adviceNotes(told)
  return (
    <>
      <OpeningLines lines={unreachedLines(told)} />
      <section aria-labelledby="yields">
        <h2 id="yields">Share of sets that meets it</h2>
        <Yields told={told} />
        <OpeningLines lines={[...failureLines(told), ...wearerLines(told)]} />
      </section>
      <Listed heading="The same by surfaces" lines={surfaceLines(told)} />
      {advice.length + notes.length === 0 ? null : (
        <section aria-labelledby="changes">
          <h2 id="changes">What to change</h2>
          {advice.length === 0 ? null : <Changes rows={advice} />}
          <OpeningLines lines={notes} />
        </section>
      )}
      <Listed heading="Closed, and nothing else" lines={closedLines(told, units)} />
      <Listed heading="What the shop offers" lines={offerLines(told, units)} />
      <Listed heading="What tolerances cost" lines={priceLines(told)} />
      <section aria-labelledby="figures-over-sets">
        <h2 id="figures-over-sets">Figures over the sets</h2>
        <Figures told={told} rows={spreadFigureRows(told, units)} />
      </section>
      <Listed heading="Friction that it bears, all else as drawn" lines={frictionLines(told)} />
      <Listed heading="Held as drawn, because no tolerance is stated" lines={heldLines(told)} />
      <p className="aside">
        Seed {told.asked.seed}, {told.spread.samples.to} sets; the same seed gives the same numbers.
      </p>
    </>
  )
})

function Yields({ told }: { readonly told: DesignSpread }) {
  return (
    <table className="rows compact findings">
      <thead>
        <tr>
          <th scope="col">Required</th>
          <th scope="col" className="number">
            Met by
          </th>
          <th scope="col">19 times in 20 within</th>
          <th scope="col" className="number">
            Undecided
          </th>
          <th scope="col">Verdict</th>
        </tr>
      </thead>
      <tbody>
        {yieldRows(told).map(({ id, title, met, interval, undecided, verdict, saved, workings }) => (
          <OpeningRow
            key={id}
            {...{ head: title, columns: 5, workings }}
            below={saved === undefined ? null : <span className="reason">chance alone would need {saved} as many sets</span>}
          >
            <td className="number" data-label="Met by">
              {met}
            </td>
            <td className="needed" data-label="19 times in 20">
              {interval}
            </td>
            <td className="number" data-label={undecided === undefined ? undefined : 'Undecided'}>
              {undecided}
            </td>
            <td data-label="Verdict">
              <MarkWithWord answer={verdict} />
            </td>
          </OpeningRow>
        ))}
      </tbody>
    </table>
  )
}

function Changes({ rows }: { readonly rows: ReturnType<typeof adviceRows> }) {
  return (
    <table className="rows compact findings">
      <thead>
        <tr>
          <th scope="col">Change</th>
          <th scope="col" className="number">
            More sets that meet everything
          </th>
          <th scope="col">19 times in 20 within</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ change, gain, interval, workings }) => (
          <OpeningRow key={change} {...{ head: change, columns: 3, workings }}>
            <td className="number" data-label="More sets">
              {gain}
            </td>
            <td className="needed" data-label="19 times in 20">
              {interval}
            </td>
          </OpeningRow>
        ))}
      </tbody>
    </table>
  )
}

function Figures({ told, rows }: { readonly told: DesignSpread; readonly rows: readonly SpreadFigureRow[] }) {
  return (
    <table className="rows compact findings">
      <thead>
        <tr>
          <th scope="col">Figure, and what its variance comes from</th>
          <th scope="col" className="number">
            Median
          </th>
          <th scope="col">All but one in 740 a side</th>
          <th scope="col">Root-sum-square, ± 3 σ</th>
          <th scope="col">Worst case</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ id, title, counted, straight, worst, drivers, workings }) => (
          <OpeningRow
            key={id}
            {...{ head: title, columns: 5, workings }}
            drawing={<FigureSets told={told} id={id} />}
            below={drivers.length === 0 ? null : <span className={styles.printed}>{drivers.join('; ')}</span>}
          >
            <td className="number" data-label="Median">
              {counted === undefined ? '–' : <Value value={counted[1]} />}
            </td>
            <td data-label="1 in 740 a side">{counted === undefined ? '–' : <Between ends={[counted[0], counted[2]]} />}</td>
            <td data-label="Root-sum-square">
              <Between ends={straight} />
            </td>
            <td data-label="Worst case">
              <Between ends={worst} />
            </td>
          </OpeningRow>
        ))}
      </tbody>
    </table>
  )
}

/** From one value to another, or the words that stand in their place. */
function Between({ ends }: { readonly ends: readonly [ValueText, ValueText] | string }) {
  if (typeof ends === 'string') return <span className={styles.printed}>{ends}</span>
  const [least, most] = ends
  // A short unit stays with its number; one of several words may go on below.
  return (
    <>
      {least.number} to{' '}
      <span className={most.unit.includes(' ') ? undefined : styles.whole}>
        <Value value={most} />
      </span>
    </>
  )
}

function Listed({ heading, lines }: { readonly heading: string; readonly lines: readonly OpenedLine[] }) {
  if (lines.length === 0) return null
  return (
    <section>
      <h2>{heading}</h2>
      <OpeningLines lines={lines} />
    </section>
  )
}
