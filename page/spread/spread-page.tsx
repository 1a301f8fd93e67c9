import { useMemo, useState } from 'react'
import { againstFriction, type Design } from '../../engine/index.ts'
import {
  againstFrictionLines,
  caution,
  drawAgainstFriction,
  drawHoldWindow,
  rulerLines,
  spreadAsks,
  spreadSentence,
} from '../../report/index.ts'
import { DesignTables } from '../parts/design-tables.tsx'
import { Drawn } from '../parts/drawn.tsx'
import heads from '../parts/open-question.module.css'
import { OpeningLines } from '../parts/opening-lines.tsx'
import { RunLine } from '../parts/run-line.tsx'
import { WorkBar } from '../parts/work-bar.tsx'
import type { DesignStore } from '../state/design-store.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { useSettled } from '../state/use-settled.ts'
import { useWidth } from '../state/use-width.ts'
import { AskedForm, USUAL_ASKED } from './asked-form.tsx'
import { OfferForm } from './offer-form.tsx'
import styles from './spread.module.css'
import { spreadRun } from './spread-run.ts'
import { SpreadTables } from './spread-tables.tsx'

/** A slope is read best on a sheet that is not much wider than high. */
const BANDS_px = 640

/** The page of Spread: will every set behave so? Counted when somebody asks; what was reached stays while the design is worked on. */
export function SpreadPage(about: { readonly store: DesignStore; readonly open: OpenDesign; readonly design: Design }) {
  const { store, open, design } = about
  const text = useSettled(open.history.text)
  const run = spreadRun.use()
  const [asked, setAsked] = useState(USUAL_ASKED)
  const [place, width] = useWidth<HTMLDivElement>()
  const reached = run?.reached
  const ruler = useMemo(
    () => (reached === undefined || width === 0 ? undefined : drawHoldWindow(reached, { width_px: width })),
    [reached, width],
  )
  const against = useMemo(() => (reached === undefined ? undefined : againstFriction(reached)), [reached])
  const bands = useMemo(
    () =>
      against === undefined || width === 0 ? undefined : drawAgainstFriction(against, { width_px: Math.min(width, BANDS_px) }),
    [against, width],
  )
  return (
    <>
      <p className={heads.title}>{design.title}</p>
      <h1 className={heads.asks}>{spreadAsks}</h1>
      <p className={heads.sentence} aria-live="polite" data-testid="sentence">
        {reached === undefined
          ? 'One good finger proves little: have the sets counted that the shop, the coater and friction would give.'
          : spreadSentence(reached)}
      </p>
      <WorkBar store={store} open={open} />
      <AskedForm asked={asked} change={setAsked} />
      <OfferForm text={text} asked={asked} change={setAsked} />
      <RunLine {...{ run, text }} begin={() => spreadRun.begin({ text, ...asked })} stop={spreadRun.stop} />
      <div ref={place} className={styles.ruler}>
        {ruler === undefined ? null : <Drawn shape={ruler} />}
        {reached === undefined ? null : <OpeningLines lines={rulerLines(reached)} />}
        {bands === undefined ? null : <Drawn shape={bands} />}
        <OpeningLines lines={againstFrictionLines(against)} />
      </div>
      {reached === undefined ? null : <SpreadTables told={reached} />}
      <p className={heads.caution} role="note">
        {caution}
      </p>
      <DesignTables {...{ store, text }} counted={run?.isGoing === false && run.text === text ? reached : undefined} />
    </>
  )
}
