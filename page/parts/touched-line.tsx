import { goTo } from '../state/attention.ts'
import type { Touched } from '../state/grasp.ts'

/** What was touched in the drawing: the rows where its values stand, and what moving it changes or why it cannot be moved. */
export function TouchedLine({ touched }: { readonly touched: Touched | undefined }) {
  if (touched === undefined) {
    return (
      <p className="aside screen-only">
        Drag a thing that has a dotted ring, or reach it with the Tab key and move it with the arrow keys: the sentence answers at
        once. Touch anything else to find its values.
      </p>
    )
  }
  return (
    <p className="aside screen-only" role="status">
      {touched.says}
      {touched.rows.map(({ id, words }) => (
        <span key={id}>
          {' · '}
          <button type="button" className="plain" onClick={() => goTo(id)}>
            {words}
          </button>
        </span>
      ))}
      {touched.note === undefined ? '' : ` · ${touched.note}`}
    </p>
  )
}
