import { caution, readTravel, type Told, travelEnd } from '../../report/index.ts'
import type { OpenedQuestion } from '../state/opened-question.ts'
import { useFingerView } from '../state/use-finger-view.ts'
import { useSettled } from '../state/use-settled.ts'
import { BrokenList } from './broken.tsx'
import { DesignTables } from './design-tables.tsx'
import { DrawnFinger } from './drawn-finger.tsx'
import { FiguresTable } from './figures-table.tsx'
import { FindingsTable } from './findings-table.tsx'
import { FittingCoils } from './fitting-coils.tsx'
import { GivesFirst } from './gives-first.tsx'
import { HelpsMost } from './helps-most.tsx'
import { LoadsTable } from './loads-table.tsx'
import styles from './open-question.module.css'
import { OverlapList } from './overlap-list.tsx'
import { Plots } from './plots.tsx'
import { Sensitivities } from './sensitivities.tsx'
import { driveName, TravelPointer } from './travel-pointer.tsx'
import { WornOut } from './worn-out.tsx'

/** Everything that stands on a travel: drawing, tables, plots and the scale. `drawn` is the last evaluation that could be moved. */
export function MovingFinger(about: OpenedQuestion & { readonly drawn: Told }) {
  const { store, open, question, told, drawn } = about
  const seen = useFingerView(question, drawn)
  const { point, show } = seen
  const { travel } = drawn
  const arc_ratio = Math.min(seen.pointed_ratio, travel === undefined ? 1 : travelEnd(travel))
  const calm = useSettled(told)
  const text = useSettled(open.history.text)
  return (
    <>
      {drawn === told ? null : <p className="aside">The drawing shows the finger as it last could be moved.</p>}
      {travel === undefined ? null : (
        <p className={styles.posture}>
          Drawn at {driveName(drawn.design)} {readTravel(travel, arc_ratio)}.
        </p>
      )}
      <DrawnFinger {...about} seen={seen} />
      {question === 'motion' ? <OverlapList evaluation={calm} point={point} /> : null}
      {question === 'strength' ? (
        <>
          <GivesFirst evaluation={calm} show={show} />
          <HelpsMost text={text} />
        </>
      ) : null}
      <DesignTables store={store} text={text} />
      {question === 'hold' ? (
        <section aria-labelledby="carries">
          <h2 id="carries">Who carries the load</h2>
          <LoadsTable evaluation={calm} />
        </section>
      ) : null}
      <section aria-labelledby="required">
        <h2 id="required">What is required</h2>
        <FindingsTable evaluation={calm} question={question} />
      </section>
      <p className={styles.caution} role="note">
        {caution}
      </p>
      {question === 'strength' ? (
        <>
          <WornOut design={calm.design} text={text} />
          <BrokenList evaluation={calm} />
          <FittingCoils design={calm.design} />
        </>
      ) : (
        <section aria-labelledby="over-travel">
          <h2 id="over-travel">Over the travel</h2>
          <Plots {...{ evaluation: drawn, question, arc_ratio, point }}>
            <p className={styles.printedCaution}>{caution}</p>
          </Plots>
        </section>
      )}
      <section aria-labelledby="figures" className={styles.figures}>
        <h2 id="figures">Figures and their working</h2>
        <FiguresTable evaluation={calm} question={question} />
      </section>
      <Sensitivities evaluation={calm} text={text} question={question} />
      {travel === undefined ? null : <TravelPointer {...{ design: drawn.design, travel, arc_ratio, point }} />}
    </>
  )
}
