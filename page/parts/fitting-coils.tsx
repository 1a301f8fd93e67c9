import { memo, useMemo, useState } from 'react'
import { type Design, fittingSprings } from '../../engine/index.ts'
import { caution, type SpringRow, springHeads, springRows, springSentence } from '../../report/index.ts'
import { ProblemList } from './refusal.tsx'

/** Coils of usual wire that could stand in the place of a spring: looked for when somebody wants to know. */
export const FittingCoils = memo(function FittingCoils({ design }: { readonly design: Design }) {
  const [asked, setAsked] = useState<string>()
  const index = design.springs.findIndex(({ id }) => id === asked)
  if (design.springs.length === 0) return null
  return (
    <section aria-labelledby="coils">
      <h2 id="coils">Which coils would do?</h2>
      <p className="aside screen-only">
        Coils of usual wire that give what a spring gives, in the room that the design states for it.{' '}
        {design.springs.map(({ id }) => (
          <button key={id} type="button" className="plain" aria-pressed={id === asked} onClick={() => setAsked(id)}>
            For spring {id}
          </button>
        ))}
      </p>
      {index < 0 ? null : <Coils design={design} spring={index} />}
    </section>
  )
})

function Coils({ design, spring }: { readonly design: Design; readonly spring: number }) {
  const found = useMemo(() => fittingSprings(design, spring), [design, spring])
  if (found.problems !== undefined) return <ProblemList file="the springs of this design" problems={found.problems} />
  const rows = springRows(found.value)
  return (
    <>
      <p>{springSentence(found.value)}</p>
      {rows.length === 0 ? null : <CoilTable rows={rows} />}
      <p className="aside">{caution}</p>
    </>
  )
}

const { wire, gives, free, set, life, least, left } = springHeads

/** Two lines a coil: what is wound and what it gives, then its margins and the room that is left. */
function CoilTable({ rows }: { readonly rows: readonly SpringRow[] }) {
  return (
    <table className="rows compact findings">
      <thead>
        <tr>
          {[wire, gives, free].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
          {[set, life, least].map((head) => (
            <th key={head} scope="col" className="number">
              {head}
            </th>
          ))}
          <th scope="col">{left}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={`${row.wire} ${row.diameter} ${row.outside} ${row.turns}`}>
            <th scope="row">
              {row.wire} {row.diameter} {springHeads.diameter}
              <span className="reason">
                {row.turns} {springHeads.turns}, {row.outside} {springHeads.diameter} {springHeads.outside}
              </span>
            </th>
            <td data-label={gives}>
              {row.gives}
              <span className="reason">{row.rate}</span>
            </td>
            <td data-label={free}>{row.free}</td>
            <td className="number" data-label={set}>
              {row.set}
            </td>
            <td className="number" data-label={life}>
              {row.life}
            </td>
            <td className="number" data-label={least}>
              {row.least}
            </td>
            <td data-label={left}>{row.left}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
