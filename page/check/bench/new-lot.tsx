import { type FormEvent, useState } from 'react'
import { DeedLine } from '../../revisions/deed-line.tsx'
import { useRevisionBook } from '../../revisions/revision-book.ts'
import { useDeed } from '../../revisions/use-deed.ts'
import styles from './bench.module.css'
import { sendEntries } from './bench.ts'

/** Begins a lot to the newest revision; its plan is frozen then. */
export function NewLot(about: { readonly name: string; readonly who: string; readonly begun: (lot: string) => void }) {
  const { name, who, begun } = about
  const newest = useRevisionBook(name).revisions?.[0]
  const [lot, setLot] = useState('')
  const deed = useDeed()
  if (newest === undefined)
    return (
      <p className="aside">
        A lot is made to a revision, so that its plan stays what it is. Keep what stands now as a revision first (
        <a href="#revisions" className="plain">
          Revisions
        </a>
        ).
      </p>
    )
  const begin = (event: FormEvent): void => {
    event.preventDefault()
    void deed.run('being begun …', async () => {
      if (who.trim() === '') throw new Error('Not begun: say who measures.')
      await sendEntries(name, { who, entries: [{ kind: 'lot', lot, revision: newest.number }] })
      begun(lot.trim())
      return 'Begun.'
    })
  }
  return (
    <form onSubmit={begin} noValidate>
      <p className={styles.field}>
        <label htmlFor="new-lot">New lot</label>
        <input id="new-lot" value={lot} autoComplete="off" onChange={({ target }) => setLot(target.value)} />
        <button type="submit" className="plain" disabled={lot.trim() === '' || deed.doing !== undefined}>
          Begin it to revision {newest.number}
        </button>
      </p>
      <DeedLine {...deed} />
    </form>
  )
}
