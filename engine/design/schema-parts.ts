import * as z from 'zod'
import { limits } from '../numbers/limits.ts'
import {
  angle,
  byId,
  choice,
  coatingName,
  frictionName,
  length,
  materialName,
  name,
  note,
  object,
  pair,
  partId,
  partThing,
  plain,
  quantity,
  wearRateName,
} from './schema-leaves.ts'
import { meant } from './schema-meaning.ts'
import { slices } from './schema-slices.ts'
import { masked, racks, roughness, surface, surfacesOfPart } from './schema-surfaces.ts'
import { profile, tolerance } from './schema-tolerance.ts'

const ofAnyKind = { is: 'size' } as const
const value = meant(
  z.union([z.string(), z.number()], { error: 'a quantity such as "44 mm", an expression or a plain number' }),
  ofAnyKind,
)

/** One entry of `dimensions`. */
export const dimension = z
  .union(
    [
      meant(z.string(), ofAnyKind).describe('A quantity with its unit, or an expression over other dimensions.'),
      meant(z.number(), ofAnyKind).describe('A plain number.'),
      object({
        value: value.describe('A quantity with its unit, or an expression over other dimensions.'),
        tolerance: tolerance.optional(),
      }),
    ],
    { error: 'a quantity such as "44 mm", or an object with value and tolerance' },
  )
  .describe('A named size that other places may use in expressions.')

/** One entry of `materials`. */
export const material = object({
  density: quantity('density'),
  modulus: quantity('pressure').describe('Modulus of elasticity, such as 71 GPa.'),
  poisson: plain('0.33').optional().describe('Lateral over axial strain; contact stress needs it.'),
  yield: quantity('pressure').optional().describe('Yield strength in tension, least value.'),
  ultimate: quantity('pressure').optional().describe('Ultimate strength in tension, least value.'),
  shear: quantity('pressure').optional().describe('Ultimate strength in shear.'),
  bearingYield: quantity('pressure').optional().describe('Yield strength of a lug under its pin, edge at two diameters.'),
  bearingUltimate: quantity('pressure').optional().describe('Ultimate strength of a lug under its pin, edge at two diameters.'),
  fatigue: quantity('pressure')
    .optional()
    .describe('Amplitude without a mean stress that half of polished bent specimens bear for so many cycles.'),
  fatigueCycles: plain('5e8').optional().describe('The number of cycles that goes with it.'),
  notchLength: length.optional().describe('Neuber’s length of the material. Default: all of a notch is felt.'),
  source: note('the source of these values').describe('Where the values come from.'),
})

const spreadOfFriction = object({
  least: plain('0.08').describe('Hold is judged at this.'),
  likely: plain('0.12'),
  most: plain('0.18').describe('Letting go is judged at this.'),
})

const wear = object({
  rate: wearRateName.describe('A row of the table of rates of wear, or of wearRates of this document.'),
  film: length.optional().describe('Depth at which it is worn through. Left out: it goes on for good.'),
  under: frictionName.optional().describe('The pair that takes over once it is worn through.'),
})

/** One entry of `wearRates`. */
export const wearRate = object({
  least: quantity('wearRate'),
  likely: quantity('wearRate').describe('Volume lost for each unit of force and of way, such as 1e-6 mm^3/N/m.'),
  most: quantity('wearRate').describe('Life is judged at this.'),
  source: note('the source of these values').describe('Where the values come from.'),
})

/** One entry of `friction`. */
export const frictionPair = object({
  moving: spreadOfFriction.describe('Coefficients of friction while the surfaces slide.'),
  rest: spreadOfFriction.describe('Coefficients of friction from rest; none below that of moving.'),
  wear: wear.optional().describe('How fast it wears, and what comes after it. Left out: nothing is said of its wear.'),
  source: note('the source of these values').describe('Where the values come from.'),
})

const hole = object({
  x: length,
  y: length,
  diameter: length,
  tolerance: tolerance.optional(),
  position: length.optional().describe('Diameter of the round zone in which the true centre lies.'),
  positionBonus: z
    .boolean({ error: 'true or false' })
    .optional()
    .describe('The zone grows by what the hole is larger than its least size (maximum material). Default: false.'),
  datum: z
    .boolean({ error: 'true or false' })
    .optional()
    .describe('The places of the other holes of the part are measured from this one. Default: false.'),
  slot: object({
    length: length.describe('How far the pin may run, from end to end of its centre line.'),
    along: angle.describe('Direction of the slot in the part’s own frame, counter-clockwise from x.'),
  })
    .optional()
    .describe('Makes the hole an obround whose middle is x, y.'),
  ...surface,
})

const straightEdge = object({ from: pair, to: pair, profile: profile.optional(), roughness }).describe(
  'A straight edge; the solid lies to the right of from → to.',
)
const arcEdge = object({
  centre: pair,
  radius: length,
  from: angle,
  to: angle.describe('Counter-clockwise after from, by less than a turn.'),
  solid: choice(['inside', 'outside'], 'On which side of the arc the part is solid.'),
  profile: profile.optional(),
  roughness,
}).describe('A round edge, counter-clockwise from one angle to the other.')

const place = object({ x: length, y: length })

/** One entry of `parts`. */
export const part = object({
  name: name('the name of the part').optional().describe('In words. Default: the id.'),
  role: choice(
    ['mount', 'proximal', 'middle', 'distal', 'link', 'roller', 'other'],
    'Exactly one part is the mount; it stands still.',
  ),
  material: materialName.optional().describe('A row of the table of materials, or of materials of this document.'),
  coating: coatingName.optional().describe('A row of the table of coatings, or of coatings of this document.'),
  masked: masked.optional(),
  racks: racks.optional(),
  ...surfacesOfPart,
  thickness: length.optional(),
  mass: quantity('mass').optional().describe('Default: that of a plate with this outline, thickness and material.'),
  centreOfMass: place.optional().describe('In the part’s own frame. Default: the centre of the outline.'),
  outline: z
    .array(pair, { error: 'a list of pairs of lengths' })
    .optional()
    .describe(`Corners of a closed polygon, at most ${limits.outlinePoints}. Default: the drawing makes its own.`),
  across: slices(
    `Where the part lies across the finger’s width, from and to: one pair for a plate, two for a fork, at most ${limits.acrossOfPart}. Parts that lie side by side there must not run into each other.`,
  ).optional(),
  holes: byId(hole, { what: 'holes', description: 'Openings that pins sit in.' }).optional(),
  edges: byId(z.union([straightEdge, arcEdge], { error: 'from and to, or centre, radius, from, to and solid' }), {
    what: 'edges',
    description: 'Boundaries that a stop may touch.',
  }).optional(),
  pads: byId(pair, { what: 'pads', description: 'Points that touch the world.' }).optional(),
  stiffness: quantity('springRate').optional().describe('Of a two-pin link along its pins.'),
  drawn: object({ x: length, y: length, turn: angle })
    .optional()
    .describe(
      'Place of the part’s own frame in the mount frame, as drawn. Default for the mount: 0, 0, 0. A link between two parts that are drawn may leave it out.',
    ),
})

/** One entry of `pins`. */
export const pin = object({
  joins: z
    .array(partThing('hole'), { error: 'a list of holes, such as ["mount.mcp", "proximal.mcp"]' })
    .min(2, { error: 'at least two holes of different parts' })
    .max(limits.holesOfPin, { error: `at most ${limits.holesOfPin} holes` })
    .describe('Two or more holes of different parts.'),
  diameter: length,
  tolerance: tolerance.optional(),
  material: materialName.optional().describe('A row of the table of materials, or of materials of this document.'),
  coating: coatingName.optional().describe('All over: a row of the table of coatings, or of coatings of this document.'),
  fixedIn: partId
    .optional()
    .describe(
      'The part the pin does not turn in. Default when it joins two parts: the first; with three or more it must be given.',
    ),
  friction: frictionName.describe('A pair of this document’s friction.'),
  ...surface,
  shear: choice(['single', 'double'], 'In how many sections the pin is sheared. Default: double.').optional(),
  drag: quantity('couple').optional().describe('Torque that resists any turn of this pin, whatever the load. Default: 0.'),
})
