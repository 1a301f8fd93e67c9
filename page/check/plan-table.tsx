import { memo, useEffect, useMemo } from 'react'
import { inspectionPlan, readVariation } from '../../engine/index.ts'
import { drawBalloons, planAdvice, planRows, svgText } from '../../report/index.ts'
import { useUnits } from '../state/units.ts'
import styles from './check.module.css'
import { planWeighing } from './plan-weighing.ts'

/** The inspection plan: what is allowed, with what it is measured, on how many, and what feels it; and the drawings with its numbers. */
export const PlanTable = memo(function PlanTable({ text }: { readonly text: string }) {
  const variation = useMemo(() => readVariation(text).value, [text])
  const plan = useMemo(() => (variation === undefined ? [] : inspectionPlan(variation)), [variation])
  if (variation === undefined || plan.length === 0)
    return <p className="aside">The design limits no size, so there is nothing to measure it against.</p>
  return (
    <>
      <Rows about={{ text, design: variation.design, plan }} />
      <h3>Where the numbers are</h3>
      <div className={styles.drawings}>
        {variation.design.parts.map((part) => {
          const drawn = drawBalloons(part, plan)
          return drawn === undefined ? null : <div key={part.id} dangerouslySetInnerHTML={{ __html: svgText(drawn) }} />
        })}
      </div>
    </>
  )
})

interface Planned {
  readonly text: string
  readonly design: NonNullable<ReturnType<typeof readVariation>['value']>['design']
  readonly plan: ReturnType<typeof inspectionPlan>
}

function Rows({ about: { text, design, plan } }: { readonly about: Planned }) {
  const units = useUnits()
  const weighing = planWeighing.use()
  const isOf = weighing?.text === text
  useEffect(() => {
    if (!isOf) planWeighing.begin({ text })
  }, [isOf, text])
  const matters = isOf ? weighing.reached : undefined
  const rows = useMemo(() => planRows(plan, units), [plan, units])
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
          <th scope="col">Measured with, on</th>
          <th scope="col">What feels it most</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ number, words, drawn, allowed, bare }, index) => {
          const { [index]: characteristic } = plan
          const matter = matters?.[index]
          const advice = planAdvice({ design, characteristic, ...(matter && { matter }) }, units)
          return (
            <tr key={number}>
              <td className="number">{number}</td>
              <th scope="row">{words}</th>
              <td>{drawn}</td>
              <td>
                {allowed}
                {bare === undefined ? null : <span className="reason">before coating {bare}</span>}
              </td>
              <td>
                {advice.gauge}
                {matters === undefined ? null : <span className="reason">{advice.measured}</span>}
              </td>
              <td>{matters === undefined ? 'being worked out' : advice.matters}</td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
