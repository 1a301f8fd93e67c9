import { useMemo } from 'react'
import { documentDifferences, type TypedValue } from '../../engine/index.ts'
import { sayReading } from '../../report/index.ts'
import { useUnits } from '../state/units.ts'
import styles from './revisions.module.css'

/** A text and what it is called. */
export interface NamedText {
  readonly words: string
  readonly text: string
}

/** Every value that differs, as it was typed on either side and as it is read. */
export function ComparedValues({ before, after }: { readonly before: NamedText; readonly after: NamedText }) {
  const differences = useMemo(() => documentDifferences(before.text, after.text), [before.text, after.text])
  if (differences.length === 0) return <p>They do not differ in any value.</p>
  return (
    <table className={`rows findings ${styles.compared}`}>
      <caption>{differences.length === 1 ? 'One value differs' : `${differences.length} values differ`}</caption>
      <thead>
        <tr>
          <th scope="col">Where</th>
          <th scope="col">{before.words}</th>
          <th scope="col">{after.words}</th>
        </tr>
      </thead>
      <tbody>
        {differences.map((difference) => (
          <tr key={difference.place.join('.')}>
            <th scope="row">{difference.where}</th>
            <td data-label={before.words}>
              <Typed value={difference.before} />
            </td>
            <td data-label={after.words}>
              <Typed value={difference.after} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function Typed({ value }: { readonly value: TypedValue | undefined }) {
  const units = useUnits()
  if (value === undefined) return <span className="none">not there</span>
  const { typed, read } = value
  const said = read === undefined ? undefined : sayReading(read, units)
  // What is typed as it is read need not be said twice.
  const isSaid = said === undefined || said === typed.trim().replaceAll('*', '·').replaceAll('-', '−')
  return (
    <>
      <span className={styles.typed}>{typed}</span>
      {isSaid ? null : <span className={styles.reading}> = {said}</span>}
    </>
  )
}
