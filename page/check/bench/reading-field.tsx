import type { FormEvent } from 'react'
import { type Characteristic, isTakenOverPins, sentence } from '../../../engine/index.ts'
import { farOutside, isStanding, planRows, readBenchTable } from '../../../report/index.ts'
import { DeedLine } from '../../revisions/deed-line.tsx'
import { useDeed } from '../../revisions/use-deed.ts'
import { useUnits } from '../../state/units.ts'
import type { AtBench } from './at-bench.ts'
import styles from './bench.module.css'
import { type KeptReading, sendReadings } from './bench.ts'
import { type Stand, useStand } from './use-stand.ts'

const HEADING = ['serial', 'characteristic', 'found', 'x', 'y', 'visit', 'gauge']

/** One field after the other: Enter keeps a reading and goes on to the next characteristic that is still open. */
export function ReadingField(props: {
  readonly about: AtBench
  readonly serial: string
  readonly plan: readonly Characteristic[]
  readonly readings: readonly KeptReading[]
  readonly kept: () => void
}) {
  const { about, serial, plan, readings, kept } = props
  const units = useUnits()
  const deed = useDeed()
  // Films are measured on the coater's coupons, of the lot.
  const measured = plan.filter(({ kind }) => kind !== 'film')
  const isRead = (id: string): boolean => readings.some((one) => one.characteristic === id && isStanding(one))
  const stand = useStand(measured.findIndex(({ id }) => !isRead(id)))
  const characteristic = measured[stand.place]
  if (characteristic === undefined) return <p role="status">Everything of the plan is measured of {serial}.</p>
  const [row] = planRows([characteristic], units)
  const keep = (event: FormEvent): void => {
    event.preventDefault()
    if (wantsMore(stand, characteristic)) return
    void deed.run('being kept …', async () => {
      const question = await keepRow({ about, plan, asked: stand.asked, row: rowOf(serial, characteristic, stand) })
      stand.setAsked(question)
      if (question !== undefined) return question
      kept()
      stand.goTo(stand.place + 1)
      return `No. ${row.number} of ${serial} is kept.`
    })
  }
  return (
    <form onSubmit={keep} className={styles.reading} aria-label={`Readings of ${serial}`} noValidate>
      <p id="asked-for" className={styles.askedFor}>
        <span className="number">No. {row.number}</span> {row.words}: drawn {row.drawn}, allowed {row.allowed}
      </p>
      <FoundFields stand={stand} characteristic={characteristic} last={measured.length - 1} />
      <WithWhat stand={stand} characteristic={characteristic} about={about} />
      <DeedLine {...deed} />
      <p className="aside">
        {TYPING}
        {isTakenOverPins(characteristic) ? OVER_PINS : ''}
      </p>
    </form>
  )
}

const TYPING =
  'A number without a unit is in mm, an angle in degrees; a gauge that goes and one that does not are typed as 3.010 to 3.012.'

const OVER_PINS = ' A distance of holes may be typed as it was taken: 27.507 over 3 and 3, or 21.507 between 3 and 3.'

/** Of a place x and y are typed: after x the next field is that of y. */
function wantsMore({ typed, second }: Stand, { kind }: Characteristic): boolean {
  if (kind !== 'position' || typed.y !== '') return false
  second.current?.focus()
  return true
}

/** As a row of a table under `HEADING`. */
function rowOf(serial: string, { id, kind, before }: Characteristic, { typed, visit, gauge }: Stand): readonly string[] {
  const cells = kind === 'position' ? ['', typed.found, typed.y] : [typed.found, '', '']
  return [serial, id, ...cells, before ? visit : '', gauge]
}

interface Found {
  readonly stand: Stand
  readonly characteristic: Characteristic
  readonly last: number
}

function FoundFields({ stand, characteristic: { kind, place: drawn }, last }: Found) {
  const isPlace = kind === 'position'
  const from = drawn?.datum === undefined ? 'found' : `from ${drawn.datum}`
  const { place, typed, setTyped, first, second, goTo } = stand
  const field = { autoComplete: 'off', 'aria-describedby': 'asked-for' }
  return (
    <p className={styles.field}>
      <span className={styles.together}>
        <label htmlFor="found">{isPlace ? `x ${from}` : 'Found'}</label>
        <input
          {...field}
          id="found"
          ref={first}
          value={typed.found}
          onChange={({ target }) => setTyped({ ...typed, found: target.value })}
        />
      </span>
      {isPlace ? (
        <span className={styles.together}>
          <label htmlFor="found-y">y {from}</label>
          <input
            {...field}
            id="found-y"
            ref={second}
            value={typed.y}
            onChange={({ target }) => setTyped({ ...typed, y: target.value })}
          />
        </span>
      ) : null}
      <button type="submit" className="plain">
        Keep it and go on
      </button>
      <button type="button" className="plain" disabled={place === 0} onClick={() => goTo(place - 1)}>
        Back
      </button>
      <button type="button" className="plain" disabled={place === last} onClick={() => goTo(place + 1)}>
        Pass over
      </button>
    </p>
  )
}

interface With {
  readonly stand: Stand
  readonly characteristic: Characteristic
  readonly about: AtBench
}

function WithWhat({ stand, characteristic, about }: With) {
  const { gauge, setGauge, visit, setVisit } = stand
  return (
    <p className={styles.field}>
      {about.gauges.length === 0 ? null : (
        <>
          <label htmlFor="bench-gauge">Gauge</label>
          <select id="bench-gauge" value={gauge} onChange={({ target }) => setGauge(target.value)}>
            <option value="">not said</option>
            {about.gauges.map((one) => (
              <option key={one.gauge}>{one.gauge}</option>
            ))}
          </select>
        </>
      )}
      {characteristic.before === undefined ? null : (
        <>
          <label htmlFor="bench-visit">Visit</label>
          <select id="bench-visit" value={visit} onChange={({ target }) => setVisit(target.value)}>
            <option>finished</option>
            <option>before coating</option>
          </select>
        </>
      )}
    </p>
  )
}

interface TypedRow {
  readonly about: AtBench
  readonly plan: readonly Characteristic[]
  readonly row: readonly string[]
  /** What was asked about this reading already. */
  readonly asked: string | undefined
}

/** Keeps a reading. @returns what is to be asked first; undefined when it is kept */
async function keepRow({ about, plan, row, asked }: TypedRow): Promise<string | undefined> {
  if (about.who.trim() === '') throw new Error('Not kept: say who measures.')
  const rows = [HEADING, row]
  const { rows: read, problems } = readBenchTable({ rows }, { plan, gauges: about.gauges })
  if (problems.length > 0) throw new Error(problems.map((problem) => sentence('', { ...problem, place: '' })).join('\n'))
  const question = read[0].reading && farOutside(read[0].reading)
  if (question !== undefined && question !== asked) return question
  // What is far outside was asked about in this field.
  await sendReadings(about.name, { who: about.who, lot: about.lot.lot, rows, asRead: true })
  return undefined
}
