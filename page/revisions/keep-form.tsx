import { type FormEvent, useState } from 'react'
import type { DesignStore } from '../state/design-store.ts'
import { DeedLine } from './deed-line.tsx'
import { keepRevision } from './keep-revision.ts'
import type { RevisionEntry } from './revision.ts'
import { rereadBook } from './revision-book.ts'
import styles from './revisions.module.css'
import { useDeed } from './use-deed.ts'

/** Keeps what stands now as the next revision: who says so, and why. */
export function KeepForm({ store, newest }: { readonly store: DesignStore; readonly newest: RevisionEntry | undefined }) {
  const [who, setWho] = useState('')
  const [why, setWhy] = useState('')
  const deed = useDeed()
  const next = (newest?.number ?? 0) + 1
  const keep = (event: FormEvent): void => {
    event.preventDefault()
    void deed.run('being kept …', async () => {
      if (who.trim() === '') throw new Error('Not kept: say who keeps it.')
      if (why.trim() === '') throw new Error('Not kept: say why it is kept.')
      const number = await keepRevision(store, { who, why })
      await rereadBook()
      if (number !== next) return `What stands now is revision ${number} already, kept with the same words.`
      setWhy('')
      return `Kept as revision ${number}: every value as it stands, with its figures and findings.`
    })
  }
  return (
    <form onSubmit={keep} className={styles.keep} noValidate>
      <label htmlFor="keep-who">Who</label>
      <div>
        <input
          id="keep-who"
          type="text"
          value={who}
          autoComplete="off"
          required
          aria-describedby="keep-who-hint"
          onChange={({ target }) => setWho(target.value)}
        />
        <p id="keep-who-hint" className={styles.hint}>
          You, as the workshop calls you. A wearer is a code, such as W-014, here and below: never a name.
        </p>
      </div>
      <label htmlFor="keep-why">Why</label>
      <div>
        <textarea id="keep-why" rows={2} value={why} required onChange={({ target }) => setWhy(target.value)} />
      </div>
      <div className={styles.do}>
        <button type="submit" className="plain" disabled={deed.doing !== undefined}>
          Keep this as revision {next}
        </button>
        <DeedLine {...deed} />
      </div>
    </form>
  )
}
