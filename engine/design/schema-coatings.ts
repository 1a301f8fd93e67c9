import * as z from 'zod'
import { length, note, object, plain } from './schema-leaves.ts'

const text = (needed: string) => z.string({ error: needed })

const range = object({
  from: length.describe('The thinnest that the coater delivers.'),
  to: length.describe('The thickest.'),
})
const about = object({
  nominal: length,
  within: plain('0.2').describe('How far a batch may be off either way, as a share of the nominal.'),
})

/** One entry of `coatings`. */
export const coating = object({
  thickness: z
    .union([range, about], { error: 'an object with from and to, or with nominal and within' })
    .describe('Range of the thickness from batch to batch, measured outside, on the coupon. Within a batch it is one thickness.'),
  inward: plain('0.5')
    .optional()
    .describe('Share of the thickness that grows into the metal: half for hard anodising, none for a film. Default: 0.'),
  bore: plain('0.8')
    .optional()
    .describe('Thickness in a bore as a share of that on the coupon, where less coating gets in. Default: 1.'),
  keepsFatigue: plain('0.4')
    .optional()
    .describe('Share of its fatigue strength that a part keeps under it. Default: what is known of an oxide on its material.'),
  cure: object({
    temperature: text('a temperature such as "150 °C"').describe('In °C or °F.'),
    time: text('a time such as "2 h"').describe('In h or min.'),
  })
    .optional()
    .describe('The heat that the part sees.'),
  source: note('the source of these values').describe('Where the values come from.'),
})
