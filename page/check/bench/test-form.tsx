import { useRef } from 'react'
import { readTestEntry, testKinds, testOutcomes } from '../../../report/index.ts'
import styles from './bench.module.css'
import { EntryForm, type FormField } from './entry-form.tsx'
import { photoFile } from './photo-file.ts'
import { keepEntry } from './who.ts'

/** Today where the bench stands, as a field of a day has it. */
const today = (): string => new Date().toLocaleDateString('sv-SE')

/** A test on the bench of one serial number, with a photo where there is one. */
export function TestForm({ name, serial }: { readonly name: string; readonly serial: string }) {
  const photo = useRef<HTMLInputElement>(null)
  const fields: readonly FormField<'test' | 'value' | 'outcome' | 'tested' | 'rig' | 'note'>[] = [
    { key: 'test', words: 'Test', choices: testKinds, begins: testKinds[0] },
    { key: 'value', words: 'Load or cycles', hint: 'such as 60 N; of cycles how many were run' },
    {
      key: 'outcome',
      words: 'Outcome',
      choices: testOutcomes,
      begins: testOutcomes[0],
      hint: 'it did or did not bear, return or run it; or the value is what was measured',
    },
    { key: 'rig', words: 'Rig', hint: 'on what it was tested' },
    { key: 'tested', words: 'Tested on', isDay: true, begins: today() },
    { key: 'note', words: 'Note', isLong: true },
  ]
  return (
    <details className={`${styles.pasted} screen-only`}>
      <summary>Enter a bench test of {serial}</summary>
      <EntryForm
        label="Bench test"
        fields={fields}
        does="Keep the test"
        read={(typed) => readTestEntry(typed, serial)}
        keep={async (entry) => {
          const [chosen] = photo.current?.files ?? []
          await keepEntry(
            name,
            chosen === undefined ? entry : { ...entry, photo: chosen.name, photoFile: await photoFile(chosen) },
          )
          if (photo.current) photo.current.value = ''
          return `${entry.test} of ${serial} is kept.`
        }}
      >
        <p className={styles.field}>
          <label htmlFor="test-photo">Photo</label>
          <input id="test-photo" ref={photo} type="file" className={styles.long} accept="image/*" capture="environment" />
        </p>
      </EntryForm>
    </details>
  )
}
