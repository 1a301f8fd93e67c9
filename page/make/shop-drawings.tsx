import { memo, useMemo, useState } from 'react'
import type { Evaluation, ShopDesign } from '../../engine/index.ts'
import { type DrawingsAsked, drawingSheets, type PaperName, packName, paperNames, sheetShape } from '../../report/index.ts'
import { Drawn } from '../parts/drawn.tsx'
import { DeedLine } from '../revisions/deed-line.tsx'
import { saveFile } from '../revisions/save-file.ts'
import { useDeed } from '../revisions/use-deed.ts'
import { fetchPack } from './fetch-pack.ts'
import styles from './make.module.css'

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
  const { sheets, left } = useMemo(
    () => drawingSheets(shop, { paper, projection, evaluation, ...(revision !== undefined && { revision }) }),
    [shop, evaluation, paper, projection, revision],
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

function SavePack({ text, name, asked }: { readonly text: string; readonly name: string; readonly asked: DrawingsAsked }) {
  const deed = useDeed()
  const save = () =>
    deed.run('Drawings, solids and lists are being made …', async () => {
      const { zip, left } = await fetchPack({ text, name, asked })
      const file = packName(name, asked.revision)
      saveFile(zip, file)
      return [`Saved as ${file}, with a list of checksums.`, ...left].join(' ')
    })
  return (
    <div className="screen-only">
      <p>
        <button type="button" className="plain" disabled={deed.doing !== undefined} onClick={save}>
          Save all that goes to the shop
        </button>
      </p>
      <DeedLine {...deed} />
      <p className="aside">
        One zip: drawings as SVG and PDF, solids as STEP and STL, parts list, inspection plan and a note to the coater. The same
        design gives the same file.
      </p>
    </div>
  )
}
