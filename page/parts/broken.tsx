import { memo, useMemo, useState } from 'react'
import { brokenOf, type Evaluation } from '../../engine/index.ts'
import { brokenGround, brokenHeads, brokenRows, brokenSentence } from '../../report/index.ts'

/** What the finger does when a pin, a part or a spring gives way: worked out when somebody wants to know. */
export const BrokenList = memo(function BrokenList({ evaluation }: { readonly evaluation: Evaluation }) {
  const [isOpen, setOpen] = useState(false)
  return (
    <section aria-labelledby="breaks">
      <h2 id="breaks">What happens when it breaks?</h2>
      {isOpen ? (
        <Breaks evaluation={evaluation} />
      ) : (
        <button type="button" className="plain screen-only" onClick={() => setOpen(true)}>
          Take out one thing after the other
        </button>
      )}
    </section>
  )
})

function Breaks({ evaluation }: { readonly evaluation: Evaluation }) {
  const broken = useMemo(() => brokenOf(evaluation), [evaluation])
  if (broken === undefined) return <p className="aside">The finger cannot be moved, so nothing can be taken out of it.</p>
  const { what, margin, says, finger, loose, limp } = brokenHeads
  return (
    <>
      <p>{brokenSentence(broken)}</p>
      <table className="rows compact">
        <thead>
          <tr>
            <th scope="col">{what}</th>
            <th scope="col" className="number">
              {margin}
            </th>
            {[says, finger, loose, limp].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {brokenRows(evaluation.design, broken).map((row) => (
            <tr key={row.what}>
              <th scope="row">{row.what}</th>
              <td className="number">{row.margin}</td>
              <td>{row.says}</td>
              <td>{row.finger}</td>
              <td>{row.loose}</td>
              <td>{row.limp}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="aside">{brokenGround}</p>
    </>
  )
}
