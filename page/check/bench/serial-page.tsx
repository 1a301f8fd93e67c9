import { type FormEvent, useState } from 'react'
import { type Characteristic, sentence } from '../../../engine/index.ts'
import { cameBackWords, certificateWords, planRows, testWords } from '../../../report/index.ts'
import { MarkWithWord } from '../../parts/mark.tsx'
import { DeedLine } from '../../revisions/deed-line.tsx'
import { momentWords } from '../../revisions/moment-words.ts'
import { useDeed } from '../../revisions/use-deed.ts'
import type { AtBench } from './at-bench.ts'
import styles from './bench.module.css'
import { benchOf, type KeptReading, type Serial, sendReadings } from './bench.ts'
import { JudgeButton } from './judge-button.tsx'
import { SignOffForm } from './sign-off-form.tsx'
import { TestForm } from './test-form.tsx'

interface OneSerial {
  readonly about: AtBench
  readonly serial: Serial
  readonly plan: readonly Characteristic[]
  readonly kept: () => void
}

/** One serial number on one page: what it will do as measured, every reading with who and when, and what else is known of it. */
export function SerialPage({ about, serial, plan, kept }: OneSerial) {
  const { sheet, problems } = serial
  return (
    <section aria-label={`Serial ${serial.serial}`}>
      <h3>
        {serial.serial}, lot {serial.lot}, revision {serial.revision}{' '}
        {sheet === undefined ? null : <MarkWithWord answer={sheet.verdict} />}
      </h3>
      {sheet === undefined ? null : <p data-testid="as-measured">{sheet.sentence}</p>}
      {problems.map((problem) => (
        <p key={sentence('', problem)} role="alert">
          {sentence('', problem)}
        </p>
      ))}
      <Readings about={about} serial={serial} plan={plan} kept={kept} />
      {serial.readings.length === 0 ? null : (
        <JudgeButton
          words={`Judge ${serial.serial} in full: yield, and what each decision comes to`}
          bench={{ design: about.name, lot: serial.lot, revision: serial.revision }}
          serials={[serial.serial]}
        />
      )}
      <Others serial={serial} photosAt={`${benchOf(about.name)}/photos`} />
      <TestForm name={about.name} serial={serial.serial} />
      <SignOffForm name={about.name} serial={serial} />
    </section>
  )
}

function Readings({ about, serial, plan, kept }: OneSerial) {
  const [corrected, setCorrected] = useState<KeptReading>()
  if (serial.readings.length === 0) return <p className="aside">Nothing was measured of it yet.</p>
  const answers = new Map(serial.sheet?.rows.map((row) => [row.id, row]))
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
          {serial.readings.map((reading) => {
            const characteristic = plan.find(({ id }) => id === reading.characteristic)
            const answer = reading.correctedBy === undefined ? answers.get(reading.characteristic) : undefined
            return (
              <tr key={reading.id}>
                <td className="number">{characteristic?.number}</td>
                <th scope="row">{characteristic === undefined ? reading.characteristic : planRows([characteristic])[0].words}</th>
                <td>{reading.correctedBy === undefined ? typedWords(reading) : <del>{typedWords(reading)}</del>}</td>
                <td>
                  {answer === undefined ? 'corrected below' : <MarkWithWord answer={answer.answer} word={answer.conformity} />}
                </td>
                <td>
                  {reading.by === undefined && reading.date === undefined ? '' : measuredWords(reading)}
                  {reading.who}, {momentWords(reading.made)}
                  {reading.gauge === undefined ? '' : `, ${reading.gauge}`}
                  {reading.file === undefined ? '' : `, from ${reading.file}`}
                  {reading.reason === undefined ? '' : `; corrects reading ${reading.corrects}: ${reading.reason}`}{' '}
                  {reading.correctedBy === undefined ? (
                    <button type="button" className="plain screen-only" onClick={() => setCorrected(reading)}>
                      Correct it
                    </button>
                  ) : null}
                </td>
              </tr>
            )
          })}
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

/** Who measured and when, where that is told beside who entered it. */
const measuredWords = ({ by, date }: KeptReading): string =>
  `measured${by === undefined ? '' : ` by ${by}`}${date === undefined ? '' : ` on ${date}`}; entered by `

const typedWords = ({ found, x, y, visit }: KeptReading): string =>
  `${found ?? (x === undefined ? 'taken back' : `x ${x}, y ${y}`)}${visit === 'finished' ? '' : `, ${visit}`}`

/** A new reading in the place of one that was wrong; both stay. */
function Correction(props: {
  readonly about: AtBench
  readonly serial: Serial
  readonly reading: KeptReading
  readonly done: () => void
}) {
  const { about, serial, reading, done } = props
  const [values, setValues] = useState({ found: '', y: '', reason: '' })
  const deed = useDeed()
  const isPlace = reading.x !== undefined
  const keep = (event: FormEvent): void => {
    event.preventDefault()
    void deed.run('being kept …', async () => {
      if (values.reason.trim() === '') throw new Error('Not kept: say why it is corrected.')
      const cells = isPlace ? ['', values.found, values.y] : [values.found, '', '']
      const row = [
        serial.serial,
        reading.characteristic,
        ...cells,
        reading.visit,
        reading.gauge ?? '',
        String(reading.id),
        values.reason,
      ]
      const heading = ['serial', 'characteristic', 'found', 'x', 'y', 'visit', 'gauge', 'corrects', 'reason']
      await sendReadings(about.name, { who: about.who, lot: serial.lot, rows: [heading, row] })
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

/** Coating, tests, decisions and signatures, oldest first. */
function Others({ serial, photosAt }: { readonly serial: Serial; readonly photosAt: string }) {
  const { certificates, tests, decisions, signOffs, field } = serial
  const lines: readonly Line[] = [
    ...certificates.map((one) => ({ ...one, words: certificateWords(one) })),
    ...tests.map(({ hasPhoto, ...one }) => ({
      ...one,
      words: testWords(one),
      ...(hasPhoto && { photo: `${photosAt}/${one.id}` }),
    })),
    ...decisions.map((one) => ({
      ...one,
      words: `Decided: ${one.decision}, because ${one.why}. As calculated: ${one.consequence}`,
    })),
    ...signOffs.map((one) => ({ ...one, words: `Signed off. ${one.statement}` })),
    ...field.map((one) => ({ ...one, words: cameBackWords(one) })),
  ].toSorted((one, other) => Date.parse(one.made) - Date.parse(other.made))
  if (lines.length === 0) return null
  return (
    <>
      <h4>Coating, tests, decisions, and what came back</h4>
      <ul className={styles.others}>
        {lines.map(({ words, who, made, photo }) => (
          <li key={`${words} ${made}`}>
            {words}{' '}
            <span className="reason">
              {who}, {momentWords(made)}
            </span>
            {photo === undefined ? null : (
              <a className={styles.photo} href={photo} download>
                <img src={photo} alt={words} loading="lazy" />
              </a>
            )}
          </li>
        ))}
      </ul>
    </>
  )
}

interface Line {
  readonly words: string
  readonly who: string
  readonly made: string
  /** Where its photo is. */
  readonly photo?: string
}
