import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Bench, exampleText, sentenceOf, startBench } from './opened-page.ts'

let bench: Bench
beforeAll(async () => {
  bench = await startBench()
})
afterAll(() => bench.end())

const openFile = (page: Page, name: string, text: string): Promise<void> =>
  page.getByLabel('Design file').setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) })

// One page for all that only reads: opening one takes longer than most of these tests.
describe('the page', () => {
  let page: Page
  beforeAll(async () => {
    page = await bench.open('motion')
  })
  afterAll(() => bench.clear())
  const ask = (question: 'Motion' | 'Hold'): Promise<void> => page.getByRole('link', { name: new RegExp(`^${question}`) }).click()

  it('opens the example and says how it stands closed', async () => {
    // SOURCE other-method (the example geometry was found with an independent solver: 8.7° short of dead centre at the stop)
    expect(await sentenceOf(page)).toContain('8.7° short of dead centre')
    await ask('Hold')
    // SOURCE hand (pad loads push nothing through the toggle: the wearer carries them)
    expect(await sentenceOf(page)).toContain('carried by the wearer')
    await page.goBack()
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Does the finger close where it should?')
  })

  it('shows a caution on both questions', async () => {
    await ask('Hold')
    expect(await page.getByRole('note').textContent()).toContain('licensed prosthetist')
    await ask('Motion')
    expect(await page.getByRole('note').textContent()).toContain('licensed prosthetist')
  })

  it('is scrubbed by the keyboard, one stroke of the scale at a time', async () => {
    await ask('Motion')
    const slider = page.getByRole('slider')
    const closed = await page.locator('.finger-drawing').innerHTML()
    await slider.press('Home')
    // SOURCE property: the scale is always in view, so that reaching it must not move the page
    expect(await page.evaluate(() => scrollY)).toBe(0)
    expect(await slider.getAttribute('aria-valuetext')).toContain('0.0°')
    await slider.press('ArrowRight')
    // SOURCE hand (one stroke is one degree of the drive)
    expect(await slider.getAttribute('aria-valuetext')).toContain('1.0°')
    expect(await page.locator('.finger-drawing').innerHTML()).not.toBe(closed)
    await slider.press('End')
    expect(await slider.getAttribute('aria-valuetext')).toContain('stop')
    expect(await page.locator('.finger-drawing').innerHTML()).toBe(closed)
  })

  it('is scrubbed by the pointer on the scale', async () => {
    await ask('Motion')
    const scale = await page.locator('.travel-scale').boundingBox()
    if (scale === null) throw new Error('no scale')
    await page.mouse.click(scale.x + scale.width / 2, scale.y + 50)
    const read = Number.parseFloat((await page.getByRole('slider').getAttribute('aria-valuetext'))?.split(' ')[1] ?? '')
    // SOURCE property: half of the scale is neither open nor closed
    expect(read).toBeGreaterThan(20)
    expect(read).toBeLessThan(60)
  })

  it('opens the working of a figure: formula as mathematics, inputs, source', async () => {
    await ask('Motion')
    const row = page.getByRole('button', { name: /^Dead-centre margin of toggle distal, closed/ })
    await row.click()
    expect(await row.getAttribute('aria-expanded')).toBe('true')
    expect(await page.locator('math').count()).toBeGreaterThan(0)
    expect(await page.getByText(/^Source: /).count()).toBe(1)
    await row.press('Enter')
    expect(await page.locator('math').count()).toBe(0)
  })

  it('draws the load that is chosen', async () => {
    await ask('Hold')
    await page.getByRole('radio', { name: 'Push on the back of the distal phalanx' }).check()
    // SOURCE hand (30 N in the example)
    await page.locator('.finger-drawing text', { hasText: /^30 N$/ }).waitFor()
    expect(await page.locator('.finger-drawing text', { hasText: 'pushed' }).count()).toBeGreaterThan(0)
    await page.getByRole('radio', { name: 'closes against it' }).check()
    expect(await page.locator('.forces summary').textContent()).toContain('effort to close')
  })
})

describe('another design file', () => {
  let page: Page
  beforeAll(async () => {
    page = await bench.open('motion')
  })
  afterAll(() => bench.clear())
  const refusal = () => page.getByRole('alert')
  const putAway = () => refusal().getByRole('button', { name: 'Put this away' }).click()

  it('is refused with every problem, and the design before stays', async () => {
    const before = await sentenceOf(page)
    const broken = exampleText
      .replace('"proximalLength": "44 mm"', '"proximalLength": "44 N"')
      .replace('"fixedIn": "proximal"', '"fixedIn": "nowhere"')
    await openFile(page, 'broken.json', broken)
    await refusal().waitFor()
    expect(await refusal().textContent()).toContain('nowhere')
    expect(await refusal().getByRole('listitem').count()).toBeGreaterThan(1)
    expect(await sentenceOf(page)).toBe(before)
    await putAway()
    expect(await refusal().count()).toBe(0)
  })

  it('that is no design at all is refused in words', async () => {
    await openFile(page, 'note.json', 'dear workshop')
    await refusal().waitFor()
    expect(await refusal().getByRole('listitem').count()).toBe(1)
    await putAway()
  })

  it('takes the place of the one before', async () => {
    await openFile(page, 'grebe.json', exampleText.replace('Heron, an index-size finger', 'Grebe, a finger for this test'))
    await page.getByText('Grebe, a finger for this test').waitFor()
    expect(await sentenceOf(page)).toContain('short of dead centre')
  })

  it('that cannot be assembled says where and by how much, and shows no drawing of another finger', async () => {
    await openFile(page, 'short.json', exampleText.replace('"value": "42.108 mm"', '"value": "30 mm"'))
    await expect.poll(() => sentenceOf(page)).toMatch(/^The finger cannot be moved: .* mm too far/)
    expect(await page.locator('.finger-drawing').count()).toBe(0)
    expect(await page.getByRole('note').count()).toBe(1)
  })
})

it('complains about nothing and asks nobody else', () => {
  expect(bench.complaints).toEqual([])
})
