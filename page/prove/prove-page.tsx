import { useMemo } from 'react'
import { proofOf } from '../../engine/index.ts'
import { caution, proveAsks, proveSentence, riskRows, type Told, traceRows } from '../../report/index.ts'
import { DesignTables } from '../parts/design-tables.tsx'
import heads from '../parts/open-question.module.css'
import { WorkBar } from '../parts/work-bar.tsx'
import type { DesignStore } from '../state/design-store.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { useSettled } from '../state/use-settled.ts'
import { RiskList } from './risk-list.tsx'
import { Starters } from './starters.tsx'
import { TraceTable } from './trace-table.tsx'
import { useCountedSpread } from './use-counted-spread.ts'

/** The page of Prove: what is asked against what shows it, and what may go wrong. */
export function ProvePage(about: { readonly store: DesignStore; readonly open: OpenDesign; readonly told: Told }) {
  const { store, open, told } = about
  const text = useSettled(open.history.text)
  const spread = useCountedSpread(text)
  const proof = useMemo(() => proofOf({ evaluation: told, ...(spread && { spread }) }), [told, spread])
  const { design } = told
  return (
    <>
      <p className={heads.title}>{design.title}</p>
      <h1 className={heads.asks}>{proveAsks}</h1>
      <p className={heads.sentence} aria-live="polite" data-testid="sentence">
        {proveSentence(proof)}
      </p>
      <WorkBar store={store} open={open} />
      {spread === undefined && design.requirements.length > 0 ? (
        <p className="aside">
          The sets of this design, as it stands, are not counted; what hangs on them stays open.{' '}
          <a href="#spread" className="plain">
            Count them in Spread.
          </a>
        </p>
      ) : null}
      <section aria-labelledby="trace">
        <h2 id="trace">What is asked, and what shows it</h2>
        <TraceTable rows={traceRows(proof, told.units)} />
      </section>
      <section aria-labelledby="risks">
        <h2 id="risks">What may go wrong</h2>
        <RiskList rows={riskRows(proof, design)} />
      </section>
      <Starters store={store} text={text} />
      <p className={heads.caution} role="note">
        {caution}
      </p>
      <DesignTables store={store} text={text} />
    </>
  )
}
