import { useRef } from 'react'
import type { FigureName } from '../../../engine/index.ts'
import { readTestEntry, type TestEntry, type TestField, testKinds, testOutcomes, typedTest } from '../../../report/index.ts'
import styles from './bench.module.css'
import type { KeptTest } from './bench.ts'
import { correcting } from './correcting.ts'
import { EntryForm, type Form, type FormField } from './entry-form.tsx'
import { photoFile } from './photo-file.ts'
import { keepEntry } from './who.ts'

/** Today where the bench stands, as a field of a day has it. */
const today = (): string => new Date().toLocaleDateString('sv-SE')

interface About {
  readonly name: string
  readonly serial: string
  readonly figures: readonly FigureName[]
}

/** A test on the bench of one serial number, with a photo where there is one. */
export function TestForm(about: About) {
  return (
    <details className={`${styles.pasted} screen-only`}>
      <summary>Enter a bench test of {about.serial}</summary>
      <TestEntryForm {...about} />
    </details>
  )
}

/** Its fields, empty, or filled with the test that is corrected. */
export function TestEntryForm(about: About & { readonly corrected?: KeptTest; readonly done?: () => void }) {
  const { name, serial, figures, corrected, done } = about
  const photo = useRef<HTMLInputElement>(null)
  const form: Form<TestField, TestEntry> = {
    label: 'Bench test',
    fields: fieldsOf(figures, corrected),
    does: 'Keep the test',
    read: (typed) => readTestEntry(typed, { serial, figures }),
    keep: async (entry) => {
      const [chosen] = photo.current?.files ?? []
      const shown = chosen === undefined ? {} : { photo: chosen.name, photoFile: await photoFile(chosen) }
      await keepEntry(name, { ...entry, ...shown })
      if (photo.current) photo.current.value = ''
      done?.()
      return `${entry.test} of ${serial} is kept.`
    },
  }
  return (
    <EntryForm {...correcting(form, corrected?.id)}>
      <p className={styles.field}>
        <label htmlFor="test-photo">Photo</label>
        <input id="test-photo" ref={photo} type="file" className={styles.long} accept="image/*" capture="environment" />
      </p>
    </EntryForm>
  )
}

function fieldsOf(figures: readonly FigureName[], corrected: KeptTest | undefined): readonly FormField<TestField>[] {
  const typed = corrected === undefined ? undefined : typedTest(corrected)
  const field = (key: TestField, words: string) => ({ key, words, ...(typed && { begins: typed[key] }) })
  return [
    { begins: testKinds[0], ...field('test', 'Test'), choices: testKinds },
    { ...field('value', 'Load or cycles'), hint: 'such as 60 N; of cycles how many were run' },
    {
      begins: testOutcomes[0],
      ...field('outcome', 'Outcome'),
      choices: testOutcomes,
      hint: 'it did or did not bear, return or run it; or the value is what was measured',
    },
    { ...field('figure', 'Measured was'), options: figureOptions(figures), hint: 'the figure that it is held against' },
    { ...field('uncertainty', 'The rig leaves open'), hint: 'of a measured figure: either way, k = 2, such as 0.5 N' },
    { ...field('rig', 'Rig'), hint: 'on what it was tested' },
    { begins: today(), ...field('tested', 'Tested on'), isDay: true },
    { ...field('note', 'Note'), isLong: true },
  ]
}

const figureOptions = (figures: readonly FigureName[]) => [
  { value: '', words: 'no figure' },
  ...figures.map(({ id, title }) => ({ value: id, words: title })),
]
