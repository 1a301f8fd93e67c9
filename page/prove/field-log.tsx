import { type FormEvent, useState } from 'react'
import type { Book, Design } from '../../engine/index.ts'
import { fieldRows, noRisk } from '../../report/index.ts'
import { sendEntries } from '../check/bench/bench.ts'
import { DeedLine } from '../revisions/deed-line.tsx'
import { useDeed } from '../revisions/use-deed.ts'
import { goTo } from '../state/attention.ts'
import { today } from '../state/today.ts'
import { rereadKeptBook } from './kept-book.ts'
import styles from './prove.module.css'

/** Of which design, and what came back of it. */
interface FieldLogOf {
  readonly name: string
  readonly design: Design
  readonly book: Book
}

/** Returns and complaints by serial number, with the risks that they belong to, and a form for one more. */
export function FieldLog({ name, design, book }: FieldLogOf) {
  const rows = fieldRows(book.field, design)
  return (
    <>
      {rows.length === 0 ? (
        <p className="aside">Nothing has come back, as far as it was written down.</p>
      ) : (
        <table className="rows compact">
          <thead>
            <tr>
              <th scope="col">Set</th>
              <th scope="col">Told, and found</th>
              <th scope="col">Belongs to</th>
              <th scope="col">Who told it</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.id}>
                <th scope="row">
                  {row.serial}
                  <span className="reason">{row.head}</span>
                </th>
                <td data-label="Told, and found">
                  {row.told}
                  <span className="reason">
                    {row.harm}; found: {row.found ?? 'not looked at yet'}
                  </span>
                </td>
                <td data-label="Belongs to">{row.risks.length === 0 ? noRisk : row.risks.join('; ')}</td>
                <td data-label="Who told it">{row.contact}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <details className="screen-only">
        <summary>Write down what came back</summary>
        <FieldForm {...{ name, design, book }} />
      </details>
    </>
  )
}

const EMPTY = {
  serial: '',
  sort: 'complaint',
  came: '',
  told: '',
  found: '',
  harm: 'not known',
  contact: '',
  contactsIn: '',
  who: '',
}
type Typed = typeof EMPTY

const FIELDS: readonly (readonly [key: keyof Typed, words: string])[] = [
  ['serial', 'Serial number'],
  ['told', 'What was told, without names'],
  ['found', 'What you found, once you looked'],
  ['contact', 'Key of who told it, such as C-014'],
  ['contactsIn', 'Where the list of contacts is kept'],
  ['who', 'Who writes it down'],
]

function FieldForm({ name, design }: FieldLogOf) {
  const [typed, setTyped] = useState({ ...EMPTY, came: today() })
  const [risks, setRisks] = useState<readonly string[]>([])
  const deed = useDeed()
  const set = (key: keyof Typed, value: string): void => setTyped({ ...typed, [key]: value })
  const keep = (event: FormEvent): void => {
    event.preventDefault()
    void deed.run('being kept …', async () => {
      const { who, found, ...rest } = typed
      if (who.trim() === '') throw new Error('Not kept: say who writes it down.')
      const entry = { kind: 'field', ...rest, ...(found.trim() === '' ? {} : { found }), risks }
      await sendEntries(name, { who, entries: [entry] })
      await rereadKeptBook()
      setTyped({ ...typed, serial: '', told: '', found: '', contact: '' })
      setRisks([])
      return 'Kept in the field log.'
    })
  }
  return (
    <form onSubmit={keep} className={styles.field} noValidate>
      <p className="aside">
        An entry never changes. Names, addresses and telephone numbers stay outside of the store: here stand a key and where its
        list is.
      </p>
      {FIELDS.map(([key, words]) => (
        <label key={key}>
          {words} <input value={typed[key]} autoComplete="off" onChange={({ target }) => set(key, target.value)} />
        </label>
      ))}
      <label>
        Day on which it came <input type="date" value={typed.came} onChange={({ target }) => set('came', target.value)} />
      </label>
      <Choice words="What came" value={typed.sort} of={['complaint', 'return']} choose={(value) => set('sort', value)} />
      <Choice
        words="Harm"
        value={typed.harm}
        of={['not known', 'nobody hurt', 'somebody hurt']}
        choose={(value) => set('harm', value)}
      />
      <fieldset>
        <legend>Risks that it belongs to</legend>
        {design.risks.map(({ id, hazard }) => (
          <label key={id}>
            <input
              type="checkbox"
              checked={risks.includes(id)}
              onChange={({ target }) => setRisks(target.checked ? [...risks, id] : risks.filter((risk) => risk !== id))}
            />{' '}
            {hazard}
          </label>
        ))}
        <button type="button" className="plain" onClick={() => goTo('risks')}>
          None has it: write the risk down in the design first
        </button>
      </fieldset>
      <button type="submit" className="plain" disabled={deed.doing !== undefined}>
        Keep it
      </button>
      <DeedLine {...deed} />
    </form>
  )
}

function Choice(about: {
  readonly words: string
  readonly value: string
  readonly of: readonly string[]
  readonly choose: (value: string) => void
}) {
  const { words, value, of, choose } = about
  return (
    <label>
      {words}{' '}
      <select value={value} onChange={({ target }) => choose(target.value)}>
        {of.map((one) => (
          <option key={one}>{one}</option>
        ))}
      </select>
    </label>
  )
}
