/** TEST SUPPORT. The built page in a real browser, served by the real server with the example design. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core'
import { openAnyStore } from '../../records/index.ts'
import { type Given, loadPage, shelve, startServer } from '../../server/index.ts'
import { builtPage } from './built-page.ts'

const root = join(import.meta.dirname, '../..')
const EXAMPLE = join(root, 'designs/heron.json')
const QUIET = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking']
const QUIETER = ['--disable-component-update', '--disable-sync']

/** Text of the example design. */
export const exampleText = readFileSync(EXAMPLE, 'utf8')

/** A browser for the tests of one file, and for each test a page server of its own with an empty store. */
export interface Bench {
  /** Opens the page at a question and waits for its drawing. */
  readonly open: (question: 'motion' | 'hold' | 'strength', options?: BrowserContextOptions) => Promise<Page>
  /** Opens the address of the server as a stranger, and does not wait for a drawing. */
  readonly knock: (options?: BrowserContextOptions) => Promise<Page>
  /** Everything the browser complained about, and every address outside of the server that it asked for. */
  readonly complaints: readonly string[]
  /** Closes every page that a test opened, and forgets what it saved. */
  readonly clear: () => Promise<void>
  readonly end: () => Promise<void>
}

/** Serves the built page and starts the browser. */
export async function startBench(door: Pick<Given, 'names' | 'signIn' | 'typeset'> = {}): Promise<Bench> {
  const given = { shelf: shelve([EXAMPLE]), page: loadPage(builtPage), ...door }
  const browser = await startBrowser()
  const complaints: string[] = []
  let served: Promise<Served> | undefined
  const opening = async (): Promise<Opening> => {
    served ??= serve(given)
    return { browser, address: (await served).address, complaints }
  }
  const clear = async (): Promise<void> => {
    await Promise.all(browser.contexts().flatMap((context) => context.pages().map(nothingWaits)))
    await Promise.all(browser.contexts().map((context) => context.close()))
    await (await served)?.end()
    served = undefined
  }
  return {
    open: async (question, options = {}) => openPage(await opening(), { question, options }),
    knock: async (options = {}) => watchedPage(await opening(), options),
    complaints,
    clear,
    end: async () => {
      await clear()
      await browser.close()
    },
  }
}

/** A page that is left while it saves would find its server gone. */
async function nothingWaits(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector('[data-keeping=waiting]') === null)
}

interface Served {
  readonly address: string
  readonly end: () => Promise<void>
}

async function serve(given: Given): Promise<Served> {
  const folder = mkdtempSync(join(tmpdir(), 'fingerwright-store-'))
  const store = await openAnyStore({ folder, now: () => new Date('2031-04-05T06:07:08.009Z') })
  const { address, close } = await startServer({ ...given, store }, { port: 0, orNext: false })
  const end = async (): Promise<void> => {
    await close()
    store.close()
    rmSync(folder, { recursive: true, force: true })
  }
  return { address, end }
}

/** The sentence of the open question. */
export async function sentenceOf(page: Page): Promise<string> {
  return (await page.getByTestId('sentence').textContent()) ?? ''
}

function startBrowser(): Promise<Browser> {
  const named = process.env.FINGERWRIGHT_CHROMIUM
  const executablePath = named === undefined || named === '' ? '/usr/bin/chromium' : named
  return chromium.launch({ executablePath, args: [...QUIET, ...QUIETER] })
}

interface Opening {
  readonly browser: Browser
  readonly address: string
  readonly complaints: string[]
}

async function openPage(
  opening: Opening,
  { question, options }: { readonly question: string; readonly options: BrowserContextOptions },
): Promise<Page> {
  const page = await watchedPage({ ...opening, address: `${opening.address}#${question}` }, options)
  await page.locator('.finger-drawing').waitFor()
  await page.evaluate(() => document.fonts.ready)
  return page
}

/** Opens an address and writes down what the browser complains about. */
async function watchedPage({ browser, address, complaints }: Opening, options: BrowserContextOptions): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options })
  const page = await context.newPage()
  page.on('console', (message) => {
    // A save that came too late and a file that is refused are answers of the server, though browsers report them.
    const isAnswer = /status of (409|422) \(/.test(message.text())
    if (!isAnswer && (message.type() === 'error' || message.type() === 'warning')) complaints.push(message.text())
  })
  page.on('pageerror', (error) => complaints.push(error.message))
  page.on('request', (request) => {
    if (!request.url().startsWith(new URL(address).origin) && !request.url().startsWith('blob:'))
      complaints.push(`asked for ${request.url()}`)
  })
  await page.goto(address)
  return page
}
