import type { Characteristic } from '../../../engine/index.ts'
import { readCertificateEntry } from '../../../report/index.ts'
import type { AtBench } from './at-bench.ts'
import styles from './bench.module.css'
import { EntryForm, type FormField } from './entry-form.tsx'
import { keepEntry } from './who.ts'

type Key = 'coating' | 'coupons' | 'cureHeat' | 'cureTime' | 'issued' | 'note'

/** The coater's certificate of a lot: its coupons take the place of the range of the film. Only where the plan has a film. */
export function CertificateForm({ about, plan }: { readonly about: AtBench; readonly plan: readonly Characteristic[] }) {
  const { name, lot } = about
  const coatings = plan.filter(({ kind }) => kind === 'film').map(({ piece }) => piece.id)
  if (coatings.length === 0) return null
  const fields: readonly FormField<Key>[] = [
    { key: 'coating', words: 'Coating', choices: coatings, begins: coatings[0] },
    { key: 'coupons', words: 'Coupons', hint: 'every one in µm, such as 12 12.5 11' },
    { key: 'cureHeat', words: 'Cured at', hint: '°C, where it is stated' },
    { key: 'cureTime', words: 'Cured for', hint: 'minutes, where they are stated' },
    { key: 'issued', words: 'Issued on', isDay: true },
    { key: 'note', words: 'Note', isLong: true },
  ]
  return (
    <details className={`${styles.pasted} screen-only`}>
      <summary>Coater’s certificate of lot {lot.lot}</summary>
      <EntryForm
        label="Coater’s certificate"
        fields={fields}
        does="Keep the certificate"
        read={(typed) => readCertificateEntry(typed, lot.lot)}
        keep={async (entry) => {
          await keepEntry(name, entry)
          return `The certificate of ${entry.issued} is kept: sets of ${lot.lot} are judged with its coupons.`
        }}
      />
    </details>
  )
}
