import { memo, useMemo, useState } from 'react'
import { type Evaluation, readShopDesign, type ShopDesign } from '../../engine/index.ts'
import { type DrawingsAsked, drawingSheets, type PaperName, paperNames, sheetShape } from '../../report/index.ts'
import { Drawn } from '../parts/drawn.tsx'
import { useProposal } from '../state/proposal.ts'
import styles from './make.module.css'
import { SavePack } from './save-pack.tsx'

/** A design with its text and its name here. */
export interface PackedDesign {
  readonly shop: ShopDesign
  readonly evaluation: Evaluation
  readonly text: string
  readonly name: string
  /** As it stands in the title blocks. */
  readonly revision: string | undefined
}

/** The drawings of the parts, one looked at at a time, and all that goes to the shop as one file. */
export const ShopDrawings = memo(function ShopDrawings({ shop, evaluation, text, name, revision }: PackedDesign) {
  const [paper, setPaper] = useState<PaperName>('A4')
  const [projection, setProjection] = useState<DrawingsAsked['projection']>('third-angle')
  const proposed = useProposal()?.text
  const shown = useMemo(
    () => (proposed === undefined ? undefined : readShopDesign(proposed, name).value) ?? shop,
    [proposed, shop, name],
  )
  const { sheets, left } = useMemo(
    () => drawingSheets(shown, { paper, projection, evaluation, ...(revision !== undefined && { revision }) }),
    [shown, evaluation, paper, projection, revision],
  )
  const [chosen, setChosen] = useState('')
  const sheet = sheets.find((one) => one.name === chosen) ?? sheets.at(0)
  const shape = useMemo(() => sheet && sheetShape(sheet), [sheet])
  return (
    <section aria-labelledby="drawings">
      <h2 id="drawings">Drawings</h2>
      <div className={`screen-only ${styles.choices}`}>
        <Choice label="Part" value={sheet?.name ?? ''} choose={setChosen}>
          {sheets.map((one) => [one.name, one.title])}
        </Choice>
        <Choice label="Paper" value={paper} choose={(to) => setPaper(paperNames.find((one) => one === to) ?? 'A4')}>
          {paperNames.map((one) => [one, one])}
        </Choice>
        <Choice
          label="Views"
          value={projection}
          choose={(to) => setProjection(to === 'first-angle' ? 'first-angle' : 'third-angle')}
        >
          {[
            ['third-angle', 'third-angle'],
            ['first-angle', 'first-angle'],
          ]}
        </Choice>
      </div>
      <Drawn shape={shape} className={styles.sheet} />
      {shown === shop ? null : <p className="aside">As it would be with what is being added further down.</p>}
      {left.map((why) => (
        <p key={why} className="aside">
          {why}
        </p>
      ))}
      <SavePack text={text} name={name} asked={{ paper, projection, ...(revision !== undefined && { revision }) }} />
    </section>
  )
})

interface Chosen {
  readonly label: string
  readonly value: string
  readonly choose: (value: string) => void
  /** Values with their words. */
  readonly children: readonly (readonly [string, string])[]
}

function Choice({ label, value, choose, children }: Chosen) {
  return (
    <label>
      {label}{' '}
      <select value={value} onChange={(event) => choose(event.target.value)}>
        {children.map(([name, words]) => (
          <option key={name} value={name}>
            {words}
          </option>
        ))}
      </select>
    </label>
  )
}
