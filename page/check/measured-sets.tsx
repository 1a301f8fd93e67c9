import { memo } from 'react'
import type { Consequence } from '../../engine/index.ts'
import {
  checkSentence,
  conformityAnswer,
  foundText,
  measuredYieldSentence,
  outcomeRows,
  overallVerdict,
  planRows,
  readingRow,
  toldIn,
} from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { useUnits } from '../state/units.ts'
import type { PageSet } from './readings.ts'
import { SetFigures } from './set-figures.tsx'
import { SheetButton } from './sheet-button.tsx'

/** Of more sets than these only the sentences and what is to decide stand open: whoever looks for one set must find it. */
const UNFOLDED_most = 3

/** Every measured set: its sentence, its readings, and what of the requirements it does not meet. */
export const MeasuredSets = memo(function MeasuredSets(about: {
  readonly sets: readonly PageSet[]
  /** Of the design that they were judged against. */
  readonly text: string
  /** The design has changed since they were judged. */
  readonly isOld: boolean
  readonly passedOver: readonly string[]
}) {
  const { sets, text, isOld, passedOver } = about
  return (
    <>
      {isOld ? <p className="aside">The design has changed since these sets were judged: open the file again.</p> : null}
      {passedOver.length === 0 ? null : <p className="aside">Passed over: the columns {passedOver.join(', ')}.</p>}
      {sets.map((set) => (
        <MeasuredSet key={set.serial} set={set} text={text} isUnfolded={sets.length <= UNFOLDED_most} />
      ))}
    </>
  )
})

function MeasuredSet(about: { readonly set: PageSet; readonly text: string; readonly isUnfolded: boolean }) {
  const { set, text, isUnfolded } = about
  const units = useUnits()
  const { serial, evaluation, spread, decisions } = set
  return (
    <section aria-label={`Set ${serial}`}>
      <h2>
        Set {serial} <MarkWithWord answer={evaluation === undefined ? 'short' : overallVerdict(evaluation.findings)} />
      </h2>
      <p>{checkSentence(set)}</p>
      <p>{spread === undefined ? 'The ways that are still open are being counted.' : measuredYieldSentence(spread)}</p>
      <SheetButton set={set} text={text} />
      {decisions.map((consequence) => (
        <Decision key={consequence.reading.characteristic.id} consequence={consequence} />
      ))}
      <details open={isUnfolded}>
        <summary>Readings and figures</summary>
        <ReadingsTable set={set} />
        {evaluation === undefined ? null : <SetFigures evaluation={toldIn(units, evaluation)} spread={spread} />}
      </details>
    </section>
  )
}

function Decision({ consequence }: { readonly consequence: Consequence }) {
  const units = useUnits()
  const [{ words }] = planRows([consequence.reading.characteristic])
  return (
    <>
      <h3>
        To decide: {words}, found {foundText(consequence.reading, units)}
      </h3>
      <dl>
        {outcomeRows(consequence, units).map(({ disposition, answer, words: told }) => (
          <div key={disposition}>
            <dt>
              {disposition}: <MarkWithWord answer={answer} />
            </dt>
            <dd>{told}</dd>
          </div>
        ))}
      </dl>
    </>
  )
}

function ReadingsTable({ set: { readings, conformities } }: { readonly set: PageSet }) {
  const units = useUnits()
  return (
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
          const row = readingRow(reading, units)
          return (
            <tr key={row.words}>
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
  )
}
