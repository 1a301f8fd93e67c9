import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome']
const PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
]

/**
 * The browser for the page's tests: the one named by FINGERWRIGHT_CHROMIUM, else an installed one, else Debian's package.
 *
 * @returns {string | undefined} path of a browser that answers; undefined after the reason was printed
 */
export function browserForTests() {
  const named = process.env.FINGERWRIGHT_CHROMIUM
  if (named !== undefined && named !== '') {
    if (answers(named)) return named
    console.error(`FINGERWRIGHT_CHROMIUM names ${named}, which does not start.`)
    return undefined
  }
  return installedBrowser() ?? (mayInstall() ? packagedBrowser() : explainMissing())
}

/** @returns {string | undefined} */
function installedBrowser() {
  const folders = (process.env.PATH ?? '').split(delimiter)
  const onPath = NAMES.flatMap((name) => folders.map((folder) => join(folder, name)))
  return [...onPath, ...PLACES].find((path) => existsSync(path) && answers(path))
}

/** @param {string} path */
function answers(path) {
  return spawnSync(path, ['--version'], { stdio: 'ignore', timeout: 20_000 }).status === 0
}

function mayInstall() {
  return process.getuid?.() === 0 && spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).status === 0
}

/** @returns {string | undefined} */
function packagedBrowser() {
  console.log('Installing Debian’s chromium for the page’s tests …')
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  const apt = (/** @type {string[]} */ ...words) =>
    spawnSync('apt-get', words, { stdio: ['ignore', 'ignore', 'inherit'], env: environment }).status === 0
  // Lists that are only partly fresh are often fresh enough, so that only the install itself decides.
  if (!apt('update', '-qq')) console.error('apt-get update failed; the package may still be found.')
  if (!apt('install', '-y', '-qq', '--no-install-recommends', 'chromium')) console.error('apt-get install chromium failed.')
  return installedBrowser() ?? explainMissing()
}

/** @returns {undefined} */
function explainMissing() {
  console.error(
    'The page’s tests need a browser. Install Chromium or Chrome so that `chromium` or `google-chrome` is on the PATH,\n' +
      'or name one: FINGERWRIGHT_CHROMIUM=/path/to/chrome npm test',
  )
  return undefined
}
