import { useState } from 'react'
import { readWithdrawal } from '../../../report/index.ts'
import { momentWords } from '../../revisions/moment-words.ts'
import type { AtBench } from './at-bench.ts'
import styles from './bench.module.css'
import type { Import } from './bench.ts'
import { EntryForm, type FormField } from './entry-form.tsx'
import { keepEntry } from './who.ts'

/** Tables that were taken in as a whole, and the way to take one back as a whole, such as one whose columns were taken wrongly. */
export function Imports({ name, lot }: Pick<AtBench, 'name' | 'lot'>) {
  const [chosen, setChosen] = useState<number>()
  if (lot.imports.length === 0) return null
  const asked = lot.imports.find(({ id, withdrawn }) => id === chosen && withdrawn === undefined)
  return (
    <details className={`${styles.pasted} screen-only`}>
      <summary>
        {lot.imports.length === 1 ? 'One table was' : `${lot.imports.length} tables were`} brought in: look, or take one back
      </summary>
      <table className="rows compact">
        <thead>
          <tr>
            <th scope="col" className="number">
              No.
            </th>
            <th scope="col">From</th>
            <th scope="col" className="number">
              Readings
            </th>
            <th scope="col">Who, when</th>
            <th scope="col">Counts</th>
          </tr>
        </thead>
        <tbody>
          {lot.imports.map((one) => (
            <Row key={one.id} one={one} take={() => setChosen(one.id)} />
          ))}
        </tbody>
      </table>
      {asked === undefined ? null : <Withdrawal key={asked.id} name={name} one={asked} />}
    </details>
  )
}

function Row({ one, take }: { readonly one: Import; readonly take: () => void }) {
  const { id, file, readings, who, made, withdrawn } = one
  return (
    <tr>
      <td className="number">{id}</td>
      <th scope="row">{withdrawn === undefined ? file : <del>{file}</del>}</th>
      <td className="number">{readings}</td>
      <td>
        {who}, {momentWords(made)}
      </td>
      <td>
        {withdrawn === undefined ? (
          <button type="button" className="plain" onClick={take}>
            Take it back
          </button>
        ) : (
          `no: ${withdrawn.reason} (${withdrawn.who}, ${momentWords(withdrawn.made)})`
        )}
      </td>
    </tr>
  )
}

const FIELDS: readonly FormField<'reason'>[] = [
  { key: 'reason', words: 'Why', isLong: true, hint: 'such as the columns were taken wrongly' },
]

function Withdrawal({ name, one: { id, file, readings } }: { readonly name: string; readonly one: Import }) {
  return (
    <EntryForm
      label={`Take back ${file}`}
      fields={FIELDS}
      does={`Take back ${readings === 1 ? 'its reading' : `all ${readings} readings`} of ${file}`}
      read={(typed) => readWithdrawal(typed, id)}
      keep={async (entry) => {
        await keepEntry(name, entry)
        return `${file} is taken back; its readings stay in the book and count no longer.`
      }}
    />
  )
}
