import { memo, useMemo, useState } from 'react'
import { type Design, fittingSprings } from '../../engine/index.ts'
import { type SpringRow, springHeads, springRows, springSentence } from '../../report/index.ts'
import { ProblemList } from './refusal.tsx'
import styles from './sensitivities.module.css'

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

/** Columns of words; all others are numbers. */
const inWords: ReadonlySet<string> = new Set(['wire', 'gives', 'free', 'left'])

function Coils({ design, spring }: { readonly design: Design; readonly spring: number }) {
  const found = useMemo(() => fittingSprings(design, spring), [design, spring])
  if (found.problems !== undefined) return <ProblemList file="the springs of this design" problems={found.problems} />
  const keys = Object.keys(springHeads) as (keyof SpringRow)[]
  const rows = springRows(found.value)
  return (
    <>
      <p>{springSentence(found.value)}</p>
      {rows.length === 0 ? null : (
        <div className={styles.wide}>
          <table className="rows compact">
            <thead>
              <tr>
                {keys.map((key) => (
                  <th key={key} scope="col" className={inWords.has(key) ? '' : 'number'}>
                    {springHeads[key]}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={keys.map((key) => row[key]).join(' ')}>
                  {keys.map((key) => (
                    <td key={key} className={inWords.has(key) ? '' : 'number'}>
                      {row[key]}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </>
  )
}
