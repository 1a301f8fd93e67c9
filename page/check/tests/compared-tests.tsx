import { useState } from 'react'
import { adoptFriction, type BenchTest, type Design } from '../../../engine/index.ts'
import { fittedLines, testedRows } from '../../../report/index.ts'
import { MarkWithWord } from '../../parts/mark.tsx'
import { RunLine } from '../../parts/run-line.tsx'
import type { DesignStore } from '../../state/design-store.ts'
import { useUnits } from '../../state/units.ts'
import styles from '../bench/bench.module.css'
import check from '../check.module.css'
import { type Compared, comparing } from './comparing.ts'

interface Comparing {
  readonly store: DesignStore
  readonly design: Design
  readonly text: string
  readonly tests: readonly BenchTest[]
  /** Where the tests come from, in words. */
  readonly from: string
}

/** Tests beside what the model claims, and the friction that they speak of; it is adopted as any edit is. */
export function ComparedTests({ store, design, text, tests, from }: Comparing) {
  const run = comparing.use()
  const [pair, setPair] = useState('')
  const reached = run?.reached
  return (
    <>
      <h3>Against the prediction</h3>
      <p className={`${styles.entry} ${styles.field} screen-only`}>
        <label htmlFor="fit-pair">Friction of</label>
        <select id="fit-pair" value={pair} onChange={({ target }) => setPair(target.value)}>
          <option value="">nothing is fitted</option>
          {design.frictionPairs.map(({ name }) => (
            <option key={name}>{name}</option>
          ))}
        </select>
      </p>
      <RunLine
        run={run}
        text={text}
        begin={() => comparing.begin({ text, tests, pair: pair === '' ? undefined : pair })}
        stop={comparing.stop}
      />
      {reached === undefined ? null : (
        <>
          <Rows reached={reached} />
          <Fitted {...{ store, reached, from }} />
        </>
      )}
    </>
  )
}

function Rows({ reached: { compared } }: { readonly reached: Compared }) {
  const units = useUnits()
  return (
    <table className={`rows compact ${check.wrapping}`}>
      <thead>
        <tr>
          <th scope="col">Test</th>
          <th scope="col">Found</th>
          <th scope="col">Predicted</th>
          <th scope="col">Claimed, least to most friction</th>
          <th scope="col">Found over predicted</th>
          <th scope="col">Verdict</th>
        </tr>
      </thead>
      <tbody>
        {testedRows(compared, units).map(
          ({ number, serial, title, found, predicted, claimed, ratio = 'none', answer, words }) => (
            <tr key={number}>
              <th scope="row">
                {serial}
                <span className="reason">{title}</span>
              </th>
              <td>{found}</td>
              <td>{predicted}</td>
              <td>{claimed}</td>
              <td>{ratio}</td>
              <td>
                <MarkWithWord answer={answer} word={words} />
              </td>
            </tr>
          ),
        )}
      </tbody>
    </table>
  )
}

function Fitted({ store, reached: { fitted }, from }: Pick<Comparing, 'store' | 'from'> & { readonly reached: Compared }) {
  const [adopted, setAdopted] = useState('')
  if (fitted === undefined) return null
  const changes = adoptFriction(fitted, `from ${from}`)
  const adopt = (): void => {
    if (changes === undefined) return
    store.edit({ changes, said: `friction of ${fitted.pair.name} as the bench found it` })
    setAdopted(`The design has it now, with where it is from; undoing takes it back.`)
  }
  return (
    <>
      <h3>Friction of {fitted.pair.name}</h3>
      <ul>
        {fittedLines(fitted).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {changes === undefined ? null : (
        <button type="button" className="plain screen-only" onClick={adopt}>
          Adopt it
        </button>
      )}
      <p role="status">{adopted}</p>
    </>
  )
}
