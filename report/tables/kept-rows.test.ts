import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { evaluate, readDesign } from '../../engine/index.ts'
import { keptFigureRows, keptFindingRows } from './kept-rows.ts'
import { resultDocument } from './result-document.ts'
import { findingRows } from './rows.ts'
import { setValue } from './value-text.ts'

const heron = readFileSync(new URL('../../designs/heron.json', import.meta.url), 'utf8')
const { value: design } = readDesign(heron, 'heron')
if (design === undefined) throw new Error('the example is refused')
const evaluation = evaluate(design)
/** As it comes back from the store: through JSON. */
const kept = JSON.parse(JSON.stringify(resultDocument(evaluation, 'the engine of that day')))
const titles = new Map(evaluation.figures.map(({ id, title }) => [id, title]))

for (const units of ['metric', 'inch'] as const) {
  describe(`a result that was kept, read in ${units} units`, () => {
    it('has the figures that the evaluation had', () => {
      // SOURCE property (kept and read back is what it was)
      const now = evaluation.figures.map(({ id, title, value, unit, why }) => {
        return { id, title, ...(value === undefined ? {} : { value: setValue(value, unit, units) }), ...(why && { why }) }
      })
      expect(keptFigureRows(kept.figures, { units, titles })).toEqual(now)
    })

    it('has the findings that the evaluation had', () => {
      const rows = keptFindingRows(kept.findings, { units, titles })
      const now = findingRows({ ...evaluation, units })
      // SOURCE property (kept and read back is what it was)
      expect(rows.map(({ id, title, verdict, found }) => ({ id, title, verdict, found }))).toEqual(
        now.map(({ id, title, verdict, found }) => ({ id, title, verdict, found })),
      )
    })
  })
}

it('needs are told with their unit, and yes or no in words', () => {
  const finding = { requirement: 'r', figure: 'f', verdict: 'met', margin: null } as const
  const of = (needed: object, unit: string) =>
    keptFindingRows([{ ...finding, found: 8, unit, needed } as never], { units: 'metric', titles: new Map() })[0]
  // SOURCE hand (a document carries degrees; three digits)
  expect(of({ atLeast: 7 }, 'deg')).toMatchObject({ title: 'f', needed: 'at least 7.00°', found: { number: '8.00', unit: '°' } })
  expect(of({ atMost: 3000 }, 'N·mm').needed).toBe('at most 3.00 N·m')
  expect(of({ is: false }, 'yes or no').needed).toBe('no')
})
