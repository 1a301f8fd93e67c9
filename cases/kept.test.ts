/**
 * Sentences and drawings of the example designs as they are, to be read when they change: `npx vitest run --project cases -u` writes them anew.
 * SOURCE own output, reviewed by eye; a change here has to be meant.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { type Evaluation, evaluate, readDesign } from '../engine/index.ts'
import { drawFinger, drawPlot, drawTravelScale, plotGroups, questions, svgText, verdictSentence } from '../report/index.ts'

const NAMES = ['heron', 'heron-jams', 'heron-stop-at-mcp', 'kestrel']

function evaluated(name: string): Evaluation {
  const read = readDesign(readFileSync(join(import.meta.dirname, `../designs/${name}.json`), 'utf8'), name)
  if (read.value === undefined) throw new Error(`${name} was refused: ${JSON.stringify(read.problems)}`)
  return evaluate(read.value)
}

describe('kept outputs', () => {
  it('of the sentences are as they were', async () => {
    const texts = NAMES.map((name) => {
      const evaluation = evaluated(name)
      const answers = questions.map(({ word, sentence }) => `${word}: ${sentence(evaluation)}`)
      return `${[name, verdictSentence(evaluation), ...answers].join('\n\n')}\n`
    })
    await expect(texts.join('\n')).toMatchFileSnapshot('kept/sentences.txt')
  })

  it('of the heron, closed and carrying its bag, is drawn as it was', async () => {
    const svg = drawFinger(evaluated('heron'), 1, { question: { kind: 'hold', loadCase: 'carry' } })
    await expect(svg).toMatchFileSnapshot('kept/heron-carries.svg')
  })

  it('of the heron, open and bare, is drawn as it was', async () => {
    await expect(drawFinger(evaluated('heron'), 0)).toMatchFileSnapshot('kept/heron-open.svg')
  })

  it('of the kestrel, letting go, is drawn as it was', async () => {
    await expect(drawFinger(evaluated('kestrel'), 1, { question: { kind: 'return' } })).toMatchFileSnapshot(
      'kept/kestrel-lets-go.svg',
    )
  })

  it('of the dead-centre plot and the scale are as they were', async () => {
    const evaluation = evaluated('heron')
    const group = plotGroups(evaluation).find(({ id }) => id === 'margin')
    if (group === undefined || evaluation.travel === undefined) throw new Error('the heron has no dead-centre margin to plot')
    const plot = drawPlot({ group, travel: evaluation.travel }, { width_px: 480, height_px: 240, pointer_ratio: 1 })
    await expect(svgText(plot.svg)).toMatchFileSnapshot('kept/heron-margin.svg')
    const scale = drawTravelScale(evaluation.travel, { width_px: 900, pointer_ratio: 1 })
    await expect(svgText(scale.svg)).toMatchFileSnapshot('kept/heron-scale.svg')
  })
})
