import { useState } from 'react'
import { DeedLine } from '../../revisions/deed-line.tsx'
import { useDeed } from '../../revisions/use-deed.ts'
import type { AtBench } from './at-bench.ts'
import styles from './bench.module.css'
import { sendReadings } from './bench.ts'

/** Rows that were copied from a spreadsheet: all of them are kept, or none, with every problem by row and column. */
export function PastedRows({ about, kept }: { readonly about: AtBench; readonly kept: () => void }) {
  const [text, setText] = useState('')
  const [decimal, setDecimal] = useState<'point' | 'comma'>('point')
  const deed = useDeed()
  const take = (): void => {
    void deed.run('being read …', async () => {
      if (about.who.trim() === '') throw new Error('Nothing was kept: say who measures.')
      const rows = text.split(/\r?\n/).map((line) => line.split('\t'))
      const count = await sendReadings(about.name, { who: about.who, lot: about.lot.lot, rows, decimal })
      setText('')
      kept()
      return count === 1 ? 'One reading is kept.' : `${count} readings are kept.`
    })
  }
  return (
    <details className={`${styles.pasted} screen-only`}>
      <summary>Paste from a spreadsheet</summary>
      <p className="aside">
        With its heading: serial, characteristic, found, and x, y, uncertainty, visit, gauge, corrects, reason where they are
        known.
      </p>
      <label htmlFor="pasted" className="visually-hidden">
        Rows from a spreadsheet
      </label>
      <textarea id="pasted" rows={4} value={text} onChange={({ target }) => setText(target.value)} />
      <p className={styles.field}>
        <label htmlFor="decimal">Decimals</label>
        <select id="decimal" value={decimal} onChange={({ target }) => setDecimal(target.value === 'comma' ? 'comma' : 'point')}>
          <option value="point">with a point, 24.507</option>
          <option value="comma">with a comma, 24,507</option>
        </select>
        <button type="button" className="plain" disabled={text.trim() === '' || deed.doing !== undefined} onClick={take}>
          Keep these rows
        </button>
      </p>
      <DeedLine {...deed} />
    </details>
  )
}
