import { readGaugeEntry, sizeText } from '../../../report/index.ts'
import { useUnits } from '../../state/units.ts'
import styles from './bench.module.css'
import type { Gauge } from './bench.ts'
import { EntryForm, type FormField } from './entry-form.tsx'
import { keepEntry } from './who.ts'

const FIELDS: readonly FormField<'gauge' | 'resolution' | 'uncertainty' | 'calibrated'>[] = [
  { key: 'gauge', words: 'Gauge', hint: 'such as caliper 1; the same name again is its next calibration' },
  { key: 'resolution', words: 'Shows steps of', hint: 'such as 0.01 mm' },
  { key: 'uncertainty', words: 'Leaves open', hint: 'either way, k = 2, from its certificate' },
  { key: 'calibrated', words: 'Calibrated on', isDay: true },
]

/** Gauges of the bench since their last calibration, and the form for the next. */
export function Gauges({ name, gauges }: { readonly name: string; readonly gauges: readonly Gauge[] }) {
  return (
    <details className={`${styles.pasted} screen-only`}>
      <summary>
        {gauges.length === 0 ? 'Gauges: none is entered' : `Gauges: ${gauges.map(({ gauge }) => gauge).join(', ')}`}
      </summary>
      {gauges.length === 0 ? null : <Rows gauges={gauges} />}
      <EntryForm
        label="Gauge"
        fields={FIELDS}
        does="Keep the gauge"
        read={readGaugeEntry}
        keep={async (entry) => {
          await keepEntry(name, entry)
          return `${entry.gauge} is kept as calibrated on ${entry.calibrated}.`
        }}
      />
    </details>
  )
}

function Rows({ gauges }: { readonly gauges: readonly Gauge[] }) {
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
        </tr>
      </thead>
      <tbody>
        {gauges.map(({ gauge, resolution_mm, uncertainty_mm, calibrated }) => (
          <tr key={gauge}>
            <th scope="row">{gauge}</th>
            <td>{size(resolution_mm)}</td>
            <td>{size(uncertainty_mm)}</td>
            <td>{calibrated}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
