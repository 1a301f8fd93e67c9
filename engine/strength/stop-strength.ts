/** A stop under its largest force: a line contact, rubbed as hard as its friction allows, whose shear may not make the softer body yield. */
import type { Design, Material, Part, Stop } from '../design/design.ts'
import { lineContact } from './line-contact.ts'
import type { Limit } from './margin.ts'
import { partWidth } from './part-width.ts'
import { foundAt, type Strength } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

/** Where shear is all there is, a ductile body yields at half of its yield strength in tension (Tresca). */
const TRESCA_ratio = 0.5

/** A stop with the largest force that it takes along its normal, over all load cases and states of rest. */
export interface PressedStop {
  readonly stop: Stop
  readonly force_N: number
}

/** Margin against a lasting dent. */
export function stopStrength({ mechanism, factors }: StrengthBench, { stop, force_N }: PressedStop): Strength {
  const { design } = mechanism
  const pin = pinOf(design, stop)
  const bodies = [pin?.material ?? design.parts[stop.round.part].material, design.parts[stop.against.part].material]
  const length_mm = lengthOf(design, stop, pin !== undefined)
  const missing = missingOf(design, stop, bodies)
  if (missing !== undefined) return { why: missing }
  if (length_mm === undefined) return { why: 'how much of their widths meets is not stated (across, or thickness)' }
  const curvature_1_mm = contactCurvature(design, stop)
  if (!(curvature_1_mm > 0)) return { why: 'the round fills its socket: the contact is no line' }
  const [round, against] = bodies.map((body) => ({ modulus_MPa: body?.modulus_MPa ?? 0, poisson: body?.poisson ?? 0 }))
  const friction_ratio = Math.max(stop.friction.rest.most, stop.friction.moving.most)
  const contact = lineContact({ force_N, length_mm, curvature_1_mm, bodies: [round, against], friction_ratio })
  const limits = bodies.map((body) => limitOf(body, contact.shear_MPa, factors.yield))
  const names = [pin ? undefined : design.parts[stop.round.part].id, design.parts[stop.against.part].id]
  const part = names[softerOf(bodies)]
  const steps = [
    { name: 'largest force of the stop', value: force_N, unit: 'N' },
    { name: 'length of the contact', value: length_mm, unit: 'mm' },
    { name: 'half-width of the contact', value: contact.halfWidth_mm, unit: 'mm' },
    { name: 'pressure in its middle', value: contact.pressure_MPa, unit: 'MPa' },
    { name: 'friction, the most', value: friction_ratio, unit: '1' },
    { name: 'largest shear', value: contact.shear_MPa, unit: 'MPa' },
  ] as const
  return foundAt({ limits, steps }, part === undefined ? {} : { part }, 'a material of the two')
}

function limitOf(material: Material | undefined, stress: number, factor: number): Limit {
  const { yield_MPa } = material ?? {}
  const allowable = yield_MPa === undefined ? undefined : TRESCA_ratio * yield_MPa
  return { says: 'is dented for good', stress, allowable, property: 'yield strength', factor, ...(material && { material }) }
}

/** The body that yields first. */
function softerOf([one, other]: readonly (Material | undefined)[]): 0 | 1 {
  return (one?.yield_MPa ?? 0) < (other?.yield_MPa ?? 0) ? 0 : 1
}

function missingOf({ parts }: Design, { round, against }: Stop, bodies: readonly (Material | undefined)[]): string | undefined {
  const names = [parts[round.part].id, parts[against.part].id]
  for (const [index, body] of bodies.entries()) {
    if (!body) return `parts.${names[index]} states no material`
    if (body.poisson === undefined) return `material ${body.name} states no Poisson’s ratio`
    if (body.yield_MPa === undefined) return `material ${body.name} states no yield strength`
  }
  return undefined
}

/** The pin that is the round, where one is: it sits there and has the round's size. */
function pinOf({ pins, parts }: Design, { round }: Stop): Design['pins'][number] | undefined {
  return pins.find(
    ({ joins, diameter_mm }) =>
      Math.abs(diameter_mm / 2 - round.radius_mm) < SAME_mm &&
      joins.some(({ part, hole }) => {
        const { x_mm, y_mm } = parts[part].holes[hole].at
        return part === round.part && Math.hypot(x_mm - round.at.x_mm, y_mm - round.at.y_mm) < SAME_mm
      }),
  )
}

/** Nearer than a shop can tell. */
const SAME_mm = 1e-3

/** Length of a stop's line of contact, mm; undefined where no widths are stated. */
export function contactLength(design: Design, stop: Stop): number | undefined {
  return lengthOf(design, stop, pinOf(design, stop) !== undefined)
}

/** Curvature of a stop's round against its edge, 1/mm; not above zero where the round fills its socket. */
export function contactCurvature({ parts }: Design, { round, against }: Stop): number {
  const edge = parts[against.part].edges[against.edge]
  return 1 / round.radius_mm + (edge.kind === 'arc' ? (edge.solid === 'inside' ? 1 : -1) / edge.radius_mm : 0)
}

/** A pin reaches over the whole of what it meets, unless the stop says where it lies; two parts meet where their slices overlap. mm. */
function lengthOf({ parts }: Design, { round, against, across }: Stop, isPin: boolean): number | undefined {
  const [owner, other] = [parts[round.part], parts[against.part]]
  const one = across ? { ...owner, across } : owner
  if (isPin && !across) return partWidth(other)
  if (!one.across || !other.across) {
    const widths = [partWidth(one), partWidth(other)]
    return widths.includes(undefined) ? undefined : Math.min(...widths.map((width) => width ?? 0))
  }
  const shared = overlap(one, other)
  return shared > 0 ? shared : undefined
}

function overlap(one: Part, other: Part): number {
  let sum = 0
  for (const a of one.across ?? [])
    for (const b of other.across ?? []) sum += Math.max(0, Math.min(a.to_mm, b.to_mm) - Math.max(a.from_mm, b.from_mm))
  return sum
}
