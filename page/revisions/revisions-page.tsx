import { useMemo, useRef, useState } from 'react'
import { documentDifferences } from '../../engine/index.ts'
import { caution } from '../../report/index.ts'
import heads from '../parts/open-question.module.css'
import { WorkBar } from '../parts/work-bar.tsx'
import type { DesignStore } from '../state/design-store.ts'
import { isKeptHere, type OpenDesign, type Shown } from '../state/open-design.ts'
import { Comparison } from './comparison.tsx'
import { DesignFiles } from './design-files.tsx'
import { KeepForm } from './keep-form.tsx'
import { momentWords } from './moment-words.ts'
import type { RevisionEntry } from './revision.ts'
import { useRevisionBook } from './revision-book.ts'
import { RevisionLog } from './revision-log.tsx'
import styles from './revisions.module.css'
import type { Side } from './side.ts'
import { StoreFile } from './store-file.tsx'
import { useRevision } from './use-revision.ts'

/** The page of a design's revisions: what was kept and by whom, what has changed since, two of them side by side, and files. */
export function RevisionsPage(about: {
  readonly store: DesignStore
  readonly open: OpenDesign
  /** Absent while nothing could be evaluated. */
  readonly shown: Shown | undefined
}) {
  const { store, open, shown } = about
  const { revisions = [], fault } = useRevisionBook(isKeptHere(open) ? open.name : undefined)
  return (
    <>
      <p className={heads.title}>{shown?.evaluation.design.title ?? open.name}</p>
      <h1 className={heads.asks}>What was kept, and what has changed since?</h1>
      <p className={heads.sentence} data-testid="sentence">
        <Standing open={open} newest={revisions[0]} />
      </p>
      <WorkBar store={store} open={open} />
      {fault === undefined ? null : (
        <p role="alert" className={styles.fault}>
          The revisions could not be fetched: {fault}
        </p>
      )}
      {isKeptHere(open) ? <Kept key={open.opening} {...{ store, open, shown, revisions }} /> : null}
      <DesignFiles store={store} open={open} />
      <StoreFile store={store} />
    </>
  )
}

/** The page in one sentence. */
function Standing({ open, newest }: { readonly open: OpenDesign; readonly newest: RevisionEntry | undefined }) {
  const { name, history } = open
  const { revision } = useRevision(name, newest?.number)
  const changes_count = useMemo(
    () => revision && documentDifferences(revision.text, history.text).length,
    [revision, history.text],
  )
  if (!isKeptHere(open)) return `${name} was opened from disk. Bring it into the store to keep revisions of it.`
  if (newest === undefined) return `No revision of ${name} is kept yet.`
  const since =
    changes_count === undefined
      ? ''
      : changes_count === 0
        ? ' What stands now is the same.'
        : ` What stands now differs from it in ${changes_count === 1 ? 'one value' : `${changes_count} values`}.`
  return `Revision ${newest.number} of ${name} is the newest, kept on ${momentWords(newest.saved)} by ${newest.who}.${since}`
}

/** Everything about the revisions of one design. */
function Kept(about: {
  readonly store: DesignStore
  readonly open: OpenDesign
  readonly shown: Shown | undefined
  readonly revisions: readonly RevisionEntry[]
}) {
  const { store, open, shown, revisions } = about
  const [sides, setSides] = useState<{ readonly before?: Side; readonly after?: Side }>({})
  const heading = useRef<HTMLHeadingElement>(null)
  const titles = useMemo(() => new Map(shown?.evaluation.figures.map(({ id, title }) => [id, title])), [shown])
  const newest = revisions[0]
  const { before = newest?.number, after = 'now' } = sides
  const compare = (number: number): void => {
    setSides({ before: number, after: 'now' })
    heading.current?.focus()
  }
  return (
    <>
      <section aria-labelledby="keep" className="screen-only">
        <h2 id="keep">Keep what stands now</h2>
        <KeepForm store={store} newest={newest} />
      </section>
      {newest === undefined || before === undefined ? null : (
        <>
          <section aria-labelledby="kept-revisions">
            <h2 id="kept-revisions">What was kept</h2>
            <RevisionLog {...{ store, titles, compare, revisions }} name={open.name} />
          </section>
          <Comparison
            {...{ open, revisions, before, after, heading }}
            choose={(chosen) => setSides({ before, after, ...chosen })}
          />
          <p className={styles.caution} role="note">
            {caution}
          </p>
        </>
      )}
    </>
  )
}
