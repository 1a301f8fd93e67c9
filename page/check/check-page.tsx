import { useMemo } from 'react'
import { type Design, inspectionPlan, readVariation } from '../../engine/index.ts'
import { caution, checkAsks, planRows } from '../../report/index.ts'
import heads from '../parts/open-question.module.css'
import { ProblemList } from '../parts/refusal.tsx'
import { WorkBar } from '../parts/work-bar.tsx'
import { FileButton } from '../revisions/file-button.tsx'
import type { DesignStore } from '../state/design-store.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { useUnits } from '../state/units.ts'
import { useSettled } from '../state/use-settled.ts'
import { judgeFile } from './judge-file.ts'
import { MeasuredSets } from './measured-sets.tsx'
import { useReadings } from './readings.ts'

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
          A table of comma-separated values, its first row the heading: serial, characteristic, found, x, y, uncertainty. A
          characteristic is named by its number in the plan below; a gauge that goes and one that does not are typed as 3.004 to
          3.006; of a position stand x and y in the frame of its part.
        </p>
      </section>
      {opened === undefined ? null : 'sets' in opened ? (
        <MeasuredSets sets={opened.sets} isOld={opened.text !== text} passedOver={opened.passedOver} />
      ) : (
        <ProblemList file={opened.file} problems={opened.problems} />
      )}
      <section aria-labelledby="plan">
        <h2 id="plan">Inspection plan</h2>
        <Plan text={text} />
      </section>
      <p className={heads.caution} role="note">
        {caution}
      </p>
    </>
  )
}

function Plan({ text }: { readonly text: string }) {
  const units = useUnits()
  const rows = useMemo(() => {
    const { value } = readVariation(text)
    return value === undefined ? [] : planRows(inspectionPlan(value), units)
  }, [text, units])
  if (rows.length === 0) return <p className="aside">The design limits no size, so there is nothing to measure it against.</p>
  return (
    <table className="rows compact">
      <thead>
        <tr>
          <th scope="col" className="number">
            No.
          </th>
          <th scope="col">Characteristic</th>
          <th scope="col">Drawn</th>
          <th scope="col">Allowed</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ number, words, drawn, allowed }) => (
          <tr key={number}>
            <td className="number">{number}</td>
            <th scope="row">{words}</th>
            <td>{drawn}</td>
            <td>{allowed}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
