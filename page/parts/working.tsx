import { type Working as EngineWorking, shownFigure, type WorkingValue } from '../../engine/index.ts'
import { useSetValue, useUnits } from '../state/units.ts'
import { Formula } from './formula.tsx'
import { Value } from './value.tsx'
import styles from './working.module.css'

/** Formula, inputs, intermediate values and source of one figure. */
export function Working({ working }: { readonly working: EngineWorking }) {
  return (
    <div className={styles.working}>
      <p>{working.method}</p>
      {working.formulas.map((formula) => (
        <Formula key={formula} formula={formula} />
      ))}
      <Values heading="From" values={working.inputs} />
      <Values heading="Steps" values={working.steps} />
      <p className={styles.source}>Source: {working.source}</p>
    </div>
  )
}

function Values({ heading, values }: { readonly heading: string; readonly values: readonly WorkingValue[] }) {
  const setValue = useSetValue()
  const system = useUnits()
  const textOf = ({ value, unit, digits }: WorkingValue) =>
    digits === undefined ? setValue(value, unit) : shownFigure(value, unit, { system, digits })
  if (values.length === 0) return null
  return (
    <table className={styles.values}>
      <caption>{heading}</caption>
      <tbody>
        {values.map((value) => (
          <tr key={`${value.name} ${value.from ?? ''}`}>
            <th scope="row">{value.name}</th>
            <td className="number">
              <Value value={textOf(value)} />
            </td>
            <td className={styles.from}>{value.from}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
