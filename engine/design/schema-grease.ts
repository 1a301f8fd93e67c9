import { listOf, name, object, pinId, springId, stopId } from './schema-leaves.ts'

/** One entry of `grease`. */
export const greasePoint = object({
  with: name('the grease'),
  amount: name('the amount').optional().describe('How much of it, such as a film or a dab of 2 mm.'),
  pins: listOf(pinId, 'pins').describe('Pins that are greased.'),
  stops: listOf(stopId, 'stops').describe('Stops that are greased.'),
  springs: listOf(springId, 'springs').describe('Springs that are greased.'),
}).describe('Where the bench greases, and with what.')
