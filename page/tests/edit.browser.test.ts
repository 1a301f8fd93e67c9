import type { Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { type Bench, exampleText, sentenceOf, startBench } from './opened-page.ts'

let bench: Bench
beforeAll(async () => {
  bench = await startBench()
})
afterAll(() => bench.end())

const grip = (page: Page, id: string) => page.locator(`[data-grip="${id}"]`)
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ })
const again = (page: Page) => page.getByRole('button', { name: /^Do again/ })

/** Opens a section of the tables. */
async function openSection(page: Page, title: string): Promise<void> {
  await page.getByRole('region', { name: 'The design, value by value' }).locator('summary', { hasText: title }).first().click()
}

/** A field of a row, such as `pin diameter`. */
function field(page: Page, { thing, label }: { readonly thing: string; readonly label: string }) {
  const row = page.getByRole('listitem').filter({ has: page.getByRole('heading', { level: 3, name: thing, exact: true }) })
  return row.getByLabel(label, { exact: true })
}

/** The sentence once it has stopped to change: the last place of a drag may still be under way. */
async function stillSentence(page: Page): Promise<string> {
  let [seen, now] = ['', '']
  const look = async (): Promise<boolean> => {
    seen = now
    now = await sentenceOf(page)
    return seen === now
  }
  await expect.poll(look, { interval: 500 }).toBe(true)
  return now
}

async function dragged(page: Page, id: string, by: { readonly x: number; readonly y: number }): Promise<void> {
  const box = await grip(page, id).boundingBox()
  if (box === null) throw new Error(`no ${id} to drag`)
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
  await page.mouse.move(at.x, at.y)
  await page.mouse.down()
  await page.mouse.move(at.x + by.x, at.y + by.y, { steps: 8 })
  await page.mouse.up()
}

describe('a thing in the drawing', () => {
  afterEach(() => bench.clear())

  it('is dragged: the sentence changes, one step goes back, one forth', async () => {
    const page = await bench.open('motion')
    const before = await sentenceOf(page)
    await dragged(page, 'pin topNear', { x: 3, y: -5 })
    await expect.poll(() => sentenceOf(page)).not.toBe(before)
    const moved = await stillSentence(page)
    await undo(page).click()
    await expect.poll(() => sentenceOf(page)).toBe(before)
    expect(await undo(page).isDisabled()).toBe(true)
    await page.keyboard.press('Control+Shift+z')
    await expect.poll(() => sentenceOf(page)).toBe(moved)
    await page.keyboard.press('Control+z')
    await expect.poll(() => sentenceOf(page)).toBe(before)
    await again(page).click()
    await expect.poll(() => sentenceOf(page)).toBe(moved)
  })

  it('is moved by the arrow keys by a tenth of a millimetre, with Shift by a hundredth', async () => {
    const page = await bench.open('motion')
    await page.getByRole('slider').press('Home')
    await grip(page, 'pin topNear').press('ArrowUp')
    // SOURCE hand (45.13, 4.33 in the file; open, the proximal phalanx lies along x, so that up is its y: 4.33 + 0.1)
    await expect.poll(() => undo(page).textContent()).toBe('Undo: Pin topNear, hole proximal.top: y 4.43 mm')
    await grip(page, 'pin topNear').press('Shift+ArrowRight')
    // SOURCE hand (45.13 + 0.01)
    await expect.poll(() => undo(page).textContent()).toBe('Undo: Pin topNear, hole proximal.top: x 45.14 mm')
  })

  it('placed by the name of a dimension moves with the dimension, and says so', async () => {
    const page = await bench.open('motion')
    await page.getByRole('slider').press('Home')
    await grip(page, 'link baseLink').press('ArrowRight')
    // SOURCE hand (42.108 + 0.1)
    await page.getByRole('button', { name: /^Undo: Length of .*: baseLinkLength 42.208 mm$/ }).waitFor()
    expect(await page.getByRole('status').textContent()).toContain('changes baseLinkLength')
  })

  it('leads to its row, and the row marks it in the drawing', async () => {
    const page = await bench.open('motion')
    await grip(page, 'pad distal.tip').focus()
    await page.getByRole('status').getByRole('button', { name: 'pad distal.tip' }).click()
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT')
    expect(await page.locator('.looked-at').count()).toBe(1)
    await field(page, { thing: 'hole top', label: 'x' }).focus()
    await expect.poll(() => page.locator('.looked-at').getAttribute('cx')).not.toBeNull()
  })
})

// One page for all of these: each leaves the design as it found it.
describe('a value in the tables', () => {
  let page: Page
  beforeAll(async () => {
    page = await bench.open('motion')
    await openSection(page, 'Dimensions')
  })
  afterAll(() => bench.clear())

  it('is given back by Escape', async () => {
    const length = field(page, { thing: 'proximalLength', label: 'value' })
    await length.fill('50 mm')
    await length.press('Escape')
    expect(await length.inputValue()).toBe('44 mm')
    expect(await undo(page).isDisabled()).toBe(true)
  })

  it('that cannot be read says why beside the field, and is not taken', async () => {
    const length = field(page, { thing: 'proximalLength', label: 'value' })
    await length.fill('44 furlongs')
    await length.press('Enter')
    expect(await length.getAttribute('aria-invalid')).toBe('true')
    const described = (await length.getAttribute('aria-describedby')) ?? ''
    expect(await page.locator(`[id="${described}"]`).textContent()).toContain('Needed')
    expect(await length.inputValue()).toBe('44 furlongs')
    expect(await undo(page).isDisabled()).toBe(true)
  })

  it('that refuses the design shows every problem and keeps the drawing; undoing brings it back', async () => {
    const before = await sentenceOf(page)
    const diameter = field(page, { thing: 'pinDiameter', label: 'value' })
    await diameter.fill('3.5 mm')
    await diameter.press('Enter')
    await page.getByRole('alert').waitFor()
    expect(await page.getByRole('alert').getByRole('listitem').count()).toBeGreaterThan(1)
    expect(await page.locator('.finger-drawing').count()).toBe(1)
    await undo(page).click()
    await expect.poll(() => page.getByRole('alert').count()).toBe(0)
    expect(await sentenceOf(page)).toBe(before)
  })

  it('is typed in inches, read beside the field, taken by Enter', async () => {
    const before = await sentenceOf(page)
    const length = field(page, { thing: 'topLinkLength', label: 'value' })
    await length.fill('62/64 in')
    // SOURCE hand (62/64 × 25.4 = 24.60625)
    const described = (await length.getAttribute('aria-describedby')) ?? ''
    expect(await page.locator(`[id="${described}"]`).textContent()).toContain('= 24.606 mm')
    expect(await sentenceOf(page)).toBe(before)
    await length.press('Enter')
    await expect.poll(() => sentenceOf(page)).not.toBe(before)
    expect(await length.inputValue()).toBe('62/64 in')
  })
})

describe('the whole page', () => {
  afterEach(() => bench.clear())

  it('shows inches and pounds at a switch, stores what was typed, and remembers the choice', async () => {
    const page = await bench.open('hold')
    await page.getByRole('radio', { name: 'inch and lbf' }).check()
    await expect.poll(() => sentenceOf(page)).toContain('lbf')
    await openSection(page, 'Dimensions')
    expect(await field(page, { thing: 'proximalLength', label: 'value' }).inputValue()).toBe('44 mm')
    await page.reload()
    await page.locator('.finger-drawing').waitFor()
    expect(await sentenceOf(page)).toContain('lbf')
  })
})

describe('what was done', () => {
  afterEach(() => bench.clear())

  const kept = (page: Page) => page.getByTestId('kept').textContent()
  const reloaded = async (page: Page): Promise<void> => {
    await page.reload()
    await page.locator('.finger-drawing').waitFor()
  }

  it('is kept within a second and is there after reload, to be undone and done again', async () => {
    const page = await bench.open('motion')
    const before = await sentenceOf(page)
    await dragged(page, 'pin topNear', { x: 1, y: -4 })
    // The drawing follows an answer later: the tip is taken where it then stands.
    await stillSentence(page)
    await dragged(page, 'pad distal.tip', { x: 4, y: 0 })
    await expect.poll(() => undo(page).textContent()).toContain('Pad distal.tip')
    await expect.poll(() => kept(page), { timeout: 1500 }).toMatch(/^kept at /)
    const moved = await stillSentence(page)
    await reloaded(page)
    expect(await sentenceOf(page)).toBe(moved)
    // SOURCE hand (two drags, two steps, however many places each passed)
    expect(await page.locator('summary', { hasText: '2 steps' }).count()).toBe(1)
    await undo(page).click()
    await undo(page).click()
    await expect.poll(() => sentenceOf(page)).toBe(before)
    await expect.poll(() => kept(page)).toMatch(/^kept at /)
    await reloaded(page)
    expect(await undo(page).isDisabled()).toBe(true)
    await again(page).click()
    await expect.poll(() => undo(page).textContent()).toContain('Pin topNear')
  })

  it('is there after a reload in the very moment that it was done', async () => {
    const page = await bench.open('motion')
    await grip(page, 'pad distal.tip').press('ArrowUp')
    await page.getByRole('button', { name: /^Undo: Pad distal\.tip/ }).waitFor()
    await reloaded(page)
    await expect.poll(() => undo(page).textContent()).toContain('Pad distal.tip')
  })

  it('on two pages at once is not overwritten: one is chosen, the other waits', async () => {
    const page = await bench.open('motion')
    const other = await page.context().newPage()
    await other.goto(page.url())
    await other.locator('.finger-drawing').waitFor()
    await grip(page, 'pad distal.tip').press('ArrowUp')
    await expect.poll(() => kept(page)).toMatch(/^kept at /)
    await grip(other, 'pad distal.back').press('ArrowUp')
    const alert = other.getByRole('alert')
    await alert.waitFor()
    expect(await alert.getByRole('region', { name: 'This page' }).textContent()).toContain('"back"')
    await alert.getByRole('button', { name: 'Go on with the other’s' }).click()
    await expect.poll(() => undo(other).textContent()).toContain('Pad distal.tip')
    await expect.poll(() => again(other).textContent()).toContain('as it stood on the other page')
    await expect.poll(() => kept(other)).toMatch(/^kept at /)
    await again(other).click()
    await expect.poll(() => kept(other)).toMatch(/^kept at /)
    await reloaded(page)
    // SOURCE property: nothing is lost, both pages' steps stand one after the other
    await expect.poll(() => undo(page).textContent()).toContain('as it stood on the other page')
    await undo(page).click()
    await expect.poll(() => undo(page).textContent()).toContain('Pad distal.tip')
  })
})

describe('a trial beside the sentence', () => {
  afterEach(() => bench.clear())

  it('is made with one click and taken back with another, also when something else was done since', async () => {
    const page = await bench.open('motion')
    const before = await sentenceOf(page)
    const grit = page.getByRole('button', { name: '0.2 mm of grit at the stop', exact: true })
    await grit.click()
    await expect.poll(() => sentenceOf(page)).not.toBe(before)
    expect(await grit.getAttribute('aria-pressed')).toBe('true')
    await expect.poll(() => page.getByTestId('moved').textContent()).toContain('→')
    const gritty = await stillSentence(page)
    await grit.click()
    await expect.poll(() => sentenceOf(page)).toBe(before)
    expect(await undo(page).isDisabled()).toBe(true)
    await grit.click()
    await expect.poll(() => sentenceOf(page)).toBe(gritty)
    await grip(page, 'pad distal.tip').press('ArrowUp')
    await expect.poll(() => undo(page).textContent()).toContain('Pad distal.tip')
    await grit.click()
    await expect.poll(() => sentenceOf(page)).toBe(before)
    await expect.poll(() => undo(page).textContent()).toBe('Undo: trial taken back: 0.2 mm of grit at the stop')
    expect(await grit.getAttribute('aria-pressed')).toBe('false')
  })

  it('says what it did while it stands, also where nothing of it is left to do', async () => {
    const page = await bench.open('motion')
    const dry = page.getByRole('button', { name: 'Dry pins', exact: true })
    await dry.click()
    await expect.poll(() => page.getByTestId('moved').textContent()).toContain('→')
    // SOURCE property (the trial's own words, with its figures)
    await expect.poll(() => page.locator('#trial-dryPins').textContent()).toContain('0.15 to 0.30 from rest')
  })
})

describe('things', () => {
  afterEach(() => bench.clear())

  const springs = (page: Page) => page.locator('.finger-drawing .spring').count()

  it('are added with a picture first, and taken out again', async () => {
    const page = await bench.open('motion')
    const drawn = await springs(page)
    await openSection(page, 'Springs')
    await page.getByRole('button', { name: /^Add a tension spring/ }).click()
    await page.locator('.proposed .spring').waitFor()
    expect(await springs(page)).toBe(drawn)
    expect(await undo(page).isDisabled()).toBe(true)
    await page.getByLabel('name', { exact: true }).fill('helper')
    await page.getByRole('button', { name: 'Add it' }).click()
    // SOURCE hand (one spring more)
    await expect.poll(() => springs(page)).toBe(drawn + 1)
    expect(await page.locator('.proposed').count()).toBe(0)
    await page.getByRole('button', { name: 'Remove helper' }).click()
    await expect.poll(() => springs(page)).toBe(drawn)
    await expect.poll(() => undo(page).textContent()).toBe('Undo: removed springs › helper')
  })

  it('that others name stay, and it is said who', async () => {
    const page = await bench.open('motion')
    await openSection(page, 'Pins')
    await page.getByRole('button', { name: 'Remove dip' }).click()
    const why = page.getByRole('alert')
    await why.waitFor()
    await why.getByRole('button', { name: /^toggle distal/ }).click()
    await expect
      .poll(() => page.evaluate(() => (document.activeElement as HTMLElement).dataset.place))
      .toMatch(/^toggles\.distal/)
    expect(await undo(page).isDisabled()).toBe(true)
  })
})

describe('what is worked out', () => {
  afterEach(() => bench.clear())

  it('parts that run into each other are named, and one click shows where it is worst', async () => {
    const page = await bench.open('motion')
    const clashing = exampleText.replaceAll(
      '[["-10 mm", "-5.5 mm"], ["5.5 mm", "10 mm"]]',
      '[["-5.5 mm", "-1 mm"], ["1 mm", "5.5 mm"]]',
    )
    const file = { name: 'clash.json', mimeType: 'application/json', buffer: Buffer.from(clashing) }
    await page.getByLabel('Design file').setInputFiles(file)
    const list = page.getByRole('region', { name: 'Parts that run into each other' })
    await list.waitFor()
    expect(await list.textContent()).toContain('Mount block and Proximal phalanx')
    expect(await page.locator('.finger-drawing .overlap').count()).toBeGreaterThan(0)
    const slider = page.getByRole('slider')
    await slider.press('Home')
    const place = list.getByRole('button').first()
    const degrees = (await place.textContent())?.split(',')[0] ?? 'no place'
    await place.click()
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toContain(degrees)
  })

  it('says what a step of each value does, one after the other; it is stopped, and a row leads to its field', async () => {
    const page = await bench.open('hold')
    await page.getByRole('button', { name: 'Work it out' }).click()
    const steps = page.getByRole('region', { name: 'What a small step of each value does' })
    await steps.getByRole('progressbar').waitFor()
    await steps.locator('tbody tr').first().waitFor()
    await steps.getByRole('button', { name: 'Stop' }).click()
    await expect.poll(() => steps.getByRole('progressbar').count()).toBe(0)
    const reached = await page.getByTestId('sensitivities-reached').textContent()
    expect(reached).toMatch(/^\d+ of \d+$/)
    await steps.locator('tbody').getByRole('button').first().click()
    await expect.poll(() => page.evaluate(() => (document.activeElement as HTMLElement).dataset.place)).toBeDefined()
  })
})

it('complains about nothing and asks nobody else', () => {
  expect(bench.complaints).toEqual([])
})
