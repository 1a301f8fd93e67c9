// `npm run bench`: what a workshop waits for. Nothing here is a test; see the machine's line before comparing times.
import { readFileSync } from 'node:fs'
import { evaluate, forcesAt, postureAt, readDesign } from '../engine/index.ts'
import { drawPosture, layoutSheet, verdictSentence } from '../report/index.ts'
import { closedWays } from './closed-ways.ts'
import { compare, machineLine, rateLines } from './compare.ts'
import { frictionWays } from './friction-ways.ts'
import { postureWays } from './posture-ways.ts'
import { verdictThreads } from './verdict-threads.ts'
import { yieldThreads } from './yield-threads.ts'

/** One full evaluation of the example must not take longer: the sentence then follows a dragged pin. */
const TARGET_ms = 5

const text = readFileSync(new URL('../designs/heron.json', import.meta.url), 'utf8')
const read = readDesign(text, 'heron')
if (read.problems !== undefined) throw new Error(`the example is refused: ${JSON.stringify(read.problems)}`)
const design = read.value
const evaluation = evaluate(design)
const travel = evaluation.travel
if (travel === undefined) throw new Error('the example does not move')

/** The piece of work that the target is stated for: three load cases. */
const three = { ...design, loadCases: design.loadCases.slice(0, 3), requirements: [] }
const loadCase = design.loadCases[0].id
const sheet = layoutSheet({ design, travel, width_px: 900 })
let scrubbed = 0
const nextPlace = () => {
  scrubbed = (scrubbed + 0.0137) % 1
  return scrubbed
}

const target = { name: 'evaluate, three load cases', run: () => evaluate(three) }
/** The compiler is done with an evaluation after some nine hundred of them, a quarter of a minute of dragging; before, it takes a tenth longer. */
const COMPILED_ms = 6000

// First by itself, as in the page's worker, where nothing else takes its place in the caches.
const [alone] = compare([target], COMPILED_ms)
const rates = compare([
  target,
  { name: `evaluate, all ${design.loadCases.length}`, run: () => evaluate(design) },
  { name: 'read the example', run: () => readDesign(text, 'heron') },
  { name: 'one posture', run: () => postureAt(evaluation, nextPlace()) },
  { name: 'forces at one posture', run: () => forcesAt(evaluation, nextPlace(), { kind: 'hold', loadCase }) },
  {
    name: 'draw one posture',
    run: () =>
      drawPosture({ design, travel, posture: postureAt(evaluation, nextPlace()) }, { sheet, idPrefix: 'bench', title: 'heron' }),
  },
  { name: 'say the verdict', run: () => verdictSentence(evaluation) },
])

console.log(machineLine())
console.log(`${travel.postures.length} postures, both directions\n`)
for (const line of rateLines(rates)) console.log(line)
const verdict = alone.time_ms <= TARGET_ms ? 'within' : 'over'
console.log(
  `\nEvaluating with three load cases, by itself, takes ${alone.time_ms.toFixed(2)} ms: ${verdict} the target of ${TARGET_ms} ms.`,
)

console.log('\nFriction of a finger whose links carry nothing:')
for (const line of rateLines(compare(frictionWays()))) console.log(line)

console.log('\nHold verdict of the sets of the example:')
for (const line of rateLines(compare(closedWays()))) console.log(line)
for (const line of await verdictThreads(new URL('./bench-worker.mjs', import.meta.url))) console.log(line)

console.log('\nYield of the example by surfaces:')
for (const line of await yieldThreads(new URL('./bench-share-worker.mjs', import.meta.url))) console.log(line)

console.log('\nPostures of many sets:')
for (const line of rateLines(compare(postureWays()))) console.log(line)
