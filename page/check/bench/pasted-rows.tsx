import { useState } from 'react'
import { type Characteristic, type Checked, sentence } from '../../../engine/index.ts'
import { fileRows, type TableRows, tableRows } from '../../../report/index.ts'
import { DeedLine } from '../../revisions/deed-line.tsx'
import { FileButton } from '../../revisions/file-button.tsx'
import { useDeed } from '../../revisions/use-deed.ts'
import { readTableFile } from '../read-table-file.ts'
import type { AtBench } from './at-bench.ts'
import styles from './bench.module.css'
import { benchOf } from './bench.ts'
import { TablePreview } from './table-preview.tsx'

/** A table that was opened or pasted, and what its readings are said to come from. */
interface Brought {
  readonly file: string
  readonly table: Checked<TableRows>
}

/** Readings from a file or a spreadsheet: looked at first, then all of them are kept, or none. */
export function PastedRows(props: {
  readonly about: AtBench
  readonly plan: readonly Characteristic[] | undefined
  readonly kept: () => void
}) {
  const { about, plan, kept } = props
  const [text, setText] = useState('')
  const [brought, setBrought] = useState<Brought>()
  const deed = useDeed()
  const paste = (typed: string): void => {
    setText(typed)
    setBrought(typed.trim() === '' ? undefined : { file: 'pasted rows', table: tableRows(typed) })
  }
  const open = (file: File): void => {
    void deed.run('being read …', async () => {
      paste('')
      const table = fileRows(await readTableFile(file))
      if (table.problems !== undefined) throw new Error(table.problems.map((problem) => sentence(file.name, problem)).join('\n'))
      setBrought({ file: file.name, table })
      return `${file.name} is read; nothing of it is kept yet.`
    })
  }
  const keep = (count: number): void => {
    paste('')
    kept()
    void deed.run('', async () => (count === 1 ? 'One reading is kept.' : `${count} readings are kept.`))
  }
  return (
    <details className={`${styles.pasted} screen-only`}>
      <summary>Readings as a table: bring in, save</summary>
      {about.lot.serials.length === 0 ? null : (
        <p>
          <a href={`${benchOf(about.name)}/lots/${encodeURIComponent(about.lot.lot)}/readings`} download className="plain">
            Save every reading of lot {about.lot.lot} as CSV
          </a>
        </p>
      )}
      <p className="aside">
        A CSV file, or rows copied from a spreadsheet with their heading. You see which column is taken for what before anything
        is kept.
      </p>
      <p className={styles.field}>
        <FileButton words="Open a CSV file …" label="Table of readings" accept=".csv,.tsv,.txt,text/csv" take={open} />
      </p>
      <label htmlFor="pasted">Or rows from a spreadsheet</label>
      <textarea id="pasted" rows={4} value={text} onChange={({ target }) => paste(target.value)} />
      <DeedLine {...deed} />
      {brought?.table.problems?.map((problem) => (
        <p key={sentence('', problem)} role="alert">
          {sentence(brought.file, problem)}
        </p>
      ))}
      {brought?.table.value === undefined || plan === undefined ? null : (
        <TablePreview
          key={`${brought.file} ${brought.table.value[0]?.join('\t')}`}
          {...{ about, plan, rows: brought.table.value, file: brought.file }}
          kept={keep}
        />
      )}
    </details>
  )
}
