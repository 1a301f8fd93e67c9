import * as z from 'zod'
import { limits } from '../numbers/limits.ts'
import { loadCaseId, note, object, partId, pinId, plain, springId } from './schema-leaves.ts'

const share = object({
  loadCase: loadCaseId.describe('Id of a load case.'),
  share: plain('20 %').describe('Part of the closings that are under this load; all together at most 1.'),
})

/** `use`: how often the finger is closed, and under which loads. */
export const use = object({
  closingsPerDay: plain('400').describe('Closings on a day of wear, each with its way back.'),
  years: plain('2').describe('How long the finger is to last, at 365 days a year.'),
  shares: z
    .array(share, { error: 'a list of load cases with their shares' })
    .max(limits.loadCases, { error: `at most ${limits.loadCases} shares` })
    .optional()
    .describe(
      'What is left of the closings carries no load, and a load case that is not named has to be borne a thousand times. Left out: every closing is under the worst load.',
    ),
}).describe('How often the finger is closed, for how long. Left out: nothing is said of wear and fatigue.')

/** `factors`: by how much a strength must exceed its stress. */
export const factors = object({
  yield: plain('1.5').describe('On yielding, at least 1.'),
  ultimate: plain('2').describe('On breaking, at least 1.'),
  reason: note('the reason').describe('Why these: how well the loads are known, and what happens when it gives.'),
  scatter: object({
    load: plain('15 %').describe('Standard deviation of the loads in use, as a share of what the load cases state.'),
    strength: plain('8 %').describe('Standard deviation of the strengths, as a share of those stated.'),
    source: note('the source').describe('Where both are from.'),
  })
    .optional()
    .describe(
      'How loads and strengths scatter: what is left of a risk that hangs on strength takes its probability from it. Left out: it does not.',
    ),
}).describe(
  'By how much a strength must exceed its stress. Left out: 1.5 on yielding and 2 on breaking, common practice for loads that are known roughly.',
)

const member = z
  .union(
    [
      object({ pin: pinId.describe('Id of a pin.') }),
      object({ part: partId.describe('Id of a part.') }),
      object({ spring: springId.describe('Id of a spring.') }),
    ],
    {
      error: 'one of pin, part and spring, with its id',
    },
  )
  .describe('A pin, a part or a spring by its id.')

/** `givesWay`: what is to give way first under too much load. */
export const givesWay = z
  .array(member, { error: 'a list of pins, parts and springs' })
  .max(limits.givesWay, { error: `at most ${limits.givesWay} of them` })
  .describe('The order in which things are to give way under too much load, the first first.')
