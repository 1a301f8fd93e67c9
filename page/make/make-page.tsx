import { useMemo } from 'react'
import { readShopDesign } from '../../engine/index.ts'
import { caution, makeAsks, makeSentence } from '../../report/index.ts'
import { DesignTables } from '../parts/design-tables.tsx'
import heads from '../parts/open-question.module.css'
import { WorkBar } from '../parts/work-bar.tsx'
import { spreadRun } from '../spread/spread-run.ts'
import type { DesignStore } from '../state/design-store.ts'
import type { OpenDesign, Shown } from '../state/open-design.ts'
import { useSettled } from '../state/use-settled.ts'
import { AgainstRevision } from './against-revision.tsx'
import { CostTables } from './cost-tables.tsx'
import { PartsTable } from './parts-table.tsx'
import { ShopDoubts } from './shop-doubts.tsx'
import { ShopDrawings } from './shop-drawings.tsx'
import { useStandingRevision } from './use-standing-revision.ts'

/** The page of Make: what a finger is put together from, whether it can be made, its drawings, what a set costs. */
export function MakePage(about: { readonly store: DesignStore; readonly open: OpenDesign; readonly shown: Shown }) {
  const { store, open, shown } = about
  const { evaluation } = shown
  const { design } = evaluation
  const sentence = useMemo(() => makeSentence(design), [design])
  const revision = useStandingRevision(open, shown.text)
  const text = useSettled(open.history.text)
  const shop = useMemo(() => readShopDesign(shown.text, shown.name).value, [shown])
  const run = spreadRun.use()
  const counted = run?.text === shown.text ? run.reached : undefined
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
        <AgainstRevision key={open.opening} open={open} design={design} />
      </section>
      {shop === undefined ? null : (
        <>
          <ShopDoubts shop={shop} />
          <ShopDrawings {...{ shop, evaluation, revision }} text={shown.text} name={open.name} />
        </>
      )}
      <CostTables design={design} counted={counted} />
      <p className={heads.caution} role="note">
        {caution}
      </p>
      <DesignTables store={store} text={text} />
    </>
  )
}
