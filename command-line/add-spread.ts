import type { Command } from 'commander'
import { limits } from '../engine/index.ts'
import type { ExitStatus } from './exit-status.ts'
import { DESIGN, REVISION, STORE } from './option-words.ts'
import { type SpreadOptions, spread } from './spread.ts'
import { spreadDefaults } from './spread-asked.ts'
import type { Terminal } from './terminal.ts'

const EXAMPLES = `
Examples
  fingerwright spread designs/heron.json
  fingerwright spread designs/heron.json --samples 20000 --target "99.9 %" --ruler window.svg
  fingerwright spread designs/heron.json --advice
  fingerwright spread designs/heron.json --offer "topLinkLength=±0.03 mm" --offer "parts.middle.holes.dip.position=0.04 mm"`

const HOW = `
Sizes vary as the design's tolerances, coatings and friction ranges say. The same seed gives the same numbers, on any machine and
in any number of threads. From ${limits.surfaceJudged} sets on the yield is told by surfaces as well, which are sooner done and closer
than a count but take it for granted that nothing jumps. Exit status: 0 the target is reached, 1 it is not, 2 undecided, 3 refused.`

interface Around {
  readonly terminal: Terminal
  readonly end: (status: ExitStatus) => void
}

/** Adds the command that counts sets. */
export function addSpread(program: Command, { terminal, end }: Around): void {
  program
    .command('spread')
    .description('will every set behave so? the share of sets that meet each requirement, what drives the rest, what to change')
    .argument('<DESIGN>', `${DESIGN}; or the name of a design in the store`)
    .option('--samples <N>', `sets to count; ${spreadDefaults.samples} when it is left out`)
    .option('--seed <N>', `which samples are drawn; ${spreadDefaults.seed} when it is left out`)
    .option(
      '--target <SHARE>',
      `share of sets that has to meet every requirement; "${spreadDefaults.target}" when it is left out`,
    )
    .option(
      '--advice',
      'judge as well which tolerance to tighten or loosen, the friction that it bears, and where the stop would centre it',
    )
    .option(
      '--offer <SIZE=TOLERANCE>',
      'what a shop offers instead of the tolerance that is drawn, such as "topLinkLength=±0.03 mm": what it costs in yield; may be repeated',
      (typed: string, before: readonly string[] = []) => [...before, typed],
    )
    .option(
      '--closed <N>',
      'look as well at N sets in their closed posture alone: margin and return from rest, far more sets a second',
    )
    .option('--ruler <FILE.svg>', 'draw where the sets stand between jam and slip')
    .option('--json', 'print one JSON document instead of text; angles are in degrees, shares from 0 to 1')
    .option('--working', 'print below every number how it comes about: method, formula, inputs, steps, source')
    .option('--revision <N>', `${REVISION}, of the store; the newest when it is left out`)
    .option('--store <FOLDER>', STORE)
    .addHelpText('after', `${EXAMPLES}\n${HOW}`)
    .action(async (path: string, options: SpreadOptions) => end(await spread(path, options, terminal)))
}
