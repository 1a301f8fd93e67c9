import { inspectionPlan, readVariation } from '../../engine/index.ts'
import { firstArticleFile } from '../../report/index.ts'
import { saveFile } from '../revisions/save-file.ts'
import { planWeighing } from './plan-weighing.ts'
import type { PageSet } from './readings.ts'

/** Saves the first-article sheet of a set, once it is known what matters most. @param text of the design that the set was judged against */
export function SheetButton({ set, text }: { readonly set: PageSet; readonly text: string }) {
  const weighing = planWeighing.use()
  const matters = weighing?.text === text ? weighing.reached : undefined
  const save = (): void => {
    const { value } = readVariation(text)
    if (value === undefined || matters === undefined) return
    const { design } = value
    const sheet = firstArticleFile({ design, plan: inspectionPlan(value), matters, set, ...withSpread(set) })
    saveFile(new Blob([sheet], { type: 'text/html' }), `first-article-${set.serial}.html`)
  }
  return (
    <button type="button" className="plain screen-only" disabled={matters === undefined} onClick={save}>
      Save the first-article sheet
    </button>
  )
}

const withSpread = ({ spread, decisions }: PageSet) => ({ ...(spread && { spread }), consequences: decisions })
