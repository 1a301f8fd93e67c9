import { readFileSync } from 'node:fs'
import type { Download, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { objections, objectionsToInk } from './objections.ts'
import { type Bench, exampleText, startBench } from './opened-page.ts'

let bench: Bench
beforeAll(async () => {
  bench = await startBench()
})
afterAll(() => bench.end())

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ })
const status = (page: Page, words: RegExp) => page.getByRole('status').filter({ hasText: words }).waitFor()
const entry = (page: Page, number: number) => page.getByRole('listitem', { name: `Revision ${number}` })

async function goTo(page: Page, name: 'Revisions' | 'Motion' | 'Hold'): Promise<void> {
  await page
    .getByRole('link', { name: new RegExp(`^${name}`) })
    .first()
    .click()
}

async function kept(page: Page, why: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Who' }).fill('K1')
  await page.getByRole('textbox', { name: 'Why' }).fill(why)
  await page.getByRole('button', { name: /^Keep this as revision/ }).click()
  await status(page, /^Kept as revision/)
}

/** Moves pin topNear up by five of the shop's steps, with the finger open. */
async function pinMoved(page: Page): Promise<void> {
  await page.getByRole('slider').press('Home')
  const grip = page.locator('[data-grip="pin topNear"]')
  for (let step = 0; step < 5; step += 1) await grip.press('ArrowUp')
}

/** Two revisions of the example between which a pin was moved. */
async function twoRevisions(page: Page): Promise<void> {
  await goTo(page, 'Revisions')
  await kept(page, 'as it was handed over')
  await goTo(page, 'Motion')
  await pinMoved(page)
  await goTo(page, 'Revisions')
  await kept(page, 'upper link lever 0.5 mm longer')
}

async function compared(page: Page, before: string, after: string): Promise<void> {
  await page.getByLabel('Before, dashed').selectOption(before)
  await page.getByLabel('After, full').selectOption(after)
  await page.locator('.compared-drawing').waitFor()
}

async function textOf(download: Download): Promise<Buffer> {
  return readFileSync(await download.path())
}

async function saved(page: Page, button: string): Promise<Download> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).click()])
  return download
}

describe('a revision', () => {
  afterEach(() => bench.clear())

  it('is kept with who and why, and is there after reload with its verdicts', async () => {
    const page = await bench.open('hold')
    await goTo(page, 'Revisions')
    expect(await page.getByTestId('sentence').textContent()).toBe('No revision of heron is kept yet.')
    await kept(page, 'as it was handed over')
    await page.reload()
    await entry(page, 1).waitFor()
    const words = await entry(page, 1).textContent()
    expect(words).toContain('K1')
    expect(words).toContain('as it was handed over')
    expect(words).toMatch(/\d+ met/)
    expect(await page.getByTestId('sentence').textContent()).toContain('What stands now is the same.')
  })

  it('is not kept without who and why, and says so', async () => {
    const page = await bench.open('hold')
    await goTo(page, 'Revisions')
    const keep = page.getByRole('button', { name: 'Keep this as revision 1' })
    await keep.click()
    await page.getByRole('alert').filter({ hasText: 'Not kept: say who keeps it.' }).waitFor()
    await page.getByRole('textbox', { name: 'Who' }).fill('K1')
    await page.getByRole('textbox', { name: 'Why' }).fill('   ')
    await keep.click()
    await page.getByRole('alert').filter({ hasText: 'Not kept: say why it is kept.' }).waitFor()
    expect(await page.getByRole('listitem', { name: /^Revision/ }).count()).toBe(0)
  })
})

// One page with two revisions for all that only reads them: keeping them takes longer than most of these tests.
describe('two revisions', () => {
  let page: Page
  beforeAll(async () => {
    page = await bench.open('motion')
    await twoRevisions(page)
  })
  afterAll(() => bench.clear())

  it('name the value that changed and the figures that moved, and are drawn dashed and full', async () => {
    await compared(page, 'revision 1', 'revision 2')
    const values = page.getByRole('table', { name: 'One value differs' })
    const row = values.getByRole('row', { name: /^part proximal hole top, y/ })
    // SOURCE hand (4.33 mm in the file; five steps of 0.1 mm)
    expect(await row.getByRole('cell').allTextContents()).toEqual(['4.33 mm', '4.83 mm'])
    const moved = page.getByRole('table', { name: 'Findings and figures that moved' })
    expect(await moved.getByRole('row', { name: /Dead-centre margin of toggle distal, closed/ }).count()).toBeGreaterThan(0)
    const dash = (group: string) =>
      page.evaluate((name) => {
        const line = document.querySelector(`.compared-drawing .${name} .part`)
        return line === null ? 'no line' : getComputedStyle(line).strokeDasharray
      }, group)
    expect(await dash('earlier')).toMatch(/^6px/)
    expect(await dash('later')).toBe('none')
    const ink = (group: string) =>
      page.evaluate(
        (name) => getComputedStyle(document.querySelector(`.compared-drawing .${name} .part`) as Element).stroke,
        group,
      )
    expect(await ink('earlier')).toBe(await ink('later'))
  })

  it('are both moved by the scale of the travel', async () => {
    await compared(page, 'revision 1', 'revision 2')
    const lines = (group: string) => page.locator(`.compared-drawing > .${group}`).first().innerHTML()
    const [wasBefore, wasAfter] = [await lines('earlier'), await lines('later')]
    await page.getByRole('slider').press('Home')
    await expect.poll(() => lines('earlier')).not.toBe(wasBefore)
    expect(await lines('later')).not.toBe(wasAfter)
  })

  it('are asked for from the list, with what stands now', async () => {
    await entry(page, 1).getByRole('button', { name: 'Compare with what stands now' }).click()
    await expect.poll(() => page.getByLabel('Before, dashed').inputValue()).toBe('1')
    expect(await page.getByLabel('After, full').inputValue()).toBe('now')
    await page.getByRole('table', { name: 'One value differs' }).waitFor()
    await entry(page, 2).getByRole('button', { name: 'Compare with what stands now' }).click()
    await page.getByText('They do not differ in any value.').waitFor()
  })

  it('can be read, with findings, figures and text as they were kept', async () => {
    await page.getByText('Read revision 1').click()
    await entry(page, 1).getByText('Its text').click()
    expect(await entry(page, 1).locator('pre').textContent()).toBe(exampleText)
    await entry(page, 1)
      .getByText(/^Its \d+ figures$/)
      .click()
    expect(
      await entry(page, 1)
        .getByRole('row', { name: /^Lets go/ })
        .count(),
    ).toBeGreaterThan(0)
    expect(await entry(page, 1).getByRole('textbox').count()).toBe(0)
  })

  it('are looked at without scrolling sideways on a tablet, at 200 % and on a phone', async () => {
    await compared(page, 'revision 1', 'revision 2')
    for (const [width, height] of [
      [1024, 768],
      [640, 450],
      [390, 800],
    ] as const) {
      await page.setViewportSize({ width, height })
      const wider = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
      expect(wider, `${width} px`).toBe(0)
    }
    await page.setViewportSize({ width: 1280, height: 900 })
  })

  it('give a touch 44 px', async () => {
    const touched = await bench.open('motion', { viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true })
    await goTo(touched, 'Revisions')
    await compared(touched, 'revision 1', 'revision 2')
    const targets = touched.locator('main').locator('button, summary, input:not([type=file]), textarea, select, [role=slider]')
    for (const target of await targets.all()) {
      // What is folded has no height.
      const box = (await target.isVisible()) ? await target.boundingBox() : null
      // SOURCE trade (44 px, the touch target this page was designed for)
      if (box !== null) expect(box.height, (await target.textContent()) ?? '').toBeGreaterThanOrEqual(44)
    }
    await touched.context().close()
  })

  it('leave axe nothing to object to on light and dark paper, with one open and both compared', async () => {
    expect(await objections(page)).toEqual([])
    await page.emulateMedia({ colorScheme: 'dark' })
    expect(await objectionsToInk(page)).toEqual([])
    await page.emulateMedia({ colorScheme: 'light' })
  })

  it('can be gone on from, each as a step that can be undone', async () => {
    await entry(page, 1).getByRole('button', { name: 'Go on from revision 1' }).click()
    await expect.poll(() => undo(page).textContent()).toBe('Undo: went on from revision 1')
    await expect.poll(() => page.getByTestId('sentence').textContent()).toContain('differs from it in one value')
    await undo(page).click()
    await expect.poll(() => page.getByTestId('sentence').textContent()).toContain('What stands now is the same.')
  })
})

describe('files', () => {
  afterEach(() => bench.clear())

  it('hold the design as it stands, and come in under another name when the first is taken', async () => {
    const page = await bench.open('motion')
    await pinMoved(page)
    await goTo(page, 'Revisions')
    const download = await saved(page, 'Save heron as a file')
    expect(download.suggestedFilename()).toBe('heron.json')
    const text = (await textOf(download)).toString('utf8')
    // SOURCE hand (4.33 mm and five steps of 0.1 mm)
    expect(JSON.parse(text).parts.proximal.holes.top.y).toBe('4.83 mm')
    const file = { name: 'heron.json', mimeType: 'application/json', buffer: Buffer.from(text) }
    await page.getByLabel('Design file to bring in').setInputFiles(file)
    await page.getByRole('button', { name: 'Bring it in' }).click()
    await page.getByRole('alert').filter({ hasText: 'heron-2 is free' }).waitFor()
    expect(await page.getByLabel('Its name in the store').inputValue()).toBe('heron-2')
    await page.getByRole('button', { name: 'Bring it in' }).click()
    await status(page, /^heron-2 is in the store now/)
    await expect.poll(() => page.getByRole('button', { name: 'heron-2', exact: true }).getAttribute('aria-current')).toBe('true')
    await page.getByText('No revision of heron-2 is kept yet.').waitFor()
  })

  it('that cannot be read are refused with the reason, and nothing comes in', async () => {
    const page = await bench.open('motion')
    await goTo(page, 'Revisions')
    const file = { name: 'broken.json', mimeType: 'application/json', buffer: Buffer.from('{ "format": 3 }') }
    await page.getByLabel('Design file to bring in').setInputFiles(file)
    await page.getByRole('button', { name: 'Bring it in' }).click()
    await page.getByRole('alert').filter({ hasText: 'Not brought in' }).waitFor()
    expect(await page.getByRole('button', { name: 'broken', exact: true }).count()).toBe(0)
  })

  it('from disk are brought into the store before a revision of them is kept', async () => {
    const page = await bench.open('motion')
    await goTo(page, 'Revisions')
    const file = { name: 'wader.json', mimeType: 'application/json', buffer: Buffer.from(exampleText) }
    await page.getByLabel('Design file', { exact: true }).setInputFiles(file)
    await page.getByText('wader was opened from disk. Bring it into the store to keep revisions of it.').waitFor()
    expect(await page.getByRole('button', { name: /^Keep this/ }).count()).toBe(0)
    await page.getByRole('button', { name: 'Bring wader into the store …' }).click()
    await page.getByRole('button', { name: 'Bring it in' }).click()
    await status(page, /^wader is in the store now/)
    await kept(page, 'brought in')
  })

  it('of a revision and of the whole store can be saved, and the store comes back without overwriting', async () => {
    const page = await bench.open('motion')
    await twoRevisions(page)
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      entry(page, 1).getByRole('button', { name: 'Save it as a file' }).click(),
    ])
    expect(download.suggestedFilename()).toBe('heron-revision-1.json')
    expect((await textOf(download)).toString('utf8')).toBe(exampleText)
    const store = await textOf(await saved(page, 'Save the whole store'))
    const bringBack = (buffer: Buffer) =>
      page.getByLabel('Store to bring back').setInputFiles({ name: 'store.sqlite', mimeType: 'application/vnd.sqlite3', buffer })
    await bringBack(store)
    await page.getByText('heron was here already, with everything that the file has of it.').waitFor()
    await bringBack(Buffer.from('no store at all'))
    await page.getByRole('alert').filter({ hasText: 'Nothing was brought in.' }).waitFor()
    await bench.clear()
    const elsewhere = await bench.open('motion')
    await goTo(elsewhere, 'Revisions')
    await elsewhere
      .getByLabel('Store to bring back')
      .setInputFiles({ name: 'store.sqlite', mimeType: 'application/vnd.sqlite3', buffer: store })
    await elsewhere.getByText('heron came in with 2 revisions.').waitFor()
    await entry(elsewhere, 2).waitFor()
  })
})

describe('two pages', () => {
  afterEach(() => bench.clear())

  it('on one design: what the slower one would keep is not kept until somebody chooses', async () => {
    const page = await bench.open('motion')
    const slower = await page.context().newPage()
    await slower.goto(page.url())
    await slower.locator('.finger-drawing').waitFor()
    await pinMoved(page)
    await page.locator('[data-keeping=kept]').waitFor()
    await goTo(slower, 'Revisions')
    await slower.getByRole('textbox', { name: 'Who' }).fill('K2')
    await slower.getByRole('textbox', { name: 'Why' }).fill('seen on the other page')
    await slower.getByRole('button', { name: 'Keep this as revision 1' }).click()
    await slower.getByRole('alert').filter({ hasText: 'changed on another page' }).waitFor()
    await goTo(page, 'Revisions')
    await kept(page, 'the pin is moved')
    expect(await page.getByRole('listitem', { name: /^Revision/ }).count()).toBe(1)
  })
})

describe('the slower of two pages', () => {
  afterEach(() => bench.clear())

  it('has its text kept as a design of its own, and goes on with the other’s', async () => {
    const page = await bench.open('motion')
    const slower = await page.context().newPage()
    await slower.goto(page.url())
    await slower.locator('.finger-drawing').waitFor()
    await pinMoved(page)
    await page.locator('[data-keeping=kept]').waitFor()
    await slower.locator('[data-grip="pad distal.back"]').press('ArrowUp')
    await slower.getByRole('button', { name: 'Keep this page’s as a design of its own' }).click()
    await status(slower, /^What stood on this page is kept as heron-2\./)
    await expect.poll(() => undo(slower).textContent()).toContain('Pin topNear')
    await slower.getByRole('button', { name: 'heron-2', exact: true }).click()
    await goTo(slower, 'Revisions')
    await slower.getByText('No revision of heron-2 is kept yet.').waitFor()
    const copy = JSON.parse((await textOf(await saved(slower, 'Save heron-2 as a file'))).toString('utf8'))
    const example = JSON.parse(exampleText)
    // SOURCE property (the copy has this page's step and not the other's)
    expect(copy.parts.distal.pads.back).not.toEqual(example.parts.distal.pads.back)
    expect(copy.parts.proximal.holes.top).toEqual(example.parts.proximal.holes.top)
  })
})

it('complains about nothing and asks nobody else', () => {
  expect(bench.complaints).toEqual([])
})
