import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, it } from 'vitest'
import { example, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()
const DAY = '2026-11-27'

/** The example without its use: working through its life takes longer than a test may. */
const { use: _, ...short } = example
const examplePath = join(folder, 'heron.json')
writeFileSync(examplePath, JSON.stringify(short))

/** Words of every page, read by another program. */
async function pagesOf(file: string): Promise<readonly string[]> {
  const pdf = await getDocument({ data: new Uint8Array(readFileSync(file)), verbosity: 0 }).promise
  const numbers = Array.from({ length: pdf.numPages }, (_, index) => index + 1)
  return Promise.all(
    numbers.map(async (number) => {
      const { items } = await (await pdf.getPage(number)).getTextContent()
      return items.map((item) => ('str' in item ? item.str : '')).join(' ')
    }),
  )
}

async function written(name: string, words: readonly string[]) {
  const out = join(folder, name)
  const told = await tryCommand(['report', examplePath, '--out', out, '--uncounted', '--date', DAY, ...words])
  return { out, ...told }
}

describe('the report', () => {
  it('says on every page what it is of, has its parts in order, and is the same bytes each time', async () => {
    const { out, status, output } = await written('report.pdf', [])
    // SOURCE hand: nothing of the example falls short as drawn, and without counted sets some of it is open
    expect(status).toBe(2)
    expect(output).toContain('still open')
    // SOURCE other-method: pdfjs-dist reads the file
    const pages = await pagesOf(out)
    expect(pages.length).toBeGreaterThan(3)
    for (const page of pages) {
      expect(page).toMatch(/heron\.json · fingerwright \d+\.\d+\.\d+ · 2026-11-27/)
      expect(page).toContain('Heron, an index-size finger')
    }
    const whole = pages.join(' ').replace(/\s+/g, ' ')
    const parts = ['What the questions answer', 'What gives first', 'No sets were counted', 'A closed finger that does not open']
    const ends = ['Bench tests', 'limits of the model', 'Sources', '21 CFR 890.3420', 'does not certify']
    const places = [...parts, ...ends].map((part) => whole.lastIndexOf(part))
    expect(places).toEqual(places.toSorted((one, other) => one - other))
    expect(Math.min(...places)).toBeGreaterThan(0)
    const again = await written('again.pdf', [])
    expect(readFileSync(again.out).equals(readFileSync(out))).toBe(true)
  }, 60_000)
})

describe('the sheets', () => {
  it('of fitting and care has two pages with torques and an interval', async () => {
    const { out } = await written('care.pdf', ['--document', 'care'])
    const pages = await pagesOf(out)
    // SOURCE hand: one page of fitting, one of care
    expect(pages).toHaveLength(2)
    expect(pages[0]).toContain('0.35 N·m') // SOURCE hand: as the example states it
    expect(pages[1]).toContain('The interval is not worked out')
  }, 60_000)

  it('of limits says what is carried, rounded down, and what never', async () => {
    const { out } = await written('card.pdf', ['--document', 'card'])
    const [card, ...more] = await pagesOf(out)
    expect(more).toEqual([])
    // SOURCE hand: 60 N / 9.80665 = 6.118 kg, rounded down to a tenth
    expect(card).toContain('60.0 N, as much as 6.1 kg weigh')
    expect(card).toContain('Never hang by it')
  }, 60_000)

  it('releases no load of a finger that does not meet its requirements, or of which letting go is not asked', async () => {
    const { letsGo: _asked, ...others } = short.requirements
    const weak = { ...short, requirements: others, risks: {} }
    const path = join(folder, 'weak.json')
    writeFileSync(path, JSON.stringify(weak))
    const out = join(folder, 'weak.pdf')
    await tryCommand(['report', path, '--out', out, '--uncounted', '--document', 'card'])
    const [card] = await pagesOf(out)
    expect(card).toContain('Nothing is released')
  }, 60_000)
})

describe('how the program was checked', () => {
  it('is told on two pages with the number of values that were read and recalled, whatever the design', async () => {
    const { out, status, output } = await written('checked.pdf', ['--document', 'checked'])
    expect([status, output]).toEqual([0, `${out} is written.\n`])
    const pages = await pagesOf(out)
    // SOURCE hand: two pages; a third is left to a longer list
    expect(pages.length === 2 || pages.length === 3).toBe(true)
    expect(pages[0]).toMatch(/M\s+from memory: \d+/)
    expect(pages.join(' ')).toMatch(/Norton, Design of Machinery,\s+Example 4-2/)
    expect(pages[1]).toMatch(/fingerwright \d+\.\d+\.\d+ · 2026-11-27/)
  }, 60_000)
})

describe('what cannot be written', () => {
  it('is said: a day that is none, a document that there is not, no file', async () => {
    const of = (...words: readonly string[]) => tryCommand(['report', examplePath, ...words])
    const told = await Promise.all([
      of('--out', 'x.pdf', '--date', 'today'),
      of('--out', 'x.pdf', '--document', 'poster'),
      of('--uncounted'),
    ])
    expect(told.map(({ status }) => status)).toEqual([64, 64, 64]) // SOURCE hand: wrong use
    expect(told[0].errors).toContain('2026-11-27')
  })
})
