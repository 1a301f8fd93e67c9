import { type FormEvent, useState } from 'react'
import { type HistoryRow, historyRows } from '../../../report/index.ts'
import { MarkWithWord } from '../../parts/mark.tsx'
import { DeedLine } from '../../revisions/deed-line.tsx'
import { momentWords } from '../../revisions/moment-words.ts'
import { useDeed } from '../../revisions/use-deed.ts'
import type { AtBench } from './at-bench.ts'
import styles from './bench.module.css'
import { type KeptReading, type Serial, sendReadings } from './bench.ts'
import type { OneSerial } from './one-serial.ts'

/** Every reading of a serial number with who and when; one that was corrected or taken back stays, struck. */
export function SerialReadings({ about, serial, plan, kept }: OneSerial) {
  const [corrected, setCorrected] = useState<KeptReading>()
  if (serial.readings.length === 0) return <p className="aside">Nothing was measured of it yet.</p>
  const rows = historyRows({ history: serial, plan, sheet: serial.sheet, moment: momentWords })
  return (
    <>
      <table className="rows compact">
        <thead>
          <tr>
            <th scope="col" className="number">
              No.
            </th>
            <th scope="col">Characteristic</th>
            <th scope="col">As typed</th>
            <th scope="col">Against the drawing</th>
            <th scope="col">Who, when, with what</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <Row key={row.id} row={row} correct={() => setCorrected(serial.readings[index])} />
          ))}
        </tbody>
      </table>
      {corrected === undefined ? null : (
        <Correction
          key={corrected.id}
          {...{ about, serial, reading: corrected }}
          done={() => {
            setCorrected(undefined)
            kept()
          }}
        />
      )}
    </>
  )
}

function Row({ row, correct }: { readonly row: HistoryRow; readonly correct: () => void }) {
  const { number, words, typed, isStruck, judged, answer, said } = row
  return (
    <tr>
      <td className="number">{number}</td>
      <th scope="row">{words}</th>
      <td>{isStruck ? <del>{typed}</del> : typed}</td>
      <td>{judged === undefined ? answer : <MarkWithWord {...judged} />}</td>
      <td>
        {said}{' '}
        {isStruck ? null : (
          <button type="button" className="plain screen-only" onClick={correct}>
            Correct it
          </button>
        )}
      </td>
    </tr>
  )
}

const HEADING = ['serial', 'characteristic', 'found', 'x', 'y', 'visit', 'gauge', 'corrects', 'reason']

/** A new reading in the place of one that was wrong; both stay. */
function Correction(props: {
  readonly about: AtBench
  readonly serial: Serial
  readonly reading: KeptReading
  readonly done: () => void
}) {
  const { about, serial, reading, done } = props
  const [values, setValues] = useState({ found: '', y: '', reason: '' })
  const [asked, setAsked] = useState<string>()
  const deed = useDeed()
  const isPlace = reading.x !== undefined
  const keep = (event: FormEvent): void => {
    event.preventDefault()
    void deed.run('being kept …', async () => {
      if (values.reason.trim() === '') throw new Error('Not kept: say why it is corrected.')
      const cells = isPlace ? ['', values.found, values.y] : [values.found, '', '']
      const further = [reading.visit, reading.gauge ?? '', String(reading.id), values.reason]
      const rows = [HEADING, [serial.serial, reading.characteristic, ...cells, ...further]]
      const now = cells.join(' ')
      const answer = await sendReadings(about.name, { who: about.who, lot: serial.lot, rows, asRead: asked === now })
      if ('asks' in answer) {
        setAsked(now)
        return `${answer.asks.join(' ')}. Press Enter once more if it was read so.`
      }
      done()
      return 'Corrected.'
    })
  }
  const field = (key: keyof typeof values, words: string) => (
    <>
      <label htmlFor={`correct-${key}`}>{words}</label>
      <input
        id={`correct-${key}`}
        value={values[key]}
        autoComplete="off"
        onChange={({ target }) => setValues({ ...values, [key]: target.value })}
      />
    </>
  )
  return (
    <form onSubmit={keep} className={styles.reading} aria-label="Correction" noValidate>
      <p className={styles.field}>
        {field('found', isPlace ? `x instead of ${reading.x}` : `Instead of ${reading.found}`)}
        {isPlace ? field('y', `y instead of ${reading.y}`) : null}
        {field('reason', 'Why')}
        <button type="submit" className="plain">
          Keep the correction
        </button>
      </p>
      <p className="aside">Left empty it takes the reading back.</p>
      <DeedLine {...deed} />
    </form>
  )
}
