import { memo, useMemo, useState } from 'react'
import { type BrokenMember, brokenOf, type Design, type Evaluation, type Working, workingsOf } from '../../engine/index.ts'
import { brokenGround, brokenHeads, brokenRows, brokenSentence, brokenWorking, caution } from '../../report/index.ts'
import { OpeningRow } from './opening-row.tsx'

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
      <table className="rows compact findings">
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
          {brokenRows(evaluation.design, broken).map((row, index) => (
            <OpeningRow
              key={row.what}
              head={row.what}
              columns={Object.keys(row).length}
              workings={() => workingsWithout(evaluation.design, broken.members[index])}
            >
              <td className="number" data-label={margin}>
                {row.margin}
              </td>
              <td data-label={says}>{row.says}</td>
              <td data-label={finger}>{row.finger}</td>
              <td data-label={loose}>{row.loose}</td>
              <td data-label={limp}>{row.limp}</td>
            </OpeningRow>
          ))}
        </tbody>
      </table>
      <p className="aside">
        {brokenGround} {caution}
      </p>
    </>
  )
}

/** What the finger does without it, and the check that gives it its margin. */
function workingsWithout(design: Design, member: BrokenMember): readonly Working[] {
  const check = member.figure === undefined ? undefined : workingsOf(design).get(member.figure)
  return [brokenWorking(design, member), ...(check ? [check] : [])]
}
