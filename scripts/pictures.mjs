// `npm run pictures`: every page of the example on light and on dark paper, into docs/pictures/pages, to be looked at before a page is called done;
// those of the README into docs/pictures, and the pages of what is typeset into docs/pictures/sheets.
import { spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { browserForTests } from './browser.mjs'
import { buildOrEnd } from './build.mjs'
import { README_PICTURES } from './readme-pictures.mjs'
import { sheetPictures } from './sheet-pictures.mjs'

const root = join(import.meta.dirname, '..')
const folder = join(root, 'docs/pictures')
const pages = join(folder, 'pages')
const PAGES = ['motion', 'hold', 'strength', 'spread', 'make', 'check', 'prove', 'revisions']
const SHEET = { width: 1280, height: 1600 }
/** What stands in the README shows less of a page. */
const README_SHEET = { width: 1280, height: 1000 }
/** What is worked out apart from the page (plots, lists) has arrived by then. */
const SETTLED_ms = 2500

await buildOrEnd(root)
const executablePath = browserForTests()
if (executablePath === undefined) process.exit(1)
mkdirSync(pages, { recursive: true })
const store = mkdtempSync(join(tmpdir(), 'fingerwright-pictures-'))
const server = spawn(
  process.execPath,
  ['build/command/fingerwright.mjs', 'serve', 'designs/heron.json', '--port', '0', '--store', store],
  {
    cwd: root,
    stdio: ['ignore', 'pipe', 'inherit'],
  },
)
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] })
try {
  const address = await addressSaid()
  for (const colorScheme of /** @type {const} */ (['light', 'dark'])) {
    const page = await browser.newPage({ viewport: SHEET, colorScheme })
    await page.goto(address)
    for (const name of PAGES) await taken(page, { name, colorScheme })
    await page.close()
  }
  for (const [name, show] of Object.entries(README_PICTURES)) {
    const page = await browser.newPage({ viewport: README_SHEET, colorScheme: 'light' })
    await page.goto(address)
    await show(page)
    await kept(page, join(folder, `${name}.png`))
    await page.close()
  }
  if (!sheetPictures({ root, folder: join(folder, 'sheets'), scratch: store }))
    console.log('The pages of what is typeset were left out: pdftoppm is missing (Debian: poppler-utils).')
} finally {
  await browser.close()
  server.kill()
  rmSync(store, { recursive: true, force: true })
}

/** @returns {Promise<string>} */
function addressSaid() {
  return new Promise((resolve) => {
    server.stdout.on('data', (piece) => {
      const found = /http:\S+/.exec(String(piece))
      if (found) resolve(found[0])
    })
  })
}

/**
 * @param {import('playwright-core').Page} page
 * @param {{ name: string, colorScheme: 'light' | 'dark' }} shown
 */
async function taken(page, { name, colorScheme }) {
  await page.evaluate((to) => {
    location.hash = to
  }, name)
  await page.getByTestId('sentence').waitFor()
  await page.waitForTimeout(SETTLED_ms)
  await kept(page, join(pages, `${name}-${colorScheme}.png`))
}

/** @param {import('playwright-core').Page} page @param {string} path */
async function kept(page, path) {
  await page.screenshot({ path })
  console.log(path)
}
