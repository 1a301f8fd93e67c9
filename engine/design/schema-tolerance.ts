import * as z from 'zod'
import { limits } from '../numbers/limits.ts'
import { choice, length, name, note, object, plain } from './schema-leaves.ts'
import { meant } from './schema-meaning.ts'

/** A quantity of any kind. */
const size = meant(z.string({ error: 'a quantity with its unit, in quotation marks' }), { is: 'size' })

const sizeLaws = ['uniform', 'normal', 'truncated'] as const

/** How sizes are spread within their limits, beside a tolerance or for all of them. */
export const sizeLaw = {
  law: choice(
    sizeLaws,
    'uniform: every size within the limits as likely. normal: at a capability. truncated: normal, what is outside of the limits sorted out.',
  ).optional(),
  capability: plain('1.33')
    .optional()
    .describe('Of a normal law: three standard deviations go so often into the way from the middle to a limit. Default: 1.'),
}

const ownLaw = {
  ...sizeLaw,
  measured: z
    .array(size, { error: 'a list of measured sizes' })
    .min(2, { error: 'at least two measured sizes' })
    .max(limits.measuredSizes, { error: `at most ${limits.measuredSizes} measured sizes` })
    .optional()
    .describe('Sizes of parts that were made, in place of a law: every one as likely as the next.'),
}

const zoneNeeded =
  'an ISO 286 zone such as "H7", a class of fit such as "RC4", or an object with zone, plus and minus, or from and to'
const zone = z
  .string({ error: zoneNeeded })
  .describe('A zone of ISO 286 such as H7 (hole) or h6 (shaft), or a class of fit of ANSI B4.1 such as RC4.')

/** On a length: a zone, deviations, or limits. On other kinds: deviations or limits. */
export const tolerance = z
  .union(
    [
      zone,
      object({ zone, ...ownLaw }).describe('A zone with the way in which sizes are spread in it.'),
      object({
        plus: size.describe('Upper deviation from the value, typed with its unit.'),
        minus: size.describe('Lower deviation, typed without sign, with its unit.'),
        ...ownLaw,
      }).describe('The value may be larger by plus and smaller by minus.'),
      object({ from: size.describe('Least size.'), to: size.describe('Largest size.'), ...ownLaw }).describe(
        'Least and largest size.',
      ),
    ],
    { error: zoneNeeded },
  )
  .describe('Tolerance as the drawing gives it, of the finished and coated size.')

const law = (of: string) => choice(['uniform', 'normal'], `How ${of} are spread within their range. Default: uniform.`).optional()

const toleranceWithPrices = object({
  size: meant(name('the size'), { is: 'toleranced' }).describe(
    'A size with a tolerance, such as topLinkLength, pins.mcp.diameter or parts.middle.holes.dip.position.',
  ),
  drawn: plain('11').describe('What a set costs more or less by this size with the tolerance that is drawn.'),
  offers: z
    .array(
      object({
        tolerance: name('the tolerance').describe(
          'Both sides, such as "±0.02 mm" or "+0.02 mm/-0.01 mm"; of a zone its width, such as "0.03 mm".',
        ),
        price: plain('8').describe('The same with this tolerance.'),
      }),
      { error: 'a list of tolerances, each with its price' },
    )
    .min(1, { error: 'at least one other tolerance with its price' })
    .max(limits.offersOfSize, { error: `at most ${limits.offersOfSize} tolerances` })
    .describe('Other tolerances that the shop holds, with their prices.'),
  source: note('the source').describe('Who said so, and when.'),
}).describe('A size and what other tolerances of it cost.')

/** `variation`: what holds wherever nothing else is stated. */
export const variation = object({
  sizes: object(sizeLaw)
    .optional()
    .describe(
      'Sizes within their limits, where their tolerance says nothing else. Default: uniform, because nobody has measured.',
    ),
  positions: law('places within their round zones'),
  coatings: law('thicknesses of batches'),
  friction: law('coefficients of friction'),
  springs: law('springs'),
  wearers: object({
    effortMost: object({
      from: size.describe('What the weakest wearer gives.'),
      to: size.describe('What the strongest gives.'),
    }).describe('A force or couple, as of the drive.'),
  })
    .optional()
    .describe('People are not sets: the share of wearers is told apart from the yield.'),
  prices: z
    .array(toleranceWithPrices, { error: 'a list of tolerances with prices' })
    .max(limits.pricedSizes, { error: `at most ${limits.pricedSizes} sizes with prices` })
    .optional()
    .describe('What tolerances cost: the cheapest of them with which enough sets meet everything is looked for.'),
}).describe('How what has a tolerance or a range is spread from set to set.')

/** `generalTolerance`. */
export const generalTolerance = z
  .enum(['ISO 2768-f', 'ISO 2768-m', 'ISO 2768-c', 'ISO 2768-v'], {
    error: 'ISO 2768-f, ISO 2768-m, ISO 2768-c or ISO 2768-v (its second letter belongs to part 2, which was withdrawn in 2021)',
  })
  .describe('Class of ISO 2768-1 for lengths that have no tolerance of their own. Left out: they are held at their nominal.')

/** Tolerance of an edge, or of the round end of a stop. */
export const profile = length.describe(
  'Width of the zone about the edge or round end in which the true one lies, half of it on either side.',
)
