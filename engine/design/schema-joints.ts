import * as z from 'zod'
import { limits } from '../numbers/limits.ts'
import { shownBy } from './proving/schema-proving.ts'
import {
  angle,
  choice,
  coatingName,
  couple,
  force,
  frictionName,
  idOf,
  kind,
  length,
  name,
  note,
  object,
  partId,
  partPoint,
  partPointNeeded,
  partThing,
  pinId,
  quantity,
} from './schema-leaves.ts'
import { meant } from './schema-meaning.ts'
import { slices } from './schema-slices.ts'
import { profile } from './schema-tolerance.ts'

const round = z.union(
  [
    object({ part: idOf('part'), hole: idOf('hole'), radius: length }),
    object({ part: idOf('part'), pad: idOf('pad'), radius: length }),
    object({ part: idOf('part'), x: length, y: length, radius: length }),
  ],
  { error: `${partPointNeeded}; and radius` },
)

/** One entry of `stops`. */
export const stop = object({
  round: round.describe('The round end or pin that meets the edge; its centre on its part, and its radius.'),
  against: partThing('edge'),
  across: slices(
    'Where the round lies across the finger’s width, such as a bar that reaches over both cheeks of a fork. Default: where its part lies.',
  ).optional(),
  coating: coatingName
    .optional()
    .describe('On the round end: a row of the table of coatings, or of coatings of this document. Default: that of its part.'),
  profile: profile.optional(),
  friction: frictionName.describe('A pair of this document’s friction.'),
  gap: length.optional().describe('Material removed (positive) or added (negative) between the two. Default: 0.'),
})

const kinds = (names: string) => ({ error: `kind: one of ${names}` })

const effortMost = (kind: 'force' | 'couple') =>
  quantity(kind).optional().describe('What the wearer can give. Left out: not stated.')
const stroke = {
  open: length,
  closed: length.describe('Stroke from the drawn posture; larger than open.'),
  effortMost: effortMost('force'),
}

/** `drive`, told apart by `kind`. */
export const drive = z
  .discriminatedUnion(
    'kind',
    [
      object({
        kind: kind('turn'),
        part: idOf('part'),
        against: idOf('part'),
        pin: pinId.describe('The pin that joins the two.'),
        open: angle,
        closed: angle.describe('Flexion of part against against; larger than open.'),
        effortMost: effortMost('couple'),
      }).describe('The wearer turns a part about a pin.'),
      object({ kind: kind('pull'), on: partPoint, towards: partPoint, ...stroke }).describe('The wearer pulls on a point.'),
      object({
        kind: kind('wrap'),
        roller: partPoint.describe('Centre of the roller.'),
        pitchRadius: length,
        turns: choice(['clockwise', 'counter-clockwise'], 'The way a pull turns the roller.'),
        towards: partPoint,
        ...stroke,
      }).describe('The wearer pulls on a chain or cable that wraps a roller.'),
    ],
    kinds('turn, pull, wrap'),
  )
  .describe('What the wearer moves. It grows as the finger closes.')

/** Direction of a force: an angle from the x axis of the frame of a part. */
const direction = {
  direction: angle.describe('Counter-clockwise from the x axis of frame.'),
  frame: partId
    .optional()
    .describe('The part whose frame the direction follows. Default: the mount, so that it is fixed in space.'),
}

/** A port, told apart by `kind`. */
export const port = z
  .discriminatedUnion(
    'kind',
    [
      object({ kind: kind('drive') }),
      object({ kind: kind('couple'), part: idOf('part'), against: idOf('part') }).describe(
        'A clockwise (flexing) couple on part.',
      ),
      object({ kind: kind('force'), at: partThing('pad'), ...direction }),
    ],
    kinds('drive, couple, force'),
  )
  .describe('A force or couple whose amount is asked for.')

const amount = meant(z.string({ error: 'a force such as "20 N", or a couple such as "300 N*mm"' }), { is: 'amount' })

/** `release`. */
export const release = object({
  port,
  most: amount.optional().describe('What can be given there: a force, or a couple.'),
}).describe('Where and how the wearer forces a finger open that has gone past dead centre.')

const list = <T extends z.ZodType>(thing: T, what: string) =>
  z
    .array(thing, { error: `a list of ${what}` })
    .max(limits.forcesOfLoadCase, { error: `at most ${limits.forcesOfLoadCase} ${what}` })

/** One entry of `loadCases`. */
export const loadCase = object({
  title: name('the title of the load case').optional().describe('In words. Default: the id.'),
  forces: list(object({ at: partThing('pad'), force, ...direction }), 'forces')
    .optional()
    .describe('Forces at pads.'),
  couples: list(object({ part: idOf('part'), against: idOf('part'), couple }), 'couples')
    .optional()
    .describe('Counter-clockwise couples on part, their reaction on against.'),
  sideways: list(object({ at: partThing('pad'), force }), 'sideways forces')
    .optional()
    .describe('Forces out of the plane, carried by the hinges; they take no part in motion.'),
  acts: choice(['closed', 'travel'], 'Only closed, or all the way. Default: closed.').optional(),
  keeper: object({ port, allowed: amount.describe('The most that may be needed to keep the finger closed.') })
    .optional()
    .describe('The small load that keeps the finger closed.'),
})

/** One entry of `toggles`. */
export const toggle = object({
  pins: z
    .tuple([pinId, pinId, pinId], { error: 'three pins by their ids, in the order of the chain' })
    .describe('A, B, C: A and B sit in one part, B and C in another.'),
  folded: z.boolean({ error: 'true or false' }).optional().describe('Counted from the folded-back position. Default: false.'),
}).describe('Three pins A-B-C whose dead-centre margin is watched.')

/** `weight`. */
export const weight = object({ from: angle, to: angle }).describe(
  'Range of the directions of gravity in the mount frame, counter-clockwise from x. Left out: weight is left out.',
)

const reasons = {
  reason: note('the reason').describe('Why this is asked for.'),
  source: note('the source').describe('Who or what asks for it.'),
  shownBy,
}
const figure = meant(z.string({ error: 'the name of a figure' }), { is: 'figure' }).describe(
  'Name of a figure, such as closed.toggle.distal.deadCentreMargin.',
)
const bound = meant(z.union([z.string(), z.number()], { error: 'a quantity with its unit, or a plain number' }), { is: 'bound' })

/** One entry of `requirements`: exactly one of `atLeast`, `atMost` and `is`. */
export const requirement = z
  .union(
    [
      object({ figure, atLeast: bound.describe('The least value that will do.'), ...reasons }),
      object({ figure, atMost: bound.describe('The largest value that will do.'), ...reasons }),
      object({ figure, is: z.boolean({ error: 'true or false' }).describe('What a yes-or-no figure must be.'), ...reasons }),
    ],
    { error: 'figure, reason, source and one of atLeast, atMost, is' },
  )
  .describe('A figure with its bound and the reason for it.')
