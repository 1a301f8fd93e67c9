import { memo } from 'react'
import { guardWorking, yieldWorking } from '../../engine/index.ts'
import {
  checkSentence,
  conformityAnswer,
  figureUnitOf,
  foundText,
  measuredYieldSentence,
  overallVerdict,
  readingRow,
  toldIn,
} from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { OpenedWorking } from '../parts/opened-working.tsx'
import { useUnits } from '../state/units.ts'
import { Decision } from './decision.tsx'
import type { FromBench, PageSet } from './readings.ts'
import { SetFigures } from './set-figures.tsx'
import { SheetButton } from './sheet-button.tsx'

/** Of more sets than these only the sentences and what is to decide stand open: whoever looks for one set must find it. */
const UNFOLDED_most = 3

/** Every measured set: its sentence, its readings, and what of the requirements it does not meet. */
export const MeasuredSets = memo(function MeasuredSets(about: {
  readonly sets: readonly PageSet[]
  /** Of the design that they were judged against. */
  readonly text: string
  /** Where they are kept; absent for those of a file. */
  readonly bench: FromBench | undefined
}) {
  const { sets, ...rest } = about
  return sets.map((set) => <MeasuredSet key={set.serial} set={set} {...rest} isUnfolded={sets.length <= UNFOLDED_most} />)
})

function MeasuredSet(about: {
  readonly set: PageSet
  readonly text: string
  readonly bench: FromBench | undefined
  readonly isUnfolded: boolean
}) {
  const { set, text, bench, isUnfolded } = about
  const units = useUnits()
  const { serial, evaluation, spread, decisions, decided } = set
  return (
    <section aria-label={`Set ${serial}`}>
      <h2>
        Set {serial} <MarkWithWord answer={evaluation === undefined ? 'short' : overallVerdict(evaluation.findings)} />
      </h2>
      <p>{checkSentence(set)}</p>
      {spread === undefined ? (
        <p>The ways that are still open are being counted.</p>
      ) : (
        <OpenedWorking working={yieldWorking(spread)}>{measuredYieldSentence(spread)}</OpenedWorking>
      )}
      <SheetButton set={set} text={text} />
      {decisions.map((consequence) => (
        <Decision
          key={consequence.reading.characteristic.id}
          {...{ consequence, serial, bench }}
          decided={decided?.findLast(({ characteristic }) => characteristic === consequence.reading.characteristic.id)}
        />
      ))}
      <details open={isUnfolded}>
        <summary>Readings and figures</summary>
        <ReadingsTable set={set} />
        {evaluation === undefined ? null : <SetFigures evaluation={toldIn(units, evaluation)} spread={spread} />}
      </details>
    </section>
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
              <th scope="row">
                <OpenedWorking working={guardWorking(reading, figureUnitOf(reading.characteristic.unit))}>
                  {row.words}
                </OpenedWorking>
              </th>
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
