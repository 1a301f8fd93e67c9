import * as z from 'zod'
import { limits } from '../../numbers/limits.ts'
import { angle, choice, couple, length, object, partId, plain, quantity } from '../schema-leaves.ts'
import { screwClasses, threads } from './thread-rows.ts'

const names = (rows: readonly { readonly name: string }[]) => rows.map(({ name }) => name) as [string, ...string[]]

/** One entry of `screws`. */
export const screw = object({
  thread: choice(names(threads), 'A row of the table of threads.'),
  class: choice(names(screwClasses), 'A row of the table of classes of screws.'),
  in: partId.describe('The part that has the thread.'),
  engagement: length.describe('Length of full thread in grip.'),
  tapClass: choice(
    ['6H', '6G', '5H', '2B', '3B'],
    'Tolerance class of the nut thread, such as 6H. Left out: not stated.',
  ).optional(),
  tapDepth: length.optional().describe('Full thread in the part, from its face. Left out: not stated.'),
  drill: length.optional().describe('Drill before tapping. Left out: not stated.'),
  drillDepth: length.optional().describe('How deep it is drilled, from the face. Left out: through.'),
  torque: couple.describe('With which each of them is turned in.'),
  coefficient: plain('0.2').optional().describe('Torque over preload and diameter. One of coefficient and friction is stated.'),
  friction: object({ thread: plain('0.15'), head: plain('0.15') })
    .optional()
    .describe('Coefficients of friction in the thread and under the head.'),
  scatter: plain('25 %').optional().describe('Share by which the preload may be off either way. Default: 25 %.'),
  screws: plain('2').optional().describe('Screws of this kind side by side across the finger. Default: 1.'),
  across: z
    .array(length, { error: 'a list of lengths, such as ["-3.2 mm", "3.2 mm"]' })
    .max(limits.screwsSideBySide, { error: `at most ${limits.screwsSideBySide} places` })
    .optional()
    .describe('Where the middle of each of them lies across the finger’s width, within the part. Left out: not stated.'),
  mass: quantity('mass').optional().describe('Of one of them. Left out: not counted.'),
  each: plain('0.2').optional().describe('What one of them costs. Left out: not counted, and said so.'),
  holdsMount: object({ x: length, y: length, pulls: angle.describe('The way in which the screw pulls the mount.') })
    .optional()
    .describe('Where in the mount’s frame it holds the mount down. Left out: it holds something else.'),
})
