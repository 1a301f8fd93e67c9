/**
 * Test support: a design in inside units from a short sketch, so that mechanics can be tested without a document.
 * Used by tests only; nothing of it is exported from the engine.
 */
import type {
  Design,
  Drive,
  FrictionPair,
  LoadCase,
  Part,
  Pin,
  Point,
  Port,
  Role,
  Spring,
  Stop,
  Toggle,
} from '../design/design.ts'

export interface SketchPart {
  readonly id: string
  readonly role?: Role
  /** x, y of each hole by name, mm. */
  readonly holes: Readonly<Record<string, readonly [number, number]>>
  /** Slot of a hole: length mm, direction rad. */
  readonly slots?: Readonly<Record<string, readonly [number, number]>>
  readonly pads?: Readonly<Record<string, readonly [number, number]>>
  readonly edges?: Part['edges']
  /** x, y, turn of the frame as drawn; leave out for a link between two drawn parts. */
  readonly drawn?: readonly [number, number, number]
  readonly mass_kg?: number
  readonly centreOfMass?: Point
  readonly stiffness_N_mm?: number
}

export interface SketchPin {
  readonly id: string
  /** `part.hole` of two or more parts; the first is the one it is fixed in. */
  readonly joins: readonly string[]
  readonly radius_mm?: number
  readonly friction?: number
  readonly clearance_mm?: number
  readonly drag_Nmm?: number
}

export interface Sketch {
  readonly parts: readonly SketchPart[]
  readonly pins: readonly SketchPin[]
  readonly drive:
    | { readonly part: string; readonly against?: string; readonly pin: string; readonly open: number; readonly closed: number }
    | Drive
  readonly toggles?: readonly {
    readonly id: string
    readonly pins: readonly [string, string, string]
    readonly folded?: boolean
  }[]
  readonly stops?: readonly Stop[]
  readonly springs?: readonly Spring[]
  readonly loadCases?: readonly LoadCase[]
  readonly release?: { readonly port: Port }
  readonly weight?: { readonly from_rad: number; readonly to_rad: number }
}

/** One coefficient for least, likely and most, moving and at rest. */
export function oneFriction(value: number): FrictionPair {
  const band = { least: value, likely: value, most: value }
  return { name: `mu ${value}`, moving: band, rest: band, source: 'sketch' }
}

const SKETCH_PIN_RADIUS_MM = 1.5

/** Turns a sketch into a Design. Throws on a name that does not exist: a fault of the test. */
export function sketch(from: Sketch): Design {
  const parts = from.parts.map((part) => partOf(part, from.pins))
  const pins = from.pins.map((pin) => pinOf(pin, parts))
  const toggles = (from.toggles ?? []).map(({ id, pins: [a, b, c], folded = false }): Toggle => {
    return { id, a: indexOf(pins, a), b: indexOf(pins, b), c: indexOf(pins, c), folded }
  })
  const drive = driveOf(from.drive, { parts, pins })
  const frictionPairs = [...new Map(pins.map((pin) => [pin.friction.name, pin.friction])).values()]
  const { stops = [], springs = [], loadCases = [], release, weight } = from
  const design: Design = {
    name: 'sketch',
    title: 'Sketch',
    note: '',
    dimensions: [],
    frictionPairs,
    parts,
    pins,
    stops,
    springs,
    drive,
    loadCases,
    toggles,
    requirements: [],
    orders: [],
    bought: [],
    demands: [],
    benchTests: [],
    risks: [],
  }
  return { ...design, ...(release && { release }), ...(weight && { weight }) }
}

function pinOf({ id, joins: names, radius_mm, friction, drag_Nmm = 0 }: SketchPin, parts: readonly Part[]): Pin {
  const joins = names.map((name) => {
    const [id, hole] = name.split('.')
    const part = indexOf(parts, id)
    return { part, hole: indexOf(parts[part].holes, hole) }
  })
  const diameter_mm = 2 * (radius_mm ?? SKETCH_PIN_RADIUS_MM)
  const fixedIn = joins[0].part
  return { id, joins, diameter_mm, friction: oneFriction(friction ?? 0), fixedIn, shear: 'double', drag_Nmm }
}

function driveOf(
  drive: Sketch['drive'],
  { parts, pins }: { readonly parts: readonly Part[]; readonly pins: readonly Pin[] },
): Drive {
  if ('kind' in drive) return drive
  const against = indexOf(parts, drive.against ?? parts[0].id)
  const travel = { open: drive.open, closed: drive.closed }
  return { kind: 'turn', part: indexOf(parts, drive.part), against, pin: indexOf(pins, drive.pin), travel }
}

function partOf(part: SketchPart, pins: readonly SketchPin[]): Part {
  const { id, role, holes, slots, pads, edges, drawn, mass_kg, centreOfMass, stiffness_N_mm } = part
  const made: Part = {
    id,
    name: id,
    role: role ?? 'other',
    outline: [],
    holes: Object.entries(holes).map(([name, [x_mm, y_mm]]) => {
      const pin = pins.find((candidate) => candidate.joins.includes(`${id}.${name}`))
      const diameter_mm = 2 * (pin?.radius_mm ?? SKETCH_PIN_RADIUS_MM) + (pin?.clearance_mm ?? 0)
      const slot = slots?.[name] && { length_mm: slots[name][0], along_rad: slots[name][1] }
      return { id: name, at: { x_mm, y_mm }, diameter_mm, ...(slot && { slot }) }
    }),
    edges: edges ?? [],
    pads: Object.entries(pads ?? {}).map(([name, [x_mm, y_mm]]) => ({ id: name, at: { x_mm, y_mm } })),
  }
  return {
    ...made,
    ...(drawn && { drawn: { at: { x_mm: drawn[0], y_mm: drawn[1] }, turn_rad: drawn[2] } }),
    ...(mass_kg !== undefined && { mass_kg }),
    ...(centreOfMass && { centreOfMass }),
    ...(stiffness_N_mm !== undefined && { stiffness_N_mm }),
  }
}

function indexOf(list: readonly { readonly id: string }[], id: string): number {
  const index = list.findIndex((item) => item.id === id)
  if (index < 0) throw new Error(`sketch: nothing is called ${id}`)
  return index
}
