/** How a finger is shown to do what is asked, and what may go wrong with it. */
import * as z from 'zod'
import { limits } from '../../numbers/limits.ts'
import { choice, id, name, note, object, plain, quantity } from '../schema-leaves.ts'
import { meant } from '../schema-meaning.ts'

const wayShown = z
  .union(
    [
      object({ share: plain('99 %').describe('Share of the sets counted in Spread that has to meet it.') }),
      object({ test: meant(id, { is: 'name', of: 'benchTests' }).describe('Id of a bench test.') }),
      object({
        document: note('the document').describe('Which document shows it: title, number, date.'),
        inHand: z.boolean({ error: 'true or false' }).describe('Whether the workshop has it.'),
      }),
    ],
    { error: 'one of share, test and document with inHand' },
  )
  .describe('One way in which it is shown.')

/** `shownBy` of requirements and demands. */
export const shownBy = z
  .array(wayShown, { error: 'a list of ways in which it is shown' })
  .max(limits.waysShown, { error: `at most ${limits.waysShown} ways` })
  .optional()
  .describe('How it is shown, beside the figure; all of them are needed.')

/** One entry of `demands`. */
export const demand = object({
  asks: note('what is asked').describe('What is asked of the finger that no figure says.'),
  reason: note('the reason').describe('Why this is asked for.'),
  source: note('the source').describe('Who or what asks for it.'),
  shownBy,
}).describe('Something asked in words. Without shownBy it stays open.')

const done = object({
  on: name('the day').describe('The day, as 2026-11-27.'),
  tried: plain('6').describe('Pieces that were tried.'),
  failed: plain('0').describe('Pieces of these that did not pass.'),
  record: note('the record').describe('Where the record is kept.'),
}).describe('Left out: it is still to be done.')

const inBook = z
  .union(
    [
      object({ holds: quantity('force').describe('Load held, at least.') }),
      object({ returnsAfter: quantity('force').describe('Load after which it returned, at least.') }),
      object({ pinches: quantity('force').describe('Pinch force, at least.') }),
      object({ cycles: plain('100000').describe('Closings, at least.') }),
    ],
    { error: 'one of holds, returnsAfter, pinches and cycles' },
  )
  .describe('Which tests in the bench book are of this kind: where there are some, they count in the place of done.')

/** One entry of `benchTests`. */
export const benchTest = object({
  sort: choice(['load', 'let go', 'cycles', 'drop', 'environment', 'trial by the wearer', 'look'], 'What sort of test it is.'),
  title: name('the test'),
  passes: note('what counts as passed').describe('What counts as passed, written down before it is done.'),
  done: done.optional(),
  inBook: inBook.optional(),
}).describe('A test on the bench or by eye.')

const probabilityStep = object({
  name: name('the step'),
  means: note('what it means').describe('What it means, in words that everybody in the workshop reads alike.'),
  upTo: plain('0.1 %').describe('Share of fingers, in their whole life, up to which this step goes; of the last step 100 %.'),
})

const severityStep = object({
  name: name('the step'),
  means: note('what it means').describe('What it means for the wearer.'),
  acceptable: name('a step of the probability')
    .optional()
    .describe('The highest step of probability at which such a harm is taken. Left out: none is.'),
})

const steps = <T extends z.ZodType>(step: T) =>
  z
    .array(step, { error: 'a list of steps, the lowest first' })
    .min(1, { error: 'at least one step' })
    .max(limits.riskSteps, { error: `at most ${limits.riskSteps} steps` })

/** `riskScales`. */
export const riskScales = object({
  probability: steps(probabilityStep).describe('Steps of probability, the least likely first.'),
  severity: steps(severityStep).describe('Steps of severity, the mildest first.'),
}).describe('The workshop’s own scales, and what it takes of each.')

const control = object({
  by: choice(
    ['design', 'protection', 'information'],
    'Inherent in the design, a protective measure, or information for those who use it: to be looked for in this order.',
  ),
  does: note('the control').describe('What is done about it.'),
  check: note('the check').describe('How it is checked that it is done and that it helps.'),
})

const residual = object({
  severity: name('a step of severity'),
  probability: name('a step of probability').optional().describe('As the workshop judges it.'),
  requirements: z
    .array(meant(id, { is: 'name', of: 'requirements' }), { error: 'a list of requirements by their ids' })
    .max(limits.requirements, { error: `at most ${limits.requirements} requirements` })
    .optional()
    .describe('Requirements whose falling short lets it happen: the share of sets that do not meet them is its probability.'),
  reason: note('the reason').describe('Why this is what is left.'),
}).describe(
  'What is left after the controls. It takes a probability, requirements, or both; the worse of them counts. With neither nobody has judged it yet.',
)

/** One entry of `risks`. */
export const risk = object({
  hazard: note('the hazard').describe('What can do harm.'),
  sequence: note('the sequence').describe('What has to happen until somebody is in its way.'),
  harm: note('the harm').describe('What it does to whom.'),
  severity: name('a step of severity'),
  probability: name('a step of probability').describe('Before anything is done about it.'),
  controls: z
    .array(control, { error: 'a list of controls' })
    .max(limits.waysShown, { error: `at most ${limits.waysShown} controls` })
    .describe('What is done about it; may be empty.'),
  residual,
}).describe('A risk from its hazard to what is left of it.')
