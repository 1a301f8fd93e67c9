import * as z from 'zod'
import {
  angle,
  choice,
  couple,
  force,
  idOf,
  kind,
  length,
  object,
  partId,
  partPoint,
  pinId,
  plain,
  quantity,
} from '../schema-leaves.ts'
import { COIL_ENDS } from './coil.ts'
import { COIL_SEATS } from './spring-wire.ts'
import { wires } from './wire-rows.ts'

const words = <T extends string>(of: Readonly<Record<T, unknown>>) => Object.keys(of) as unknown as readonly [T, ...T[]]
const wireNames = wires.map(({ name }) => name) as [string, ...string[]]
const yesOrNo = (says: string) => z.boolean({ error: 'true or false' }).optional().describe(says)

const wire = {
  material: choice(wireNames, 'Kind of wire, a row of the table of wires.'),
  diameter: length.describe('Of the wire.'),
  mean: length.optional().describe('Mean diameter of the coil. One of mean, outside and inside is stated.'),
  outside: length.optional().describe('Outside diameter of the coil.'),
  inside: length.optional().describe('Inside diameter of the coil.'),
  peened: yesOrNo('Shot-peened. Default: false.'),
  within: plain('10 %')
    .optional()
    .describe('How near what is typed of the spring and what its wire gives have to be. Default: 10 %.'),
}

const torsionWire = object({
  ...wire,
  turns: plain('4.25').describe('Turns of the body, unloaded.'),
  legs: object({ on: length, against: length })
    .optional()
    .describe('Lengths of the legs from the coil to where they press on the two parts. Default: 0.'),
  woundUp: angle
    .optional()
    .describe('How far it is wound up in the drawn posture, from its free shape. The preload follows from it.'),
  arbour: length.optional().describe('Diameter of what the coil sits on. Default: that of the pin.'),
  springs: plain('2').optional().describe('Springs of this kind side by side, which share the torque. Default: 1.'),
}).describe('Wire and coil.')

const compressionWire = object({
  ...wire,
  coils: plain('9').describe('All coils, those of the ends too.'),
  ends: choice(words(COIL_ENDS), 'How the ends are made.'),
  seats: choice(words(COIL_SEATS), 'How it is kept upright. Default: between pivots, which bows soonest.').optional(),
  setRemoved: yesOrNo('Pressed solid once by its maker. Default: false.'),
}).describe('Wire and coil.')

const tensionWire = object({
  ...wire,
  turns: plain('12').describe('Turns of the body.'),
  hook: object({ loop: length, bend: length })
    .optional()
    .describe('Mean radii of the hook: of its loop, and of the bend from the body into it. Left out: its hooks stay undecided.'),
}).describe('Wire and coil.')

const torsionRoom = object({
  outside: length.describe('Diameter that it has around it.'),
  width: length.describe('Along the pin.'),
})
  .optional()
  .describe('Room that there is for it: a coil that does not fit is refused, and others that fit are looked for in it.')

const straightRoom = object({
  outside: length.describe('Diameter that it has around it.'),
  over: length.optional().describe('Diameter of what it goes over. Default: nothing.'),
})
  .optional()
  .describe('Room that there is for it: a coil that does not fit is refused, and others that fit are looked for in it.')

const ownFriction = plain('0.05').optional().describe('Share of its force lost to its own friction. Default: 0.')

const within = (of: string) =>
  plain('0.1').optional().describe(`How far ${of} of a spring as bought may be off either way, as a share of it.`)
const rateWithin = { rate: within('the rate') }
const boughtWithin = 'How far a spring as bought may be off. Left out: every one is as stated.'

const torsionSpring = object({
  kind: kind('torsion'),
  pin: pinId.describe('The pin it sits on.'),
  on: partId.describe('The part it turns counter-clockwise, towards open.'),
  against: idOf('part'),
  rate: quantity('torsionRate').optional().describe('Left out: it follows from the wire.'),
  preload: couple
    .optional()
    .describe('Torque at the drawn posture; it grows with the flexion. Left out: it follows from rate and wire.woundUp.'),
  within: object({ ...rateWithin, preload: within('the preload') })
    .optional()
    .describe(boughtWithin),
  ownFriction,
  wire: torsionWire.optional(),
  room: torsionRoom,
})

const straightSpring = {
  from: partPoint,
  to: partPoint,
  rate: quantity('springRate').optional().describe('Left out: it follows from the wire.'),
  freeLength: length,
  ownFriction,
  room: straightRoom,
}

const tensionSpring = object({
  kind: kind('tension'),
  ...straightSpring,
  initial: force.optional().describe('Force at which a close-wound spring begins to open. Default: 0.'),
  within: object({ ...rateWithin, initial: within('the initial force') })
    .optional()
    .describe(boughtWithin),
  wire: tensionWire.optional(),
})

const compressionSpring = object({
  kind: kind('compression'),
  ...straightSpring,
  within: object(rateWithin).optional().describe(boughtWithin),
  wire: compressionWire.optional(),
})

/** One entry of `springs`, told apart by `kind`. */
export const spring = z.discriminatedUnion('kind', [torsionSpring, tensionSpring, compressionSpring], {
  error: 'kind: one of torsion, tension, compression',
})
