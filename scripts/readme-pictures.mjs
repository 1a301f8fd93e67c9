// The pictures of the README: each a page of the example in a state that its words tell of.

/** @typedef {import('playwright-core').Page} Page */

/** What the calculation beside the page brings has arrived by then. */
const SETTLED_ms = 2500
/** A count of a thousand sets, on a slow machine. */
const COUNTED_ms = 300_000

const README_MIDDLE = { x: 640, y: 500 }
/** Where the pin that was moved stands in its picture, from the top. */
const PIN_px = 120

/** Name of the file, and the way from the opened example to what is shown. @type {Record<string, (page: Page) => Promise<void>>} */
export const README_PICTURES = {
  page: (page) => opened(page, 'hold'),
  strength: (page) => opened(page, 'strength'),
  spread: async (page) => {
    await opened(page, 'spread')
    await page.getByLabel('try changes as well').uncheck()
    await page.getByRole('button', { name: 'Work it out', exact: true }).click()
    await page.getByRole('button', { name: 'Work it out again' }).waitFor({ timeout: COUNTED_ms })
  },
  editing: async (page) => {
    await opened(page, 'motion')
    await pinMoved(page, 2)
    await page.getByText(/^Dimensions/).click()
    await page.waitForTimeout(SETTLED_ms)
    const drawn = await page.locator('[data-grip="pin topNear"]').boundingBox()
    await page.mouse.move(README_MIDDLE.x, README_MIDDLE.y)
    await page.mouse.wheel(0, (drawn?.y ?? 0) - PIN_px)
    await page.waitForTimeout(SETTLED_ms)
  },
  compared: async (page) => {
    await opened(page, 'revisions')
    await page.getByRole('textbox', { name: 'Who' }).fill('K1')
    await page.getByRole('textbox', { name: 'Why' }).fill('as it was handed over')
    await page.getByRole('button', { name: /^Keep this as revision/ }).click()
    await page.getByRole('listitem', { name: 'Revision 1' }).waitFor()
    await opened(page, 'motion')
    await pinMoved(page, 5)
    await opened(page, 'revisions')
    await page.getByRole('listitem', { name: 'Revision 1' }).getByRole('button', { name: 'Compare with what stands now' }).click()
    await page.locator('.compared-drawing').waitFor()
    await page.getByText('Side by side').evaluate((heading) => heading.scrollIntoView())
    await page.waitForTimeout(SETTLED_ms)
  },
}

/** @param {Page} page @param {string} question */
async function opened(page, question) {
  await page.evaluate((to) => {
    location.hash = to
  }, question)
  await page.getByTestId('sentence').waitFor()
  await page.waitForTimeout(SETTLED_ms)
}

/** Moves a pin by so many of the shop's steps, with the finger open. @param {Page} page @param {number} steps */
async function pinMoved(page, steps) {
  await page.getByRole('slider').press('Home')
  const grip = page.locator('[data-grip="pin topNear"]')
  for (let step = 0; step < steps; step += 1) await grip.press('ArrowUp')
}
