import type { DesignStore } from '../state/design-store.ts'
import { CountedVerdicts } from './counted-verdicts.tsx'
import { DeedLine } from './deed-line.tsx'
import { KeptRevision, type Titles } from './kept-revision.tsx'
import { momentWords } from './moment-words.ts'
import { fetchRevision, type RevisionEntry } from './revision.ts'
import styles from './revisions.module.css'
import { saveFile } from './save-file.ts'
import { useDeed } from './use-deed.ts'

/** What can be done with the revisions of a design. */
export interface LogProps {
  readonly store: DesignStore
  readonly name: string
  readonly titles: Titles
  /** Puts a revision beside what stands now. */
  readonly compare: (number: number) => void
}

/** Every revision, newest first, as entries of a log. */
export function RevisionLog({ revisions, ...about }: LogProps & { readonly revisions: readonly RevisionEntry[] }) {
  return (
    <ol className={styles.log}>
      {revisions.map((entry) => (
        <LogEntry key={entry.number} entry={entry} {...about} />
      ))}
    </ol>
  )
}

function LogEntry({ store, name, entry, titles, compare }: LogProps & { readonly entry: RevisionEntry }) {
  const { number, saved, who, why, engine } = entry
  const deed = useDeed()
  const goOn = () =>
    deed.run('being fetched …', async () => {
      const { text } = await fetchRevision({ name, number })
      store.put({ text, said: `went on from revision ${number}` })
      return `What stands now is revision ${number}. Undo brings back what stood before.`
    })
  const save = () =>
    deed.run('being fetched …', async () => {
      const { text } = await fetchRevision({ name, number })
      saveFile(new Blob([text], { type: 'application/json' }), `${name}-revision-${number}.json`)
      return `Saved as ${name}-revision-${number}.json.`
    })
  return (
    <li aria-labelledby={`revision-${number}`}>
      <h3 id={`revision-${number}`}>Revision {number}</h3>
      <p className={styles.when}>
        <time dateTime={saved}>{momentWords(saved)}</time>, {who}
      </p>
      <p className={styles.verdicts}>
        <CountedVerdicts {...entry} /> <span className="hint">by {engine}</span>
      </p>
      <p className={styles.why}>{why}</p>
      <p className={styles.ways}>
        <button type="button" className="plain" onClick={() => compare(number)}>
          Compare with what stands now
        </button>
        <button type="button" className="plain" onClick={goOn}>
          Go on from revision {number}
        </button>
        <button type="button" className="plain" onClick={save}>
          Save it as a file
        </button>
      </p>
      <DeedLine {...deed} />
      <KeptRevision {...{ name, number, titles }} />
    </li>
  )
}
