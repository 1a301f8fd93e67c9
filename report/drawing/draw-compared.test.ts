import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Change, changeDocument, evaluate, postureAt, readDesign, renamed } from '../../engine/index.ts'
import { drawCompared, drawingStyle, layoutCompared } from '../index.ts'
import { svgText } from './svg.ts'
import { onSheet } from './view.ts'

const heron = readFileSync(new URL('../../designs/heron.json', import.meta.url), 'utf8')

function fingerOf(words: string, changes: readonly Change[] = []) {
  const { value, problems } = readDesign(changeDocument(heron, changes), 'heron')
  if (value === undefined) throw new Error(`the example is refused: ${problems.map(({ found }) => found)}`)
  return { words, evaluation: evaluate(value) }
}

const before = fingerOf('revision 1')
const topY = ['parts', 'proximal', 'holes', 'top', 'y']
const after = fingerOf('what stands now', [{ kind: 'set', place: topY, value: '4.83 mm' }])
/** The text of two fingers over each other. */
const drawn = (...about: Parameters<typeof drawCompared>) => svgText(drawCompared(...about))
const toClosed = { sheet: sheetOf(before, after), arc_ratio: 1 }

function sheetOf(...fingers: readonly ReturnType<typeof fingerOf>[]) {
  const laid = fingers.flatMap(({ evaluation: { design, travel } }) => (travel === undefined ? [] : [{ design, travel }]))
  return layoutCompared(laid, 900)
}

/** The group of one finger, without the sample of its line below. */
function linesOf(svg: string, name: 'earlier' | 'later'): string {
  return new RegExp(`<g class="${name}">(.*?)</g>`).exec(svg)?.[1] ?? ''
}

function pinCentre(finger: ReturnType<typeof fingerOf>, { id, arc_ratio }: { readonly id: string; readonly arc_ratio: number }) {
  const { design } = finger.evaluation
  const at = postureAt(finger.evaluation, arc_ratio).pinsAt[design.pins.findIndex((pin) => pin.id === id)]
  const { x, y } = onSheet(toClosed.sheet.view, at)
  const px = (value: number) => Math.round(value * 100) / 100
  return `cx="${px(x)}" cy="${px(y)}"`
}

describe('two fingers over each other', () => {
  it('are told apart by line type: the earlier is dashed, the later full, both in the same ink', () => {
    const rule = (name: string) => drawingStyle.split('\n').find((row) => row.startsWith(`.drawing .${name}`)) ?? ''
    expect(rule('earlier *')).toMatch(/stroke: var\(--ink.*stroke-dasharray: \d/)
    expect(rule('later')).not.toContain('dasharray')
    expect(drawn({ before, after }, toClosed)).toContain('dashed revision 1, full what stands now')
  })

  it('have the pin that was moved at both of its places, open and closed', () => {
    for (const arc_ratio of [0, 0.5, 1]) {
      const svg = drawn({ before, after }, { ...toClosed, arc_ratio })
      const [was, is] = [before, after].map((finger) => pinCentre(finger, { id: 'topNear', arc_ratio }))
      expect(was).not.toBe(is)
      expect(linesOf(svg, 'earlier')).toContain(was)
      expect(linesOf(svg, 'later')).toContain(is)
      expect(linesOf(svg, 'later')).not.toContain(was)
    }
  })

  it('lie line upon line where nothing was changed', () => {
    const svg = drawn({ before, after: fingerOf('the same') }, toClosed)
    // SOURCE property (the same finger twice)
    expect(linesOf(svg, 'earlier')).toBe(linesOf(svg, 'later'))
  })

  it('share a sheet that holds both over the whole travel', () => {
    const { view, width, height } = toClosed.sheet
    for (const { evaluation } of [before, after]) {
      for (const { pinsAt } of evaluation.travel?.postures ?? []) {
        for (const { x, y } of pinsAt.map((at) => onSheet(view, at))) {
          // SOURCE property (the sheet was laid out around everything that both sweep over)
          expect(x > 0 && x < width && y > 0 && y < height).toBe(true)
        }
      }
    }
  })

  it('are named once a pin, also one that only the earlier has', () => {
    const { value: changes = [] } = renamed(heron, ['pins', 'topNear'], 'upper')
    const svg = drawn({ before, after: fingerOf('renamed', changes) }, toClosed)
    const names = [...svg.matchAll(/class="name"[^>]*>([^<]*)</g)].map(([, name]) => name)
    expect(names).toContain('upper')
    expect(names).toContain('topNear')
    expect(new Set(names).size).toBe(names.length)
  })

  it('are one finger where the other cannot be moved', () => {
    const stuck = { ...after, evaluation: { ...after.evaluation } }
    Reflect.deleteProperty(stuck.evaluation, 'travel')
    const svg = drawn({ before, after: stuck }, toClosed)
    expect(svg).toContain('<g class="earlier"><path')
    expect(linesOf(svg, 'later')).not.toContain('circle')
  })

  it('are called what they are called, whatever that is', () => {
    const svg = drawn({ before: { ...before, words: '<b>&' }, after }, toClosed)
    expect(svg).toContain('&lt;b&gt;&amp;')
    expect(svg).not.toContain('<b>')
  })
})
