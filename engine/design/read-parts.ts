import { limits } from '../numbers/limits.ts'
import type { Coating, Material, Pad, Part, Point } from './design.ts'
import type { Document } from './document.ts'
import { polygon } from './polygon.ts'
import { coatingNamed } from './read-coatings.ts'
import { readEdge, readHole } from './read-features.ts'
import { readMasked } from './read-masked.ts'
import { readPair, readXY } from './read-points.ts'
import { readRacks } from './read-racks.ts'
import { readSlices } from './read-slices.ts'
import { readSurfacesOfPart } from './read-surfaces.ts'
import type { Reading } from './reading.ts'
import { reportBrokenHoles } from './report-broken-holes.ts'
import { reportCrossedOutline } from './report-crossed-outline.ts'

type TypedPart = NonNullable<Document['parts']>[string]

const home = { at: { x_mm: 0, y_mm: 0 }, turn_rad: 0 }

/** Parts with the mount first, the others in the order of the document. */
export function readParts(rows: Rows): readonly Part[] {
  const { reading } = rows
  const parts = Object.entries(reading.document.parts ?? {}).map(([id, typed]) => readPart(id, typed, rows))
  const mounts = parts.filter((part) => part.role === 'mount')
  if (mounts.length !== 1 && !reading.wasTakenOut('parts')) reportMounts(mounts, reading)
  return [...mounts, ...parts.filter((part) => part.role !== 'mount')]
}

function reportMounts(mounts: readonly Part[], reading: Reading): void {
  const isMaybeTakenOut = Object.keys(reading.document.parts ?? {}).length === 0 || reading.hasBrokenIn('parts')
  if (mounts.length === 0 && isMaybeTakenOut) return
  reading.report({
    code: mounts.length === 0 ? 'missing' : 'too many',
    place: 'parts',
    found:
      mounts.length === 0
        ? 'no part of role mount'
        : `several parts of role mount: ${mounts.map((mount) => mount.id).join(', ')}`,
    needed: 'exactly one part of role mount',
  })
}

/** What the document and the tables have by name. */
export interface Rows {
  readonly reading: Reading
  readonly materials: ReadonlyMap<string, Material>
  readonly coatings: ReadonlyMap<string, Coating>
}

function readPart(id: string, typed: TypedPart, rows: Rows): Part {
  const { reading } = rows
  const place = `parts.${id}`
  const material = typed.material === undefined ? undefined : materialNamed(`${place}.material`, typed.material, rows)
  const drawn = readDrawn(place, typed, reading)
  reportDatums(place, typed, reading)
  const outline = readOutline(`${place}.outline`, typed.outline ?? [], reading)
  const holes = Object.entries(typed.holes ?? {}).map(([hole, given]) =>
    readHole(hole, given, { place: `${place}.holes.${hole}`, reading }),
  )
  reportBrokenHoles(place, { outline, holes }, reading)
  const edges = Object.entries(typed.edges ?? {}).map(([edge, given]) =>
    readEdge(edge, given, { place: `${place}.edges.${edge}`, reading }),
  )
  return {
    id,
    name: reading.line(`${place}.name`, typed.name ?? id),
    role: typed.role,
    ...(material && { material }),
    ...coatingOf(place, typed, rows),
    ...readMasked(`${place}.masked`, { part: id, typed: typed.masked, holes, edges }, reading),
    ...readRacks(`${place}.racks`, { typed: typed.racks, outline }, reading),
    ...readSurfacesOfPart(place, typed, reading),
    ...(typed.thickness !== undefined && { thickness_mm: reading.size(`${place}.thickness`, typed.thickness) }),
    ...(typed.mass !== undefined && { mass_kg: reading.atLeast(`${place}.mass`, typed.mass, { kind: 'mass', least: 0 }) }),
    ...(typed.centreOfMass && { centreOfMass: readXY(`${place}.centreOfMass`, typed.centreOfMass, reading) }),
    outline,
    ...(typed.across && { across: readSlices(`${place}.across`, typed.across, reading) }),
    holes,
    edges,
    pads: Object.entries(typed.pads ?? {}).map(
      ([pad, given]): Pad => ({ id: pad, at: readPair(`${place}.pads.${pad}`, given, reading) }),
    ),
    ...(typed.stiffness !== undefined && { stiffness_N_mm: reading.above0(`${place}.stiffness`, typed.stiffness, 'springRate') }),
    ...(drawn && { drawn }),
  }
}

function coatingOf(place: string, typed: TypedPart, rows: Rows): Pick<Part, 'coating'> {
  const { coating, masked = [], racks = [] } = typed
  if (coating === undefined && masked.length + racks.length > 0) {
    const found = masked.length > 0 ? `${masked.join(' and ')} masked, and no coating` : 'places for a rack, and no coating'
    const wayOut = 'Give the coating, or leave masked and racks out.'
    rows.reading.report({ code: 'missing', place: `${place}.coating`, found, needed: 'a coating', wayOut })
  }
  const named = coating === undefined ? undefined : coatingNamed(`${place}.coating`, coating, rows)
  return named ? { coating: named } : {}
}

function reportDatums(place: string, { holes = {} }: TypedPart, reading: Reading): void {
  const datums = Object.entries(holes).filter(([, hole]) => hole.datum === true)
  if (datums.length < 2) return
  const found = `the datums ${datums.map(([id]) => id).join(', ')}`
  reading.report({ code: 'too many', place: `${place}.holes`, found, needed: 'one hole that the others are measured from' })
}

/** The material of that name; undefined when it has been reported. */
export function materialNamed(
  place: string,
  name: string,
  { reading, materials }: Pick<Rows, 'reading' | 'materials'>,
): Material | undefined {
  const material = materials.get(name)
  if (!material && !reading.wasTakenOut(`materials.${name}`)) {
    reading.unknownName(place, { typed: name, what: 'a material of the table or of materials', known: [...materials.keys()] })
  }
  return material
}

const smallestArea_mm2 = limits.sizeLeast_mm ** 2

function readOutline(place: string, typed: readonly (readonly [string, string])[], reading: Reading): readonly Point[] {
  if (typed.length === 1 || typed.length === 2) {
    reading.report({ code: 'too few', place, found: `${typed.length} corners`, needed: 'at least 3, or none' })
  }
  const corners = typed.map((pair, index) => readPair(`${place}.${index}`, pair, reading))
  if (corners.length > 2 && polygon(corners).area_mm2 < smallestArea_mm2) {
    reading.report({
      code: 'too small',
      place,
      found: 'an outline that encloses nothing',
      needed: 'corners in order around the part',
    })
  } else if (reading.isAsTyped) reportCrossedOutline(place, corners, reading)
  return corners
}

/** The mount defines the frame and stands at 0, 0, 0. */
function readDrawn(place: string, { drawn, role }: TypedPart, reading: Reading): Part['drawn'] {
  if (!drawn) return role === 'mount' ? home : undefined
  const at = readXY(`${place}.drawn`, drawn, reading)
  const turn_rad = reading.quantity(`${place}.drawn.turn`, drawn.turn, 'angle')
  const isMoved = Math.abs(at.x_mm) > 0 || Math.abs(at.y_mm) > 0 || Math.abs(turn_rad) > 0
  if (role === 'mount' && isMoved) {
    const found = `the mount at ${drawn.x}, ${drawn.y}, turned ${drawn.turn}`
    reading.report({
      code: 'wrong value',
      place: `${place}.drawn`,
      found,
      needed: 'the mount at 0, 0, unturned',
      wayOut: 'Leave drawn out.',
    })
  }
  return { at, turn_rad }
}
