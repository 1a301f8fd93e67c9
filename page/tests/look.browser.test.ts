import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { objections, objectionsToInk } from './objections.ts'
import { type Bench, startBench } from './opened-page.ts'

let bench: Bench
beforeAll(async () => {
  bench = await startBench()
})
afterAll(() => bench.end())

const SIZES = [
  { name: 'a tablet of 1024 px', width: 1024, height: 768 },
  { name: '1280 px at 200 %', width: 640, height: 450 },
  { name: 'a phone of 390 px', width: 390, height: 800 },
]
const WIDE = { width: 1280, height: 900 }

// One page for all that is looked at: opening one takes longer than most of these tests.
describe.each(['motion', 'hold'] as const)('the question %s', (question) => {
  let page: Page
  beforeAll(async () => {
    page = await bench.open(question)
  })
  afterAll(() => bench.clear())

  it.each(['A4', 'Letter'])('is one sheet in print: %s', async (format) => {
    const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1')
    // SOURCE standard PDF 32000-1, 7.7.3.3: every page is an object of type Page (from memory)
    expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1)
    expect(pdf.length).toBeGreaterThan(20_000)
  })

  it('has labels in its drawing that never cover each other, from open to closed', async () => {
    if (question === 'hold') await page.getByRole('radio', { name: 'Carry a bag on the hooked finger' }).check()
    const scale = await page.locator('.travel-scale').boundingBox()
    if (scale === null) throw new Error('no scale')
    for (let share = 0.02; share < 1; share += 0.08) {
      await page.mouse.click(scale.x + share * scale.width, scale.y + 50)
      expect(await coveringLabels(page), `at ${share} of the scale`).toEqual([])
    }
  })

  it.each(SIZES)('needs no scrolling sideways on $name', async ({ width, height }) => {
    await page.setViewportSize({ width, height })
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
    expect(wider).toBe(0)
    await page.setViewportSize(WIDE)
  })

  it('is printed black on white from dark paper too', async () => {
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
    const sheet = await page.evaluate(() => {
      const { color, backgroundColor } = getComputedStyle(document.documentElement)
      return { color, backgroundColor }
    })
    expect(sheet).toEqual({ color: 'rgb(0, 0, 0)', backgroundColor: 'rgb(255, 255, 255)' })
    await page.emulateMedia({ media: 'screen', colorScheme: 'light' })
  })

  it('leaves axe nothing to object to on light and dark paper, with a working, tables and a form open and a trial made', async () => {
    await page.locator('[aria-expanded=false]').first().click()
    for (const section of ['Dimensions', 'Mount block', 'Springs']) {
      await page.locator('section[aria-labelledby=values] > details > summary', { hasText: section }).first().click()
    }
    await page.getByRole('button', { name: /^Add a tension spring/ }).click()
    await page.getByRole('button', { name: 'A worn stop', exact: true }).click()
    await page.getByText('One step').click()
    expect(await objections(page)).toEqual([])
    await page.emulateMedia({ colorScheme: 'dark' })
    expect(await objectionsToInk(page)).toEqual([])
  })
})

describe('the paper', () => {
  afterAll(() => bench.clear())

  it('follows the system, and the reader’s choice outlives a visit', async () => {
    const page = await bench.open('motion', { colorScheme: 'dark' })
    const paper = (): Promise<string> => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)
    const dark = await paper()
    await page.getByRole('button', { name: 'Light paper' }).click()
    const light = await paper()
    expect(light).not.toBe(dark)
    await page.reload()
    await page.locator('.finger-drawing').waitFor()
    expect(await paper()).toBe(light)
    await page.getByRole('button', { name: 'Dark paper' }).click()
    expect(await paper()).toBe(dark)
  })
})

it('gives a touch 44 px', async () => {
  const page = await bench.open('hold', { viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true })
  for (const target of await page.locator('nav a, button:not([data-grip]), fieldset label, [role=slider], summary').all()) {
    const box = await target.boundingBox()
    // SOURCE trade (44 px, the touch target this page was designed for)
    if (box !== null) expect(box.height, (await target.textContent()) ?? '').toBeGreaterThanOrEqual(44)
  }
  await bench.clear()
})

/** Pairs of texts in the drawing whose boxes share more than a hair. */
function coveringLabels(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const texts = [...document.querySelectorAll('.finger-drawing text')].map((text) => ({
      words: text.textContent,
      box: text.getBoundingClientRect(),
    }))
    const pairs = texts.flatMap((one, index) => texts.slice(index + 1).map((other) => [one, other] as const))
    const covering = pairs.filter(([{ box: a }, { box: b }]) => {
      const width = Math.min(a.right, b.right) - Math.max(a.left, b.left)
      const height = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top)
      return width > 1 && height > 3
    })
    return covering.map(([one, other]) => `${one.words} / ${other.words}`)
  })
}

it('complains about nothing and asks nobody else', () => {
  expect(bench.complaints).toEqual([])
})
