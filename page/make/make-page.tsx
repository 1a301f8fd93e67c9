import { useMemo } from 'react'
import type { Design } from '../../engine/index.ts'
import { caution, makeAsks, makeSentence } from '../../report/index.ts'
import { DesignTables } from '../parts/design-tables.tsx'
import heads from '../parts/open-question.module.css'
import { WorkBar } from '../parts/work-bar.tsx'
import type { DesignStore } from '../state/design-store.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { useSettled } from '../state/use-settled.ts'
import { CostTables } from './cost-tables.tsx'
import { PartsTable } from './parts-table.tsx'

/** The page of Make: what a finger is put together from, what it weighs, what a set costs. */
export function MakePage(about: { readonly store: DesignStore; readonly open: OpenDesign; readonly design: Design }) {
  const { store, open, design } = about
  const sentence = useMemo(() => makeSentence(design), [design])
  const text = useSettled(open.history.text)
  return (
    <>
      <p className={heads.title}>{design.title}</p>
      <h1 className={heads.asks}>{makeAsks}</h1>
      <p className={heads.sentence} aria-live="polite" data-testid="sentence">
        {sentence}
      </p>
      <WorkBar store={store} open={open} />
      <section aria-labelledby="parts-list">
        <h2 id="parts-list">Parts list</h2>
        <PartsTable design={design} name={open.name} />
      </section>
      <CostTables design={design} />
      <p className={heads.caution} role="note">
        {caution}
      </p>
      <DesignTables store={store} text={text} />
    </>
  )
}
