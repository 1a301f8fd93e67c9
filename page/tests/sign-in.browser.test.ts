import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { keepPassphrase, loopbackNames } from '../../server/index.ts'
import { objections, objectionsToInk } from './objections.ts'
import { type Bench, startBench } from './opened-page.ts'

const PASSPHRASE = 'four plain words here'
const clock = { ms: 0 }

let bench: Bench
beforeAll(async () => {
  const kept = await keepPassphrase(PASSPHRASE, { blocks: 1024, blockSize: 8, lanes: 1 })
  bench = await startBench({ names: loopbackNames, signIn: { kept, now: () => clock.ms } })
})
afterEach(async () => {
  // The tries of one test are free again in the next.
  clock.ms += 3_600_000
  await bench.clear()
})
afterAll(() => bench.end())

describe('the page for signing in', () => {
  it('is where a stranger ends up, and leads to the notebook and out again', async () => {
    const page = await bench.knock()
    expect(page.url()).toContain('/sign-in')
    await page.getByLabel('Passphrase').fill(PASSPHRASE)
    await page.keyboard.press('Enter')
    await page.locator('.finger-drawing').waitFor()
    await page.getByRole('button', { name: 'Sign out' }).click()
    await page.getByLabel('Passphrase').waitFor()
    await page.goBack()
    await page.getByLabel('Passphrase').waitFor()
    expect(page.url()).toContain('/sign-in')
  })

  it('is led to when a session has ended, loses nothing, and the work is kept on the way back', async () => {
    const page = await bench.knock()
    await page.getByLabel('Passphrase').fill(PASSPHRASE)
    await page.keyboard.press('Enter')
    await page.locator('.finger-drawing').waitFor()
    // SOURCE hand (a session lasts 12 hours)
    clock.ms += 13 * 3_600_000
    await page.locator('[data-grip="pad distal.tip"]').press('ArrowUp')
    const other = page.context().waitForEvent('page')
    await page.getByRole('link', { name: 'Sign in on another page' }).click()
    await (await other).getByLabel('Passphrase').fill(PASSPHRASE)
    await (await other).keyboard.press('Enter')
    await (await other).locator('.finger-drawing').waitFor()
    await page.evaluate(() => dispatchEvent(new Event('focus')))
    await page.locator('[data-keeping=kept]').waitFor()
    expect(await page.getByRole('alert').count()).toBe(0)
    expect(await page.getByRole('button', { name: /^Undo: Pad distal\.tip/ }).count()).toBe(1)
  })

  it('works in a browser without script, and says what was wrong', async () => {
    const page = await bench.knock({ javaScriptEnabled: false })
    await page.getByLabel('Passphrase').fill('another four words')
    await page.getByRole('button', { name: 'Open the notebook' }).click()
    expect(await page.getByRole('alert').textContent()).toContain('not the passphrase')
    await page.getByLabel('Passphrase').fill(PASSPHRASE)
    await page.getByRole('button', { name: 'Open the notebook' }).click()
    await page.waitForURL((url) => url.pathname === '/')
  })

  it('shows no way out where nobody had to sign in', async () => {
    const open = await startBench()
    const page = await open.open('hold')
    expect(await page.getByRole('button', { name: 'Sign out' }).count()).toBe(0)
    await open.end()
  })

  it('leaves axe nothing to object to on light and dark paper, before and after a wrong passphrase', async () => {
    const page = await bench.knock()
    for (const tried of ['first', 'second']) {
      await page.emulateMedia({ colorScheme: 'light' })
      expect(await objections(page)).toEqual([])
      await page.emulateMedia({ colorScheme: 'dark' })
      expect(await objectionsToInk(page)).toEqual([])
      await page.getByLabel('Passphrase').fill(tried)
      await page.keyboard.press('Enter')
      await page.getByRole('alert').filter({ hasText: 'not the passphrase' }).waitFor()
    }
  })

  it('fits 320 px, and gives a touch 44 px', async () => {
    const page = await bench.knock({ viewport: { width: 320, height: 600 }, hasTouch: true, isMobile: true })
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
    expect(wider).toBe(0)
    for (const target of await page.locator('input, button').all()) {
      // SOURCE trade (44 px, the touch target this page was designed for)
      expect((await target.boundingBox())?.height).toBeGreaterThanOrEqual(44)
    }
  })
})

it('no browser complained but about the answers to wrong passphrases, and none asked anybody else', () => {
  expect(bench.complaints.filter((complaint) => !complaint.includes('status of 401'))).toEqual([])
})
