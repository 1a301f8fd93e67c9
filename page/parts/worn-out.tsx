import { memo, useMemo } from 'react'
import type { Design, Life } from '../../engine/index.ts'
import {
  caution,
  drawWear,
  lifeHeads,
  lifeRows,
  placeHeads,
  placeRows,
  placeWorking,
  wearGround,
  wearSentence,
} from '../../report/index.ts'
import { wearRun } from '../state/wear-run.ts'
import { Drawn } from './drawn.tsx'
import { OpeningRow } from './opening-row.tsx'
import { ProblemList } from './refusal.tsx'
import { RunLine } from './run-line.tsx'
import styles from './worn-out.module.css'

/** When the finger is worn out: worked through in steps when somebody wants to know. */
export const WornOut = memo(function WornOut({ design, text }: { readonly design: Design; readonly text: string }) {
  const run = wearRun.use()
  const reached = run?.reached
  return (
    <section aria-labelledby="worn-out">
      <h2 id="worn-out">When is it worn out?</h2>
      {reached?.life === undefined ? null : <p className="aside">{wearSentence(design, reached.life)}</p>}
      <RunLine {...{ run, text }} begin={() => wearRun.begin({ text })} stop={wearRun.stop} />
      {reached?.missing === undefined ? null : <ProblemList file="the life of this design" problems={reached.missing} />}
      {reached?.life === undefined ? null : <LifeOfIt design={design} life={reached.life} />}
    </section>
  )
})

/** Of the table of places. */
const PLACE_COLUMNS = 5

const LifeOfIt = memo(function LifeOfIt({ design, life }: { readonly design: Design; readonly life: Life }) {
  const shape = useMemo(() => drawWear(design, life), [design, life])
  return (
    <>
      <Drawn shape={shape} className={styles.curves} />
      <table className="rows compact">
        <thead>
          <tr>
            {[lifeHeads.figure, lifeHeads.atMost, lifeHeads.atLikely, 'over the stated life'].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lifeRows(design, life).map(({ figure, atMost, atLikely, mark }) => (
            <tr key={figure}>
              <th scope="row">{figure}</th>
              <td>{atMost}</td>
              <td>{atLikely}</td>
              <td className="needed">{mark}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <table className="rows compact findings">
        <thead>
          <tr>
            <th scope="col">{placeHeads.place}</th>
            {[placeHeads.rubbed, placeHeads.atMost, `worn at the end, ${placeHeads.atLikely}`, placeHeads.bareAtMost].map(
              (head) => (
                <th key={head} scope="col" className="number">
                  {head}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {placeRows(life).map(({ place, rubbed, atMost, atLikely, bareAtMost }, index) => (
            <OpeningRow key={place} head={place} columns={PLACE_COLUMNS} workings={() => [placeWorking(life, index)]}>
              <td className="number" data-label={placeHeads.rubbed}>
                {rubbed}
              </td>
              <td className="number" data-label={placeHeads.atMost}>
                {atMost}
              </td>
              <td className="number" data-label={`worn at the end, ${placeHeads.atLikely}`}>
                {atLikely}
              </td>
              <td className="number" data-label={placeHeads.bareAtMost}>
                {bareAtMost}
              </td>
            </OpeningRow>
          ))}
        </tbody>
      </table>
      <p className="aside">
        {wearGround} {caution}
      </p>
    </>
  )
})
