import type { Characteristic } from '../../../engine/index.ts'
import { type CertificateEntry, type CertificateField, readCertificateEntry, typedCertificate } from '../../../report/index.ts'
import styles from './bench.module.css'
import type { KeptCertificate } from './bench.ts'
import { correcting } from './correcting.ts'
import { EntryForm, type Form, type FormField } from './entry-form.tsx'
import { keepEntry } from './who.ts'

interface About {
  readonly name: string
  readonly lot: string
  readonly plan: readonly Characteristic[]
}

/** The coater's certificate of a lot: its coupons take the place of the range of the film. Only where the plan has a film. */
export function CertificateForm(about: About) {
  if (!about.plan.some(({ kind }) => kind === 'film')) return null
  return (
    <details className={`${styles.pasted} screen-only`}>
      <summary>Coater’s certificate of lot {about.lot}</summary>
      <CertificateEntryForm {...about} />
    </details>
  )
}

/** Its fields, empty, or filled with the certificate that is corrected. */
export function CertificateEntryForm(about: About & { readonly corrected?: KeptCertificate; readonly done?: () => void }) {
  const { name, lot, plan, corrected, done } = about
  const coatings = plan.filter(({ kind }) => kind === 'film').map(({ piece }) => piece.id)
  const typed = corrected === undefined ? undefined : typedCertificate(corrected)
  const field = (key: CertificateField, words: string) => ({ key, words, ...(typed && { begins: typed[key] }) })
  const fields: readonly FormField<CertificateField>[] = [
    { begins: coatings[0], ...field('coating', 'Coating'), choices: coatings },
    { ...field('coupons', 'Coupons'), hint: 'every one in µm, such as 12 12.5 11' },
    { ...field('cureHeat', 'Cured at'), hint: '°C, where it is stated' },
    { ...field('cureTime', 'Cured for'), hint: 'minutes, where they are stated' },
    { ...field('issued', 'Issued on'), isDay: true },
    { ...field('note', 'Note'), isLong: true },
  ]
  const form: Form<CertificateField, CertificateEntry> = {
    label: 'Coater’s certificate',
    fields,
    does: 'Keep the certificate',
    read: (said) => readCertificateEntry(said, lot),
    keep: async (entry) => {
      await keepEntry(name, entry)
      done?.()
      return `The certificate of ${entry.issued} is kept: sets of ${lot} are judged with its coupons.`
    },
  }
  return <EntryForm {...correcting(form, corrected?.id)} />
}
