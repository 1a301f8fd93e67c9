import { inspectionPlan, type Matter, readVariation } from '../../engine/index.ts'
import { firstArticleFile } from '../../report/index.ts'
import { saveFile } from '../revisions/save-file.ts'
import { planWeighing, sheetWeighing } from './plan-weighing.ts'
import type { PageSet } from './readings.ts'

/** Saves the first-article sheet of a set, once it is known what matters most. @param text of the design that the set was judged against */
export function SheetButton({ set, text }: { readonly set: PageSet; readonly text: string }) {
  const runs = [planWeighing.use(), sheetWeighing.use()].filter((run) => run?.text === text)
  const matters = runs.find((run) => run?.reached !== undefined)?.reached
  const isGoing = runs.some((run) => run?.isGoing)
  if (matters !== undefined)
    return (
      <button type="button" className="plain screen-only" onClick={() => save({ set, text, matters })}>
        Save the first-article sheet
      </button>
    )
  // The plan on this page is that of the design as it stands; a lot was made to a revision that may be another.
  return (
    <button type="button" className="plain screen-only" disabled={isGoing} onClick={() => sheetWeighing.begin({ text })}>
      {isGoing ? 'Being weighed for the first-article sheet …' : 'Weigh its plan for the first-article sheet'}
    </button>
  )
}

interface Sheet {
  readonly set: PageSet
  readonly text: string
  readonly matters: readonly (Matter | undefined)[]
}

function save({ set, text, matters }: Sheet): void {
  const { value } = readVariation(text)
  if (value === undefined) return
  const { spread, decisions, papers, decided, measuredWith } = set
  const more = {
    ...(spread && { spread }),
    ...(papers && { papers }),
    ...(decided && { decided }),
    ...(measuredWith && { measuredWith }),
    consequences: decisions,
  }
  const sheet = firstArticleFile({ design: value.design, plan: inspectionPlan(value), matters, set, ...more })
  saveFile(new Blob([sheet], { type: 'text/html' }), `first-article-${set.serial}.html`)
}
