import { memo } from 'react'
import { pairRows, pairSentence } from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { RunLine } from '../parts/run-line.tsx'
import { pairing } from './pairing.ts'
import type { PageSet } from './readings.ts'

/** Which pieces of the measured sets go together so that most fingers work. Every pair is a finger that is evaluated, so it begins by hand. */
export const LotPairs = memo(function LotPairs({ sets, text }: { readonly sets: readonly PageSet[]; readonly text: string }) {
  const run = pairing.use()
  if (sets.length < 2) return null
  const begin = (): void => pairing.begin({ text, sets: sets.map(({ serial, readings }) => ({ serial, readings })) })
  return (
    <section aria-labelledby="pairs">
      <h2 id="pairs">Which pieces go together?</h2>
      <p className="aside screen-only">
        Parts and pins of these sets are put together anew so that most fingers work, and among those the margins are largest.
      </p>
      <RunLine run={run} text={text} begin={begin} stop={pairing.stop} />
      {run?.reached === undefined ? null : (
        <>
          <p>{pairSentence(run.reached)}</p>
          <table className="rows compact">
            <thead>
              <tr>
                <th scope="col" className="number">
                  Set
                </th>
                <th scope="col">Verdict</th>
                <th scope="col">Put together of</th>
              </tr>
            </thead>
            <tbody>
              {pairRows(run.reached).map(({ number, answer, pieces }) => (
                <tr key={number}>
                  <td className="number">{number}</td>
                  <td>
                    <MarkWithWord answer={answer} />
                  </td>
                  <td>{pieces}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
    </section>
  )
})
