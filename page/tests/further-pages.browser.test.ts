import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { typesetterAt } from '../../typesetting/index.ts'
import { objections } from './objections.ts'
import { type Bench, sentenceOf, startBench } from './opened-page.ts'

let bench: Bench
beforeAll(async () => {
  bench = await startBench({ typeset: typesetterAt(join(import.meta.dirname, '../..')) })
})
afterEach(() => bench.clear())
afterAll(() => bench.end())

/** Opens one of the pages that have no finger in them. */
async function openFurther(name: 'Spread' | 'Make' | 'Check' | 'Prove'): Promise<Page> {
  const page = await bench.open('hold')
  await page.getByRole('link', { name: new RegExp(`^${name}`) }).click()
  // What is read must be that page's: until it is shown, the sentence of the one before stands there.
  await page.locator('nav a[aria-current=page]', { hasText: name }).waitFor()
  return page
}

async function isInOrder(page: Page): Promise<void> {
  expect(await objections(page)).toEqual([])
  await page.setViewportSize({ width: 640, height: 450 })
  expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0)
  expect(await page.getByRole('note').first().textContent()).toContain('licensed prosthetist')
  await page.emulateMedia({ media: 'print' })
  expect(await page.getByText('licensed prosthetist').filter({ visible: true }).count()).toBeGreaterThan(0)
  await page.emulateMedia({ media: null })
}

describe('Strength', () => {
  it('says what gives first, draws it, and tells when it is worn out and what breaking does', async () => {
    const page = await bench.open('strength')
    const list = page.getByRole('region', { name: 'What gives first' })
    const first = await list.locator('tbody th').first().textContent()
    // SOURCE property: the sentence and the list are of one evaluation
    expect(await sentenceOf(page)).toContain(first?.split(/is |breaks|cracks|takes/)[0].trim())
    const drawn = await page.locator('.finger-drawing').innerHTML()
    await list.getByRole('button', { name: 'draw it' }).nth(1).click()
    await page.waitForFunction((before) => document.querySelector('.finger-drawing')?.innerHTML !== before, drawn)
    await page.getByRole('region', { name: 'When is it worn out?' }).getByRole('button', { name: 'Work it out' }).click()
    await page.getByRole('heading', { name: 'When is it worn out?' }).waitFor()
    await page.getByText('Rates of wear are known to an order of magnitude').waitFor()
    await page.getByRole('button', { name: 'Take out one thing after the other' }).click()
    await page.getByText('No break sheds a piece').waitFor()
    await page.getByRole('region', { name: 'When is it worn out?' }).getByRole('button', { name: 'stop shelf' }).click()
    await page.getByText('J. F. Archard 1953').waitFor()
    await page
      .getByRole('region', { name: 'What happens when it breaks?' })
      .getByRole('button', { name: 'spring return' })
      .click()
    await page.getByText('docs/theory/breakage.md').waitFor()
    await isInOrder(page)
  })
})

describe('Spread', () => {
  it('counts sets until it is stopped, and keeps what it reached while something else is looked at', async () => {
    const page = await openFurther('Spread')
    await page.getByLabel('Sets counted').selectOption('16384')
    await page.getByRole('button', { name: 'Work it out' }).click()
    await page.getByRole('heading', { name: 'Share of sets that meets it' }).waitFor()
    await page.getByRole('button', { name: 'Stop', exact: true }).click()
    const counted = / of sets meet every requirement .*from (\d+) counted/.exec(await sentenceOf(page))
    expect(Number(counted?.[1])).toBeGreaterThan(0)
    expect(Number(counted?.[1])).toBeLessThan(16384)
    await page.getByText(`Counted so far: ${counted?.[1]} of the 16384 sets asked for`).waitFor()
    expect(await page.locator('.hold-window').count()).toBe(1)
    await page.getByRole('link', { name: /^Make/ }).click()
    await page.getByRole('link', { name: /^Spread.* of sets meet/ }).click()
    await page.getByRole('heading', { name: 'Share of sets that meets it' }).waitFor()
    await page.getByRole('button', { name: 'Every requirement at once' }).click()
    await page.getByText('docs/theory/spread.md, Samples').waitFor()
    await isInOrder(page)
  })
})

describe('Make', () => {
  it('lists what a finger is put together from and what a set costs, and a price opens its working, which leads to its place', async () => {
    const page = await openFurther('Make')
    expect(await sentenceOf(page)).toMatch(/put together from \d+ pieces and weighs/)
    await page.getByRole('combobox', { name: 'Part' }).selectOption('part-topLink')
    await page.getByRole('img', { name: 'Drawing of Link from proximal to distal phalanx' }).waitFor()
    const saved = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save all that goes to the shop' }).click()
    expect((await saved).suggestedFilename()).toBe('heron-shop-pack.zip')
    await page.getByText('with a list of checksums').waitFor()
    await page.getByRole('button', { name: 'assembly', exact: true }).click()
    await page.getByText('the minutes of the k-th finger').waitFor()
    await page.getByRole('button', { name: 'making.assembly' }).click()
    await page.locator('details[open] summary', { hasText: 'Making' }).waitFor()
    await page.getByRole('combobox', { name: 'Part', exact: true }).selectOption('coating-mount')
    await page.locator('summary', { hasText: /^Mount block/ }).click()
    await page.getByRole('button', { name: 'Add a place for the rack on Mount block …' }).click()
    const sheet = page.getByRole('img', { name: 'Mount block: coating' })
    // SOURCE property: the sheet shows the place before it is added, and has it after
    await sheet.getByText('rack 3').waitFor()
    await page.getByRole('button', { name: 'Leave it' }).click()
    await sheet.getByText('rack 3').waitFor({ state: 'detached' })
    await page.getByRole('button', { name: 'Add a place for the rack on Mount block …' }).click()
    await page.getByRole('button', { name: 'Add it' }).click()
    await page.getByRole('button', { name: 'Add it' }).waitFor({ state: 'detached' })
    await sheet.getByText('rack 3').waitFor()
    await isInOrder(page)
  })
})

describe('Check', () => {
  it('judges measured sets, and refuses a table by row and column', async () => {
    const page = await openFurther('Check')
    const open = (text: string): Promise<void> =>
      page.getByLabel('File of readings').setInputFiles({ name: 'lot.csv', mimeType: 'text/csv', buffer: Buffer.from(text) })
    await open('serial,characteristic,found\nA-001,23,24.494\nA-001,99,3\n')
    await page.getByText('row 3, characteristic').waitFor()
    // The link of A is 3 µm below its limit and does no harm; that of B is 0.1 mm over it.
    await open('serial,characteristic,found\nA-001,23,24.494\nB-002,23,24.62\n')
    const met = page.getByRole('region', { name: 'Set A-001' })
    await met.waitFor()
    // SOURCE property: outside of its drawing and yet it holds and lets go
    expect(await met.textContent()).toMatch(/outside/)
    expect(await met.getByRole('heading', { level: 2 }).textContent()).toContain('met')
    expect(await page.getByRole('region', { name: 'Set B-002' }).getByRole('heading', { level: 2 }).textContent()).toContain(
      'short',
    )
    await isInOrder(page)
  })
})

it('complains about nothing and asks nobody else', () => {
  expect(bench.complaints).toEqual([])
})

describe('Prove', () => {
  it('says what is shown and what is open, and takes a starter set as one step', async () => {
    const page = await openFurther('Prove')
    const before = await sentenceOf(page)
    // SOURCE property: what is said of all is said of the rows
    const asked = Number(/Of (\d+) things asked/.exec(before)?.[1])
    expect(await page.getByRole('table').first().locator('tbody tr').count()).toBe(asked)
    await page.getByRole('button', { name: /Add the usual risks/ }).click()
    await page.waitForFunction((said) => document.querySelector('[data-testid=sentence]')?.textContent !== said, before)
    await isInOrder(page)
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.waitForFunction((said) => document.querySelector('[data-testid=sentence]')?.textContent === said, before)
    const names: string[] = []
    for (const button of await page.getByRole('button', { name: /^Save as PDF/ }).all()) {
      const saved = page.waitForEvent('download')
      await button.click()
      const file = await saved
      names.push(file.suggestedFilename())
      const bytes = readFileSync(await file.path())
      // SOURCE standard: ISO 32000-1, 7.5.2 and 7.5.5 (the first line of a PDF and its last), from memory
      expect([bytes.subarray(0, 5).toString(), bytes.toString('latin1').trimEnd().slice(-5)]).toEqual(['%PDF-', '%%EOF'])
      await page.getByText(`Saved as ${file.suggestedFilename()}.`).waitFor()
    }
    expect(names).toEqual(['report', 'care', 'card', 'checked'].map((name) => `heron-${name}.pdf`))
  })
})
