import { caution, proveAsks, proveSentence, riskRows, type Told, traceRows } from '../../report/index.ts'
import { DesignTables } from '../parts/design-tables.tsx'
import heads from '../parts/open-question.module.css'
import { WorkBar } from '../parts/work-bar.tsx'
import type { DesignStore } from '../state/design-store.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { useSettled } from '../state/use-settled.ts'
import { Documents } from './documents.tsx'
import { FieldLog } from './field-log.tsx'
import { OrientationList } from './orientation-list.tsx'
import { RiskList } from './risk-list.tsx'
import { Starters } from './starters.tsx'
import { TraceTable } from './trace-table.tsx'
import { useProof } from './use-proof.ts'

/** The page of Prove: what is asked against what shows it, and what may go wrong. */
export function ProvePage(about: { readonly store: DesignStore; readonly open: OpenDesign; readonly told: Told }) {
  const { store, open, told } = about
  const text = useSettled(open.history.text)
  const proved = useProof({ open, evaluation: told, text })
  if (proved === undefined) return null
  const { proof, spread, book, fault } = proved
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
      <section aria-labelledby="field">
        <h2 id="field">What came back</h2>
        {fault === undefined ? null : <p role="alert">{fault}</p>}
        {book === undefined ? (
          <p className="aside">
            Returns and complaints stand beside serial numbers in the store, once a lot of this design is begun there (Check).
          </p>
        ) : (
          <FieldLog {...{ design, book }} name={open.name} />
        )}
      </section>
      <Documents {...{ open, text }} known={proved} />
      <OrientationList />
      <Starters store={store} text={text} />
      <p className={heads.caution} role="note">
        {caution}
      </p>
      <DesignTables store={store} text={text} />
    </>
  )
}
