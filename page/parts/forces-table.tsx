import type { Design, ForcePicture } from '../../engine/index.ts'
import { useSetValue } from '../state/units.ts'
import { Value } from './value.tsx'

/** The forces of the drawing as numbers: at every pin and stop, and what the wearer gives. */
export function ForcesTable({ design, forces }: { readonly design: Design; readonly forces: ForcePicture }) {
  const setValue = useSetValue()
  if (forces.why !== undefined && forces.pins.length === 0) return <p className="aside">{forces.why}</p>
  return (
    <details className="forces">
      <summary>
        {forces.effort === undefined ? (forces.why ?? forces.title) : `${forces.effort.words} `}
        {forces.effort === undefined ? null : <Value value={setValue(forces.effort.value, forces.effort.unit)} />}
        <span className="hint">, drawn without play and stretch; forces at every pin</span>
      </summary>
      <table className="rows compact">
        <thead>
          <tr>
            <th scope="col">Pin or stop</th>
            <th scope="col">Between</th>
            <th scope="col" className="number">
              Force
            </th>
            <th scope="col" className="number">
              Friction circle
            </th>
          </tr>
        </thead>
        <tbody>
          {forces.pins.map((force) => (
            <tr key={`${force.pin} ${force.part} ${force.against}`}>
              <th scope="row">{design.pins[force.pin].id}</th>
              <td>
                {design.parts[force.part].name} and {design.parts[force.against].name}
              </td>
              <td className="number">
                <Value value={setValue(Math.hypot(force.force_N.x, force.force_N.y), 'N')} />
              </td>
              <td className="number">
                <Value value={setValue(force.frictionCircle_mm, 'mm')} />
              </td>
            </tr>
          ))}
          {forces.stops.map((force) => (
            <tr key={`stop ${force.stop}`}>
              <th scope="row">{design.stops[force.stop].id}</th>
              <td>stop</td>
              <td className="number">
                <Value value={setValue(Math.hypot(force.force_N.x, force.force_N.y), 'N')} />
              </td>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  )
}
