import type { Shown } from '../state/design-store.ts'
import { movedHoles } from '../state/design-text.ts'

/** What was changed by hand since the file was opened, and the way back. */
export function MovedHoles({ shown, putBack }: { readonly shown: Shown; readonly putBack: () => void }) {
  const moved = movedHoles(shown.fileText, shown.text)
  if (moved.length === 0) {
    return (
      <p className="aside screen-only">
        Drag a pin that has a dotted ring, or reach it with the Tab key and move it with the arrow keys: the sentence answers at
        once.
      </p>
    )
  }
  return (
    <div className="aside moved">
      <p>
        Moved, not saved: {moved.map(({ hole, from, to }) => `${hole} from ${from} to ${to}`).join('; ')}.{' '}
        <button type="button" className="plain" onClick={putBack}>
          Put back
        </button>
      </p>
    </div>
  )
}
