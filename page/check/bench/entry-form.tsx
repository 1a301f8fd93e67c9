import { type FormEvent, type ReactNode, useId, useRef, useState } from 'react'
import { type Checked, type Problem, sentence } from '../../../engine/index.ts'
import type { TypedFields } from '../../../report/index.ts'
import { DeedLine } from '../../revisions/deed-line.tsx'
import { useDeed } from '../../revisions/use-deed.ts'
import styles from './bench.module.css'

/** One field of a form. */
export interface FormField<Key extends string> {
  readonly key: Key
  readonly words: string
  /** What can be chosen; without any it is typed. */
  readonly choices?: readonly string[]
  /** The same where what is shown is another than what is meant. */
  readonly options?: readonly { readonly value: string; readonly words: string }[]
  readonly isDay?: true
  /** For words that need more room than a number. */
  readonly isLong?: true
  /** What stands in it at first. */
  readonly begins?: string
  readonly hint?: string
}

/** A form: what is typed, how it is read, and what becomes of it. */
export interface Form<Key extends string, Entry> {
  /** What the form is about, for those who cannot see it. */
  readonly label: string
  readonly fields: readonly FormField<Key>[]
  /** On the button. */
  readonly does: string
  readonly read: (typed: TypedFields<Key>) => Checked<Entry>
  /** @returns what was done, in words */
  readonly keep: (entry: Entry) => Promise<string>
  /** Stands above the button. */
  readonly children?: ReactNode
}

/** A short form for the bench: problems stand beside their field, and Enter keeps it. */
export function EntryForm<Key extends string, Entry>({ label, fields, does, read, keep, children }: Form<Key, Entry>) {
  const begins = Object.fromEntries(fields.map(({ key, begins: text = '' }) => [key, text])) as Record<Key, string>
  const [typed, setTyped] = useState<TypedFields<Key>>(begins)
  const [problems, setProblems] = useState<readonly Problem[]>([])
  const deed = useDeed()
  const form = useRef<HTMLFormElement>(null)
  const goTo = (key: string): void => form.current?.querySelector<HTMLElement>(`[name="${key}"]`)?.focus()
  const submit = (event: FormEvent): void => {
    event.preventDefault()
    const entry = read(typed)
    setProblems(entry.problems ?? [])
    if (entry.problems !== undefined) goTo(entry.problems[0].place)
    else
      void deed.run('being kept …', async () => {
        const said = await keep(entry.value)
        setTyped(begins)
        goTo(fields[0].key)
        return said
      })
  }
  return (
    <form ref={form} onSubmit={submit} className={styles.entry} aria-label={label} noValidate>
      {fields.map((field) => (
        <Field
          key={field.key}
          field={field}
          value={typed[field.key]}
          problem={problems.find(({ place }) => place === field.key)}
          put={(text) => setTyped({ ...typed, [field.key]: text })}
        />
      ))}
      {children}
      <button type="submit" className="plain" disabled={deed.doing !== undefined}>
        {does}
      </button>
      <DeedLine {...deed} />
    </form>
  )
}

function Field(props: {
  readonly field: FormField<string>
  readonly value: string
  readonly problem: Problem | undefined
  readonly put: (text: string) => void
}) {
  const { field, value, problem, put } = props
  const id = useId()
  const options = field.options ?? field.choices?.map((choice) => ({ value: choice, words: choice }))
  const said = {
    id,
    name: field.key,
    value,
    'aria-invalid': problem !== undefined,
    'aria-describedby': `${id}-said`,
    onChange: ({ target }: { readonly target: { readonly value: string } }) => put(target.value),
  }
  return (
    <p className={styles.field}>
      <label htmlFor={id}>{field.words}</label>
      {options !== undefined ? (
        <select {...said}>
          {options.map((one) => (
            <option key={one.value} value={one.value}>
              {one.words}
            </option>
          ))}
        </select>
      ) : (
        <input {...said} type={field.isDay ? 'date' : 'text'} className={field.isLong ? styles.long : ''} autoComplete="off" />
      )}
      <span id={`${id}-said`} className={problem === undefined ? 'hint' : styles.wrong}>
        {problem === undefined ? field.hint : sentence('', { ...problem, place: '' })}
      </span>
    </p>
  )
}
