import { join } from 'node:path'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, it } from 'vitest'
import { typesetterAt } from './index.ts'

const home = join(import.meta.dirname, '..')
const typeset = typesetterAt(home)
const svg = (words: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 297 210"><text x="20" y="20" font-family="Source Sans 3" font-size="5">${words}</text></svg>`
const sheet = (words: string) => ({ title: words, width: 297, height: 210, svg: svg(words) })
const job = (...words: readonly string[]) => ({
  template: 'sheets',
  data: { title: 'Two "sheets" #let', sheets: words.map(sheet) },
})

describe('a typeset document', () => {
  it('is a PDF whose pages and words are read back by another program, the same bytes each time', async () => {
    let told = 0
    const [first, again] = await typeset([job('mount 3 ±0.02', 'link'), job('mount 3 ±0.02', 'link')], {
      onDone: (count) => (told = count),
    })
    // SOURCE other-method: pdfjs-dist reads the file
    const pdf = await getDocument({ data: first.slice(), verbosity: 0 }).promise
    expect(pdf.numPages).toBe(2)
    const page = await pdf.getPage(1)
    const { items } = await page.getTextContent()
    expect(items.map((item) => ('str' in item ? item.str : '')).join('')).toBe('mount 3 ±0.02')
    // SOURCE hand: A4 across, 297 × 72 / 25.4 points
    expect(page.view[2]).toBeCloseTo(841.89, 1)
    expect((await pdf.getMetadata()).info).toMatchObject({ Title: 'Two "sheets" #let' })
    expect(Buffer.from(again).equals(first)).toBe(true)
    expect(told).toBe(2)
  })

  it('is refused with the place in its template when the data are not what it reads', async () => {
    await expect(typeset([{ template: 'sheets', data: { title: 'x' } }])).rejects.toThrow(/sheets\.typ: line \d+: .*sheets/)
    await expect(typeset([{ template: 'gone', data: {} }])).rejects.toThrow(/gone\.typ/)
  })

  it('is given up when it is stopped', async () => {
    await expect(typeset([job('x')], { signal: AbortSignal.abort(new Error('enough')) })).rejects.toThrow('enough')
  })
})
