import { limits } from '../numbers/limits.ts'
import type { Design, LoadCase, Toggle } from './design.ts'
import type { Document } from './document.ts'
import { amountKind, readDirection, readMovingPad, readPort } from './read-drive.ts'
import { reportSamePart, type Workbench } from './read-joints.ts'
import { wholeTurn_rad } from './read-points.ts'
import { notFound } from './references.ts'
import { seatsOf, toggleArms } from './toggle-arms.ts'

type TypedLoadCase = NonNullable<Document['loadCases']>[string]
type TypedToggle = NonNullable<Document['toggles']>[string]

/** Load cases in the order of the document, each with at least one load on a part that moves. */
export function readLoadCases(bench: Workbench): readonly LoadCase[] {
  return Object.entries(bench.reading.document.loadCases ?? {}).map(([id, typed]) => readLoadCase(id, typed, bench))
}

function readLoadCase(id: string, typed: TypedLoadCase, bench: Workbench): LoadCase {
  const { reading, find } = bench
  const place = `loadCases.${id}`
  const { forces = [], couples = [], sideways = [] } = typed
  if (forces.length + couples.length + sideways.length === 0) {
    reading.report({
      code: 'missing',
      place,
      found: 'a load case without a load',
      needed: 'at least one of forces, couples, sideways',
    })
  }
  return {
    id,
    name: reading.line(`${place}.title`, typed.title ?? id),
    forces: forces.map((force, index) => ({
      ...readDirection(`${place}.forces.${index}`, force, bench),
      force_N: reading.above0(`${place}.forces.${index}.force`, force.force, 'force'),
    })),
    couples: couples.map((couple, index) => {
      const at = `${place}.couples.${index}`
      const part = find.part(`${at}.part`, couple.part)
      const against = find.part(`${at}.against`, couple.against)
      reportSamePart(at, { parts: [part, against], needed: 'a couple between two parts' }, bench)
      return { part, against, couple_Nmm: reading.quantity(`${at}.couple`, couple.couple, 'couple') }
    }),
    acts: typed.acts ?? 'closed',
    ...(typed.keeper && { keeper: readKeeper(`${place}.keeper`, typed.keeper, bench) }),
    sideways: sideways.map((push, index) => ({
      ...readMovingPad(`${place}.sideways.${index}.at`, push.at, bench),
      force_N: reading.quantity(`${place}.sideways.${index}.force`, push.force, 'force'),
    })),
  }
}

function readKeeper(
  place: string,
  typed: NonNullable<TypedLoadCase['keeper']>,
  bench: Workbench,
): NonNullable<LoadCase['keeper']> {
  const port = readPort(`${place}.port`, typed.port, bench)
  const kind = amountKind(typed.port, bench)
  const allowed = kind ? bench.reading.atLeast(`${place}.allowed`, typed.allowed, { kind, least: 0 }) : Number.NaN
  return { port, allowed }
}

/** Range of the directions of gravity; every part that moves must then have a mass. Undefined: weight is left out. */
export function readWeight(bench: Workbench): Design['weight'] {
  const { reading } = bench
  const typed = reading.document.weight
  if (!typed) return undefined
  const from_rad = reading.quantity('weight.from', typed.from, 'angle')
  const to_rad = reading.quantity('weight.to', typed.to, 'angle')
  if (to_rad < from_rad || to_rad - from_rad > wholeTurn_rad) {
    const found = `from ${typed.from} to ${typed.to}`
    reading.report({
      code: 'wrong order',
      place: 'weight',
      found,
      needed: 'to no smaller than from, by at most a turn (360 deg)',
    })
  }
  reportUnknownMasses(bench)
  return { from_rad, to_rad }
}

/** Judged by what is typed: a size at fault has been reported, and is no missing mass. */
function reportUnknownMasses({ reading, parts }: Workbench): void {
  const isMountKnown = parts.some((part) => part.role === 'mount')
  for (const { id, role } of parts) {
    const typed = reading.document.parts?.[id]
    if (role === 'mount' || !isMountKnown || !typed) continue
    const isPlate = typed.outline !== undefined && typed.thickness !== undefined && typed.material !== undefined
    const isWeightless = typed.mass !== undefined && parts.some((part) => part.id === id && part.mass_kg === 0)
    const isPlaced = typed.centreOfMass !== undefined || typed.outline !== undefined
    if (isWeightless || (isPlaced && (isPlate || typed.mass !== undefined))) continue
    reading.report({
      code: 'missing',
      place: `parts.${id}.${typed.mass === undefined ? 'mass' : 'centreOfMass'}`,
      found: 'nothing, but weight is asked for',
      needed: 'mass and centreOfMass, or outline, thickness and material',
      wayOut: 'Give them, a mass of 0 g, or leave weight out.',
    })
  }
}

/** Toggles in the order of the document, each a chain A-B-C that can be straightened. */
export function readToggles(bench: Workbench): readonly Toggle[] {
  return Object.entries(bench.reading.document.toggles ?? {}).map(([id, typed]) => readToggle(id, typed, bench))
}

function readToggle(id: string, typed: TypedToggle, bench: Workbench): Toggle {
  const place = `toggles.${id}`
  const [a, b, c] = typed.pins.map((pin, index) => bench.find.pin(`${place}.pins.${index}`, pin))
  const toggle = { id, a, b, c, folded: typed.folded ?? false }
  if (a === notFound || b === notFound || c === notFound) return toggle
  if (a === b || b === c || a === c) {
    const found = typed.pins.join(', ')
    bench.reading.report({ code: 'wrong value', place: `${place}.pins`, found, needed: 'three different pins' })
  } else reportNoToggle(place, toggle, bench)
  return toggle
}

/** Distance of two pins on a part that holds both. */
function distance_mm(part: number, [one, other]: readonly [number, number], { pins, parts }: Workbench): number {
  const [p, q] = [one, other].map((pin) => {
    const hole = pins[pin].joins.find((joined) => joined.part === part)
    return hole && parts[part].holes[hole.hole]?.at
  })
  return p && q ? Math.hypot(p.x_mm - q.x_mm, p.y_mm - q.y_mm) : Number.NaN
}

/** A and B on one part, B and C on another, A and C free to move apart, and the pins of each apart. */
function reportNoToggle(place: string, { a, b, c }: Toggle, bench: Workbench): void {
  const partsOf = (pin: number) => bench.pins[pin].joins.map((hole) => hole.part)
  const [ofA, ofB, ofC] = [a, b, c].map(partsOf)
  if ([...ofA, ...ofB, ...ofC].includes(notFound)) return
  const arm = toggleArms([a, b, c].map((pin) => seatsOf(bench.pins[pin], bench.parts)))
  if (!arm) {
    bench.reading.report({
      code: 'no toggle',
      place: `${place}.pins`,
      found: [a, b, c]
        .map(
          (pin) =>
            `${bench.pins[pin].id} in ${partsOf(pin)
              .map((part) => bench.parts[part].id)
              .join(' and ')}`,
        )
        .join('; '),
      needed:
        'pins A-B-C with A and B on one part, B and C on another, and A and C on two further parts or one of them in a slot',
    })
    return
  }
  const [ab, bc] = [distance_mm(arm[0], [a, b], bench), distance_mm(arm[1], [b, c], bench)]
  if (ab < limits.sizeLeast_mm || bc < limits.sizeLeast_mm) {
    const found = `A to B ${ab} mm, B to C ${bc} mm`
    bench.reading.report({ code: 'too small', place: `${place}.pins`, found, needed: `at least ${limits.sizeLeast_mm} mm each` })
  }
}
