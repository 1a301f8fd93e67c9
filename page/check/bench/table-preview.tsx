import { useMemo, useState } from 'react'
import { type Characteristic, sentence } from '../../../engine/index.ts'
import {
  farOutsideRows,
  guessColumns,
  guessDecimal,
  type NamedColumns,
  type ReadBenchTable,
  readBenchTable,
  type TableRows,
} from '../../../report/index.ts'
import { DeedLine } from '../../revisions/deed-line.tsx'
import { useDeed } from '../../revisions/use-deed.ts'
import type { AtBench } from './at-bench.ts'
import styles from './bench.module.css'
import { sendReadings } from './bench.ts'
import { ColumnTable } from './column-table.tsx'

/** A table before it is kept: which column is what, what can be read of it, and what stands in the way. */
export function TablePreview(props: {
  readonly about: AtBench
  readonly plan: readonly Characteristic[]
  readonly rows: TableRows
  readonly file: string
  readonly kept: (count: number) => void
}) {
  const { about, plan, rows, file, kept } = props
  const [named, setNamed] = useState<NamedColumns>(() => guessColumns(rows[0] ?? []))
  const [decimal, setDecimal] = useState(() => guessDecimal(rows, named))
  const read = useMemo(
    () => readBenchTable({ rows, named, decimal }, { plan, gauges: about.gauges }),
    [rows, named, decimal, plan, about.gauges],
  )
  const far = useMemo(() => farOutsideRows(read.rows), [read])
  const [asked, setAsked] = useState<readonly string[]>()
  const deed = useDeed()
  const take = (): void => {
    if (far.length > 0 && asked !== far) {
      setAsked(far)
      return
    }
    void deed.run('being kept …', async () => {
      if (about.who.trim() === '') throw new Error('Nothing was kept: say who measures.')
      const sent = { who: about.who, lot: about.lot.lot, rows, named, decimal, file, asRead: asked === far }
      const answer = await sendReadings(about.name, sent)
      if ('asks' in answer) throw new Error(`Nothing was kept: were these read so? ${answer.asks.join('; ')}`)
      kept(answer.kept)
      return ''
    })
  }
  const isAsked = far.length > 0 && asked === far
  return (
    <section aria-label="Before it is kept" className={styles.preview}>
      <ColumnTable rows={rows} named={named} setNamed={setNamed} />
      <p className={styles.field}>
        <label htmlFor="decimal">Decimals</label>
        <select id="decimal" value={decimal} onChange={({ target }) => setDecimal(target.value === 'comma' ? 'comma' : 'point')}>
          <option value="point">with a point, 24.507</option>
          <option value="comma">with a comma, 24,507</option>
        </select>
      </p>
      <Outcome read={read} file={file} />
      {isAsked ? <Lines words="Were these read so?" lines={far} /> : null}
      {read.problems.length > 0 ? null : (
        <p className={styles.field}>
          <button type="button" className="plain" disabled={deed.doing !== undefined} onClick={take}>
            {isAsked ? 'Keep them, they were read so' : `Keep ${countWords(read.rows.length)}`}
          </button>
        </p>
      )}
      <DeedLine {...deed} />
    </section>
  )
}

const countWords = (count: number): string => (count === 1 ? 'this reading' : `these ${count} readings`)

/** What would be kept, or everything that keeps it from being kept. */
function Outcome({ read, file }: { readonly read: ReadBenchTable; readonly file: string }) {
  const { rows, problems, passedOver } = read
  const sets = new Set(rows.map(({ serial }) => serial)).size
  if (problems.length > 0) {
    const words = `Nothing of ${file} can be kept: ${problems.length === 1 ? 'one problem' : `${problems.length} problems`}.`
    return <Lines words={words} lines={problems.map((problem) => sentence('', problem))} />
  }
  return (
    <p role="status">
      {rows.length === 1 ? 'One reading' : `${rows.length} readings`} of {sets === 1 ? 'one set' : `${sets} sets`} can be kept.
      {passedOver.length === 0 ? '' : ` Nothing is taken from: ${passedOver.join(', ')}.`}
    </p>
  )
}

/** Lines that are shown at once: nobody mends more of them before looking again. */
const LINES_most = 20

function Lines({ words, lines }: { readonly words: string; readonly lines: readonly string[] }) {
  const more = lines.length - LINES_most
  return (
    <div role="alert">
      <p>{words}</p>
      <ul>
        {[...new Set(lines.slice(0, LINES_most))].map((line) => (
          <li key={line}>{line}</li>
        ))}
        {more > 0 ? <li>and {more} more</li> : null}
      </ul>
    </div>
  )
}
