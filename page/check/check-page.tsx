import type { Design } from '../../engine/index.ts'
import { caution, checkAsks } from '../../report/index.ts'
import heads from '../parts/open-question.module.css'
import { WorkBar } from '../parts/work-bar.tsx'
import { FileButton } from '../revisions/file-button.tsx'
import type { DesignStore } from '../state/design-store.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { useSettled } from '../state/use-settled.ts'
import { BenchSection } from './bench/bench-section.tsx'
import { GaugeSection } from './gauge-section.tsx'
import { judgeFile } from './judge-file.ts'
import { JudgedSets } from './judged-sets.tsx'
import { PlanTable } from './plan-table.tsx'
import { useReadings } from './readings.ts'
import { BenchTests } from './tests/bench-tests.tsx'

/** The page of Check: what is to be measured, and what measured sets will do. */
export function CheckPage(about: { readonly store: DesignStore; readonly open: OpenDesign; readonly design: Design }) {
  const { store, open, design } = about
  const text = useSettled(open.history.text)
  const opened = useReadings()
  return (
    <>
      <p className={heads.title}>{design.title}</p>
      <h1 className={heads.asks}>{checkAsks}</h1>
      <p className={heads.sentence} aria-live="polite" data-testid="sentence">
        {opened !== undefined && 'sets' in opened
          ? `${opened.sets.length === 1 ? 'One set was' : `${opened.sets.length} sets were`} read from ${opened.file} and judged as measured.`
          : 'The box from the shop is open on the bench: open a file of readings, and every set is judged as it was measured.'}
      </p>
      <WorkBar store={store} open={open} />
      <section aria-labelledby="readings" className="screen-only">
        <h2 id="readings" className="visually-hidden">
          Readings
        </h2>
        <FileButton
          words="Open a file of readings …"
          label="File of readings"
          accept=".csv,text/csv"
          take={(file) => judgeFile(text, file)}
        />
        <p className="aside">
          A table of comma-separated values, its first row the heading: serial, characteristic, found, x, y, uncertainty, visit;
          other headings and decimal commas are guessed, and what was guessed is told. A characteristic is named by its number in
          the plan below; a gauge that goes and one that does not are typed as 3.010 to 3.012, a distance over pins as 27.507 over
          3 and 3; of a position stand x and y from the datum hole of its part; visit is “before coating” for a diameter that was
          measured before it went to the coater.
        </p>
      </section>
      <BenchSection open={open} design={design} />
      <JudgedSets text={text} />
      <BenchTests {...{ store, open, design, text }} />
      <GaugeSection />
      <section aria-labelledby="plan">
        <h2 id="plan">Inspection plan</h2>
        <PlanTable text={text} />
      </section>
      <p className={heads.caution} role="note">
        {caution}
      </p>
    </>
  )
}
