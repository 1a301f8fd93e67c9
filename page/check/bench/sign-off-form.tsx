import { readSignOff } from '../../../report/index.ts'
import styles from './bench.module.css'
import type { Serial } from './bench.ts'
import { EntryForm, type FormField } from './entry-form.tsx'
import { keepEntry } from './who.ts'

const FIELDS: readonly FormField<'statement'>[] = [
  { key: 'statement', words: 'You stand for', isLong: true, hint: 'in your words, such as looked through, nothing is open' },
]

/** The first article of a serial number is signed off by name and date; how it is judged now goes with it. */
export function SignOffForm({ name, serial }: { readonly name: string; readonly serial: Serial }) {
  if (serial.sheet === undefined) return null
  const judged = serial.sheet.sentence
  return (
    <details className={`${styles.pasted} screen-only`}>
      <summary>Sign off the first article {serial.serial}</summary>
      <p className="aside">With your name and today’s date stands how the set is judged now: {judged}</p>
      <EntryForm
        label="Sign-off"
        fields={FIELDS}
        does="Sign it off"
        read={(typed) => readSignOff(typed, { lot: serial.lot, serial: serial.serial, judged })}
        keep={async (entry) => {
          await keepEntry(name, entry)
          return `${serial.serial} is signed off.`
        }}
      />
    </details>
  )
}
