import { useState } from 'react'
import { type Removal as Found, isRemovable, type Row, removalOf, sentence } from '../../engine/index.ts'
import { goTo } from '../state/attention.ts'
import type { DesignStore } from '../state/design-store.ts'
import styles from './design-tables.module.css'

/** Takes a thing out of the design, or says who needs it. */
export function Removal({ store, text, row }: { readonly store: DesignStore; readonly text: string; readonly row: Row }) {
  const [found, setFound] = useState<{ readonly text: string; readonly why: Found }>()
  if (!isRemovable(row.place)) return null
  const remove = (): void => {
    const removal = removalOf(text, row.place)
    if (removal.changes === undefined) setFound({ text, why: removal })
    else store.edit({ changes: removal.changes, said: `removed ${row.id.replaceAll('.', ' › ')}` })
  }
  return (
    <>
      <button type="button" className={`plain ${styles.remove}`} aria-label={`Remove ${row.title}`} onClick={remove}>
        Remove
      </button>
      {found === undefined || found.text !== text ? null : <WhyItStays removal={found.why} dismiss={() => setFound(undefined)} />}
    </>
  )
}

/** Who names it, each a way to go there, and what the design would lack. */
function WhyItStays({ removal, dismiss }: { readonly removal: Found; readonly dismiss: () => void }) {
  if (removal.changes !== undefined) return null
  return (
    <div className={styles.needs} role="alert">
      <p>{removal.dependents.length === 0 ? 'The design cannot do without it:' : 'It stays: others name it.'}</p>
      <ul>
        {removal.dependents.map(({ place, says }) => (
          <li key={place.join('.')}>
            <button type="button" className="plain" onClick={() => goTo(place.join('.'))}>
              {says}
            </button>
          </li>
        ))}
        {removal.problems.map((problem) => (
          <li key={sentence('', problem)}>{sentence('', problem)}</li>
        ))}
      </ul>
      <button type="button" className="plain" onClick={dismiss}>
        Put this away
      </button>
    </div>
  )
}
