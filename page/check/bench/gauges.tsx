import { useState } from 'react'
import { calibrationSaid, type GaugeEntry, type GaugeField, readGaugeEntry, sizeText, typedGauge } from '../../../report/index.ts'
import { momentWords } from '../../revisions/moment-words.ts'
import { useUnits } from '../../state/units.ts'
import styles from './bench.module.css'
import type { Gauge } from './bench.ts'
import { correcting } from './correcting.ts'
import { EntryForm, type Form } from './entry-form.tsx'
import { keepEntry } from './who.ts'

interface About {
  readonly name: string
  readonly gauges: readonly Gauge[]
  readonly calibrations: readonly Gauge[]
}

/** Gauges of the bench since their last calibration, the form for the next, and what was before. */
export function Gauges({ name, gauges, calibrations }: About) {
  const [chosen, setChosen] = useState<Gauge>()
  const isMore = calibrations.length > gauges.length
  return (
    <details className={`${styles.pasted} screen-only`}>
      <summary>
        {gauges.length === 0 ? 'Gauges: none is entered' : `Gauges: ${gauges.map(({ gauge }) => gauge).join(', ')}`}
      </summary>
      {gauges.length === 0 ? null : <Rows gauges={gauges} correct={setChosen} />}
      {isMore ? (
        <details>
          <summary>Every calibration, those that were corrected too</summary>
          <Rows gauges={calibrations} />
        </details>
      ) : null}
      <GaugeForm key={chosen?.id} name={name} corrected={chosen} done={() => setChosen(undefined)} />
    </details>
  )
}

/** A gauge, or its next calibration; or what stands in the place of one that was entered wrongly. */
function GaugeForm(about: { readonly name: string; readonly corrected: Gauge | undefined; readonly done: () => void }) {
  const { name, corrected, done } = about
  const typed = corrected === undefined ? undefined : typedGauge(corrected)
  const field = (key: GaugeField, words: string) => ({ key, words, ...(typed && { begins: typed[key] }) })
  const form: Form<GaugeField, GaugeEntry> = {
    label: 'Gauge',
    fields: [
      { ...field('gauge', 'Gauge'), hint: 'such as caliper 1; the same name again is its next calibration' },
      { ...field('resolution', 'Shows steps of'), hint: 'such as 0.01 mm' },
      { ...field('uncertainty', 'Leaves open'), hint: 'either way, k = 2, from its certificate' },
      { ...field('calibrated', 'Calibrated on'), isDay: true },
    ],
    does: 'Keep the gauge',
    read: readGaugeEntry,
    keep: async (entry) => {
      await keepEntry(name, entry)
      done()
      return `${entry.gauge} is kept as calibrated on ${entry.calibrated}.`
    },
  }
  return <EntryForm {...correcting(form, corrected?.id)} />
}

function Rows({ gauges, correct }: { readonly gauges: readonly Gauge[]; readonly correct?: (gauge: Gauge) => void }) {
  const units = useUnits()
  const size = (value_mm: number): string => {
    const { number, unit } = sizeText(value_mm, 'mm', units)
    return `${number} ${unit}`
  }
  return (
    <table className="rows compact">
      <thead>
        <tr>
          <th scope="col">Gauge</th>
          <th scope="col">Shows steps of</th>
          <th scope="col">Leaves open, either way</th>
          <th scope="col">Calibrated on</th>
          <th scope="col">Who, when</th>
        </tr>
      </thead>
      <tbody>
        {gauges.map((one) => (
          <tr key={one.id}>
            <th scope="row">{one.correctedBy === undefined ? one.gauge : <del>{one.gauge}</del>}</th>
            <td className={styles.whole}>{size(one.resolution_mm)}</td>
            <td className={styles.whole}>{size(one.uncertainty_mm)}</td>
            <td className={styles.whole}>{one.calibrated}</td>
            <td>
              {calibrationSaid(one, momentWords)}{' '}
              {correct === undefined ? null : (
                <button type="button" className="plain" onClick={() => correct(one)}>
                  Correct it
                </button>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
