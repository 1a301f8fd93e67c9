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
import { type Proposal, propose } from '../state/proposal.ts'
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
  const offered = useMemo(() => additions(text, part).filter((addition) => kinds.includes(addition.kind)), [text, kinds, part])
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
        <AdditionForm key={opened.kind} {...{ store, text, close }} addition={opened} />
      )}
    </div>
  )
}

interface AdditionFormProps {
  readonly store: DesignStore
  readonly text: string
  readonly addition: Addition
  readonly close: () => void
}

/** Asks for what has to be known, shows the result in the drawing, and adds it when told so. */
function AdditionForm({ store, text, addition, close }: AdditionFormProps) {
  const [inputs, setInputs] = useState<Inputs>({})
  const { changes, proposed, problems } = useMemo(() => tried(text, addition, inputs), [text, addition, inputs])
  useEffect(() => {
    propose(proposed)
    return () => propose(undefined)
  }, [proposed])
  const add = (): void => {
    if (changes === undefined) return
    const name = inputs.name ?? addition.asks.find(({ id }) => id === 'name')?.typed
    store.edit({ changes, said: `added ${small(addition.title)}${name === undefined ? '' : `: ${name}`}` })
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
      {proposed === undefined ? null : <p className="aside">The drawing shows it. It is not added yet.</p>}
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

interface Tried {
  /** Absent while it cannot be added. */
  readonly changes?: readonly Change[]
  readonly proposed?: Proposal
  readonly problems: readonly Problem[]
}

function tried(text: string, addition: Addition, inputs: Inputs): Tried {
  const { value: changes, problems } = addition.propose(inputs)
  if (changes === undefined) return { problems: problems ?? [] }
  const changed = changeDocument(text, changes)
  const read = readDesign(changed)
  if (read.value === undefined) return { problems: read.problems }
  return { changes, proposed: { design: read.value, text: changed }, problems: [] }
}

function small(title: string): string {
  return title.charAt(0).toLowerCase() + title.slice(1)
}
