// Installs what is missing, then runs every check of the project and says in one line how many passed.
// `npm test -- unit property` runs only the named stages. Uses Node's own modules only until the packages are there.
import { spawn } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { browserForTests } from './browser.mjs'
import { buildOrEnd } from './build.mjs'
import { installPackages } from './packages.mjs'
import { stagesOf, summaryOf } from './stages.mjs'

const root = join(import.meta.dirname, '..')
const PROJECTS = ['unit', 'property', 'cases', 'house', 'browser']
const TOOLS = {
  'types of the engine': ['node_modules/typescript/bin/tsc', '-p', 'engine'],
  'types of everything': ['node_modules/typescript/bin/tsc', '-p', '.'],
  'format and lint': ['node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '.'],
}

/** @typedef {import('./stages.mjs').Stage} Stage */

const asked = process.argv.slice(2)
const unknown = asked.filter((name) => !PROJECTS.includes(name))
if (unknown.length > 0) fail(`There is no stage ${unknown.join(', ')}; the stages are ${PROJECTS.join(', ')}.`)
const projects = asked.length === 0 ? PROJECTS : asked

if (!installPackages(root)) fail('The packages could not be installed; npm says why above.')
const browser = projects.includes('browser') ? browserForTests() : undefined
if (projects.includes('browser') && browser === undefined) fail('No browser, so the tests of the page cannot run.')

const begun_ms = performance.now()
await buildOrEnd(root)
// A browser leaves much of a machine idle, so the page is tested beside everything else; what it says is shown when its turn comes.
const page = projects.includes('browser') ? runTests(['browser'], 'later') : Promise.resolve([])
const stages = await runTools()
const others = projects.filter((name) => name !== 'browser')
if (others.length > 0) stages.push(...(await runTests(others, 'now')))
stages.push(...(await page))
const summary = summaryOf(stages, Math.round((performance.now() - begun_ms) / 1000))
console.log(`\n${summary.text}`)
process.exitCode = summary.passed ? 0 : 1

/** @returns {Promise<Stage[]>} */
async function runTools() {
  return Promise.all(
    Object.entries(TOOLS).map(async ([name, words]) => {
      const passed = (await run(words)) === 0
      if (!passed) console.error(`Failed: ${name}`)
      return { name, passed: Number(passed), failed: Number(!passed) }
    }),
  )
}

/**
 * @param {string[]} group projects of vitest.config.ts
 * @param {'now' | 'later'} shown whether what it says is shown as it comes or all at once when it has ended
 * @returns {Promise<Stage[]>} one stage a project; a project without any test counts as failed
 */
async function runTests(group, shown) {
  const folder = mkdtempSync(join(tmpdir(), 'fingerwright-'))
  const counts = join(folder, 'counts.json')
  try {
    const words = [
      'run',
      ...group.map((name) => `--project=${name}`),
      '--reporter=default',
      '--reporter=./scripts/count-reporter.mjs',
    ]
    const environment = { FINGERWRIGHT_COUNTS: counts, ...(browser === undefined ? {} : { FINGERWRIGHT_CHROMIUM: browser }) }
    const status = await run(['node_modules/vitest/vitest.mjs', ...words], { environment, shown })
    const counted = existsSync(counts) ? JSON.parse(readFileSync(counts, 'utf8')) : { projects: {}, unhandled: 1 }
    return stagesOf({ group, counts: counted, status })
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/**
 * @param {string[]} words script and its arguments
 * @param {{ environment?: Record<string, string>, shown?: 'now' | 'later' }} [how] what is added to our own environment, and when its words are shown
 * @returns {Promise<number>} exit status
 */
function run(words, { environment = {}, shown = 'now' } = {}) {
  return new Promise((resolve) => {
    const env = { ...process.env, ...environment }
    const child = spawn(process.execPath, words, { cwd: root, stdio: shown === 'now' ? 'inherit' : 'pipe', env })
    /** @type {Buffer[]} */
    const said = []
    child.stdout?.on('data', (piece) => said.push(piece))
    child.stderr?.on('data', (piece) => said.push(piece))
    child.on('close', (code) => {
      process.stdout.write(Buffer.concat(said))
      resolve(code ?? 1)
    })
  })
}

/**
 * @param {string} why
 * @returns {never}
 */
function fail(why) {
  console.error(why)
  process.exit(1)
}
