import { memo } from 'react'
import {
  type CheckedSet,
  checkSentence,
  conformityAnswer,
  findingRows,
  foundText,
  overallVerdict,
  planRows,
  toldIn,
} from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { useUnits } from '../state/units.ts'

/** Every measured set: its sentence, its readings, and what of the requirements it does not meet. */
export const MeasuredSets = memo(function MeasuredSets(about: {
  readonly sets: readonly CheckedSet[]
  /** The design has changed since they were judged. */
  readonly isOld: boolean
  readonly passedOver: readonly string[]
}) {
  const { sets, isOld, passedOver } = about
  return (
    <>
      {isOld ? <p className="aside">The design has changed since these sets were judged: open the file again.</p> : null}
      {passedOver.length === 0 ? null : <p className="aside">Passed over: the columns {passedOver.join(', ')}.</p>}
      {sets.map((set) => (
        <MeasuredSet key={set.serial} set={set} />
      ))}
    </>
  )
})

function MeasuredSet({ set }: { readonly set: CheckedSet }) {
  const units = useUnits()
  const { serial, readings, conformities, evaluation } = set
  const unmet = evaluation === undefined ? [] : findingRows(toldIn(units, evaluation)).filter(({ verdict }) => verdict !== 'met')
  return (
    <section aria-label={`Set ${serial}`}>
      <h2>
        Set {serial} <MarkWithWord answer={evaluation === undefined ? 'short' : overallVerdict(evaluation.findings)} />
      </h2>
      <p>{checkSentence(set)}</p>
      {unmet.length === 0 ? null : (
        <ul className="aside">
          {unmet.map(({ id, title, verdict, needed, why }) => (
            <li key={id}>
              {title}, {needed}: <MarkWithWord answer={verdict} /> {why}
            </li>
          ))}
        </ul>
      )}
      <table className="rows compact">
        <thead>
          <tr>
            <th scope="col" className="number">
              No.
            </th>
            <th scope="col">Characteristic</th>
            <th scope="col">Found</th>
            <th scope="col">Allowed</th>
            <th scope="col">Against the drawing</th>
          </tr>
        </thead>
        <tbody>
          {readings.map((reading, index) => {
            const [row] = planRows([reading.characteristic], units)
            return (
              <tr key={row.number}>
                <td className="number">{row.number}</td>
                <th scope="row">{row.words}</th>
                <td>{foundText(reading, units)}</td>
                <td>{row.allowed}</td>
                <td>
                  <MarkWithWord answer={conformityAnswer[conformities[index]]} word={conformities[index]} />
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </section>
  )
}
