import { useState } from 'react'
import { linesApart } from '../../report/index.ts'
import { CopyOfMine } from '../revisions/copy-of-mine.tsx'
import type { DesignStore } from '../state/design-store.ts'
import type { OpenDesign } from '../state/open-design.ts'
import styles from './other-page.module.css'

/** Another page has changed the same design since: both are shown, and nothing is saved until somebody chooses. */
export function OtherPage({ store, open }: { readonly store: DesignStore; readonly open: OpenDesign }) {
  const [copied, setCopied] = useState<{ readonly name: string; readonly opening: number }>()
  const copy = copied?.opening === open.opening ? copied.name : undefined
  if (open.keeping.kind !== 'other page')
    return copy === undefined ? null : (
      <p role="status">What stood on this page is kept as {copy}. Here the other page’s goes on.</p>
    )
  const { theirs } = open.keeping
  const [here, there] = linesApart(open.history.text, theirs.history.text)
  return (
    <section role="alert" className={styles.two} aria-labelledby="other-page">
      <h2 id="other-page">{open.name} was changed on another page too</h2>
      <p>Nothing of either is lost: what you do not choose now waits as a step that can be undone or done again.</p>
      <div className={styles.sides}>
        <section aria-label="This page">
          <h3>This page</h3>
          <pre>{here}</pre>
          <button type="button" className="plain" onClick={() => store.settle('mine')}>
            Go on with this page’s
          </button>{' '}
          <CopyOfMine {...{ store, open }} tell={(name) => setCopied({ name, opening: open.opening })} />
        </section>
        <section aria-label="The other page">
          <h3>The other page</h3>
          <pre>{there}</pre>
          <button type="button" className="plain" onClick={() => store.settle('theirs')}>
            Go on with the other’s
          </button>
        </section>
      </div>
    </section>
  )
}
