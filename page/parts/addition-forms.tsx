import { useEffect, useId, useMemo, useState } from 'react'
import {
  type Addition,
  type AdditionKind,
  type Ask,
  additions,
  type Change,
  changeDocument,
  type Inputs,
  type Problem,
  readDesign,
  sentence,
} from '../../engine/index.ts'
import type { DesignStore } from '../state/design-store.ts'
import { propose } from '../state/proposal.ts'
import styles from './design-tables.module.css'

/** What can be added to a section; one form is open at a time. */
export function AdditionForms(about: {
  readonly store: DesignStore
  readonly text: string
  readonly kinds: readonly AdditionKind[]
  /** The part that the section is about, when it is. */
  readonly part?: string
}) {
  const { store, text, kinds, part } = about
  const [kind, setKind] = useState<AdditionKind>()
  const offered = useMemo(() => additions(text).filter((addition) => kinds.includes(addition.kind)), [text, kinds])
  const opened = offered.find((addition) => addition.kind === kind)
  const close = (): void => setKind(undefined)
  if (offered.length === 0) return null
  return (
    <div className={styles.add}>
      {opened === undefined ? (
        offered.map((addition) => (
          <button key={addition.kind} type="button" className="plain" onClick={() => setKind(addition.kind)}>
            Add {small(addition.title)} …
          </button>
        ))
      ) : (
        <AdditionForm key={opened.kind} {...{ store, text, close }} addition={opened} {...(part === undefined ? {} : { part })} />
      )}
    </div>
  )
}

interface AdditionFormProps {
  readonly store: DesignStore
  readonly text: string
  readonly addition: Addition
  readonly part?: string
  readonly close: () => void
}

/** Asks for what has to be known, shows the result in the drawing, and adds it when told so. */
function AdditionForm({ store, text, addition, part, close }: AdditionFormProps) {
  const [inputs, setInputs] = useState<Inputs>(() => firstInputs(addition, part))
  const { changes, design, problems } = useMemo(() => tried(text, addition, inputs), [text, addition, inputs])
  useEffect(() => {
    propose(design)
    return () => propose(undefined)
  }, [design])
  const add = (): void => {
    if (changes === undefined) return
    store.edit({ changes, said: `added ${small(addition.title)}: ${inputs.name ?? ''}` })
    close()
  }
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault()
        add()
      }}
    >
      <h3 className={styles.adding}>{addition.title}</h3>
      <div className={styles.fields}>
        {addition.asks.map((ask) => (
          <AskField
            key={ask.id}
            ask={ask}
            typed={inputs[ask.id] ?? ask.typed}
            type={(typed) => setInputs({ ...inputs, [ask.id]: typed })}
          />
        ))}
      </div>
      <ul className={styles.problems} aria-live="polite">
        {problems.map((problem) => (
          <li key={sentence('', problem)}>{sentence('', problem)}</li>
        ))}
      </ul>
      {design === undefined ? null : <p className="aside">The drawing shows it dashed. It is not added yet.</p>}
      <button type="submit" className="plain" disabled={changes === undefined}>
        Add it
      </button>{' '}
      <button type="button" className="plain" onClick={close}>
        Leave it
      </button>
    </form>
  )
}

function AskField(about: { readonly ask: Ask; readonly typed: string; readonly type: (typed: string) => void }) {
  const { ask, typed, type } = about
  const id = useId()
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{ask.label}</label>
      {ask.choices === undefined ? (
        <input
          id={id}
          type="text"
          value={typed}
          title={ask.needed}
          autoComplete="off"
          onChange={({ target }) => type(target.value)}
        />
      ) : (
        <select id={id} value={typed} onChange={({ target }) => type(target.value)}>
          {ask.choices.map((choice) => (
            <option key={choice} value={choice}>
              {choice}
            </option>
          ))}
        </select>
      )}
    </div>
  )
}

/** In the section of a part that part is meant. */
function firstInputs({ asks }: Addition, part: string | undefined): Inputs {
  const first = asks.map(({ id, typed, choices }) => [
    id,
    id === 'part' && part !== undefined && choices?.includes(part) ? part : typed,
  ])
  return Object.fromEntries(first)
}

interface Tried {
  /** Absent while it cannot be added. */
  readonly changes?: readonly Change[]
  readonly design?: NonNullable<ReturnType<typeof readDesign>['value']>
  readonly problems: readonly Problem[]
}

function tried(text: string, addition: Addition, inputs: Inputs): Tried {
  const { value: changes, problems } = addition.propose(inputs)
  if (changes === undefined) return { problems: problems ?? [] }
  const read = readDesign(changeDocument(text, changes))
  return read.value === undefined ? { problems: read.problems } : { changes, design: read.value, problems: [] }
}

function small(title: string): string {
  return title.charAt(0).toLowerCase() + title.slice(1)
}
