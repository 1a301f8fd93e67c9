import { useRef, useState } from 'react'
import { type KnownOf, type ProofDocument, proofDocuments } from '../../report/index.ts'
import { RunLine } from '../parts/run-line.tsx'
import { DeedLine } from '../revisions/deed-line.tsx'
import { saveFile } from '../revisions/save-file.ts'
import { useDeed } from '../revisions/use-deed.ts'
import { engineName } from '../state/engine-name.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { today } from '../state/today.ts'
import { wearRun } from '../state/wear-run.ts'
import { fetchDocument } from './fetch-document.ts'
import styles from './prove.module.css'
import { shownRevision } from './shown-revision.ts'

/** What the page knows of the design whose text it shows; the rest of what a document says is asked for when it is made. */
export interface DocumentsAsked {
  readonly open: OpenDesign
  readonly text: string
  readonly known: Omit<KnownOf, 'revision' | 'engine' | 'date'>
}

/** The documents as PDF, each from what is worked through by now, and the work that they wait for. */
export function Documents({ open, text, known }: DocumentsAsked) {
  const [date, setDate] = useState(today)
  const deed = useDeed()
  const run = wearRun.use()
  const stop = useRef<AbortController>(undefined)
  const save = (name: string, document: ProofDocument) =>
    deed.run('The document is being set …', async () => {
      const stopping = new AbortController()
      stop.current = stopping
      const revision = await shownRevision(open, text)
      const job = document.job({ ...known, revision, engine: engineName, ...(date !== '' && { date }) })
      const file = `${open.name}-${name}.pdf`
      try {
        saveFile(await fetchDocument(job, stopping.signal), file)
        return `Saved as ${file}.`
      } catch (reason) {
        if (stopping.signal.aborted) return 'Stopped; nothing was saved.'
        throw reason
      }
    })
  return (
    <section aria-labelledby="documents" className="screen-only">
      <h2 id="documents">Documents</h2>
      <p className="aside">
        Its life as it wears goes into the report, the care sheet and what is left of the risks. It takes up to a minute.
      </p>
      <RunLine {...{ run, text }} begin={() => wearRun.begin({ text })} stop={wearRun.stop} />
      <p>
        <label>
          Day that stands on every page{' '}
          <input type="date" value={date} onChange={({ target }) => setDate(target.value)} className={styles.day} />
        </label>
      </p>
      <ul className={styles.documents}>
        {Object.entries(proofDocuments).map(([name, document]) => (
          <li key={name}>
            <button type="button" className="plain" disabled={deed.doing !== undefined} onClick={() => save(name, document)}>
              Save as PDF: {document.title}
            </button>
            <span className="reason">
              {document.says}
              {lacks(document, known)}
            </span>
          </li>
        ))}
      </ul>
      {deed.doing === undefined ? null : (
        <button type="button" className="plain" onClick={() => stop.current?.abort()}>
          Stop
        </button>
      )}
      <DeedLine {...deed} />
    </section>
  )
}

/** What a document made now would say that it does not know. */
function lacks({ sets, life }: ProofDocument, { spread, lived }: DocumentsAsked['known']): string {
  const missing = [
    ...(sets && spread === undefined ? ['its sets are not counted'] : []),
    ...(life && lived === undefined ? ['its life is not worked out'] : []),
  ]
  return missing.length === 0 ? '' : ` – made now it says that ${missing.join(' and that ')}`
}
