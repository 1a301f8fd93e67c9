import { useState } from 'react'
import type { DesignStore } from '../state/design-store.ts'
import { type BroughtIn, bringInStore, broughtInWords, fetchStore } from './carry-store.ts'
import { DeedLine } from './deed-line.tsx'
import { FileButton } from './file-button.tsx'
import { rereadBook } from './revision-book.ts'
import styles from './revisions.module.css'
import { saveFile } from './save-file.ts'
import { useDeed } from './use-deed.ts'

const NAME = 'fingerwright-store.sqlite'

/** The whole store as one file: saved, and brought back here or on another machine. */
export function StoreFile({ store }: { readonly store: DesignStore }) {
  const deed = useDeed()
  const [brought, setBrought] = useState<readonly BroughtIn[]>([])
  const save = () =>
    deed.run('being gathered …', async () => {
      setBrought([])
      saveFile(await fetchStore(), NAME)
      return `Saved as ${NAME}: every design with its revisions and everything that can be undone.`
    })
  const bringBack = (file: File) =>
    deed.run(`${file.name} is being read and checked …`, async () => {
      setBrought([])
      const designs = await bringInStore(file)
      setBrought(designs)
      await Promise.all([store.list(), rereadBook()])
      return designs.length === 0 ? 'There was no design in it.' : 'Nothing was overwritten. What came in:'
    })
  return (
    <section aria-labelledby="store-file" className="screen-only">
      <h2 id="store-file">The whole store as a file</h2>
      <p className={styles.ways}>
        <button type="button" className="plain" disabled={deed.doing !== undefined} onClick={save}>
          Save the whole store
        </button>
        <FileButton words="Bring a store back …" label="Store to bring back" accept=".sqlite" take={bringBack} />
      </p>
      <DeedLine {...deed} />
      {brought.length === 0 ? null : (
        <ul>
          {brought.map((design) => (
            <li key={design.name}>{broughtInWords(design)}</li>
          ))}
        </ul>
      )}
    </section>
  )
}
