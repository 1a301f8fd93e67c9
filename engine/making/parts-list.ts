import type { Design, Part, Pin, Spring } from '../design/design.ts'
import type { Screw } from '../design/screws/screw.ts'
import { partBody } from './part-body.ts'
import { springMass_kg, springsSideBySide } from './spring-mass.ts'

/** One line of the parts list. */
export interface Item {
  /** From 1, in the order of the list; the balloon of the assembly sheet. */
  readonly number: number
  readonly kind: 'part' | 'pin' | 'spring' | 'screw' | 'bought'
  readonly id: string
  readonly title: string
  readonly perFinger_count: number
  readonly material?: string
  readonly coating?: string
  /** Of one of them; absent where it is not known, then `why` says what is missing. */
  readonly mass_kg?: number
  readonly why?: string
  /** Size in the trade's words, of pins: diameter and length, mm. */
  readonly size?: { readonly diameter_mm: number; readonly length_mm?: number }
}

export interface PartsList {
  readonly items: readonly Item[]
  readonly perSet_count: number
  /** Of one finger, of what is known. */
  readonly mass_kg: number
  /** Ids of the items whose mass is not in it. */
  readonly unweighed: readonly string[]
}

/** Everything that one finger is put together from: parts, pins, springs, screws, bought items. */
export function partsList(design: Design): PartsList {
  const all = [
    ...design.parts.map(partItem),
    ...design.pins.map((pin) => pinItem(pin, design.parts)),
    ...design.springs.map(springItem),
    ...(design.screws ?? []).map(screwItem),
    ...design.bought.map(({ id, title, quantity, mass_kg }): Unnumbered => {
      const mass = mass_kg === undefined ? { why: `bought.${id}.mass is not stated` } : { mass_kg }
      return { kind: 'bought', id, title, perFinger_count: quantity, ...mass }
    }),
  ]
  const items = all.map((item, index): Item => ({ number: index + 1, ...item }))
  return {
    items,
    perSet_count: design.making?.set_count ?? 1,
    mass_kg: items.reduce((sum, { mass_kg = 0, perFinger_count }) => sum + mass_kg * perFinger_count, 0),
    unweighed: items.filter(({ mass_kg }) => mass_kg === undefined).map(({ id }) => id),
  }
}

type Unnumbered = Omit<Item, 'number'>

function partItem(part: Part): Unnumbered {
  const { id, name, material, coating } = part
  return {
    kind: 'part',
    id,
    title: name,
    perFinger_count: 1,
    ...(material && { material: material.name }),
    ...(coating && { coating: coating.name }),
    ...massOfPart(part),
  }
}

function springItem(spring: Spring): Unnumbered {
  const { id, kind, wire } = spring
  const mass_kg = springMass_kg(spring)
  return {
    kind: 'spring',
    id,
    title: `${kind} spring ${id}`,
    perFinger_count: springsSideBySide(spring),
    ...(wire && { material: wire.material.name }),
    ...(mass_kg !== undefined ? { mass_kg } : { why: `springs.${id} states no wire` }),
  }
}

function screwItem({ id, thread, class: grade, screws_count, mass_kg }: Screw): Unnumbered {
  const title = `screw ${thread.name} ${grade.name}, ${id}`
  const mass = mass_kg === undefined ? { why: `screws.${id}.mass is not stated` } : { mass_kg }
  return { kind: 'screw', id, title, perFinger_count: screws_count, ...mass }
}

/** As stated, else from its body and its material. */
function massOfPart(part: Part): Pick<Item, 'mass_kg' | 'why'> {
  if (part.mass_kg !== undefined) return { mass_kg: part.mass_kg }
  const body = partBody(part)
  if (!body) return { why: `parts.${part.id} has no ${part.outline.length === 0 ? 'outline' : 'thickness'}` }
  if (!part.material) return { why: `parts.${part.id} states no material` }
  return { mass_kg: body.volume_mm3 * part.material.density_kg_mm3 }
}

function pinItem(pin: Pin, parts: readonly Part[]): Unnumbered {
  const { id, diameter_mm, material, coating } = pin
  const length_mm = pinLength_mm(pin, parts)
  const known = length_mm !== undefined && material !== undefined
  const volume_mm3 = (Math.PI / 4) * diameter_mm * diameter_mm * (length_mm ?? 0)
  const why = length_mm === undefined ? 'its parts do not say where they lie across the finger' : `pins.${id} states no material`
  return {
    kind: 'pin',
    id,
    title: `pin ${id}`,
    perFinger_count: 1,
    ...(material && { material: material.name }),
    ...(coating && { coating: coating.name }),
    size: { diameter_mm, ...(length_mm !== undefined && { length_mm }) },
    ...(known ? { mass_kg: volume_mm3 * material.density_kg_mm3 } : { why }),
  }
}

/** From the outermost face to the outermost face of the parts that a pin joins; undefined unless all of them say where they lie. */
export function pinLength_mm({ joins }: Pin, parts: readonly Part[]): number | undefined {
  const slices = joins.map(({ part }) => parts[part].across ?? [])
  if (slices.some((own) => own.length === 0)) return undefined
  const all = slices.flat()
  return Math.max(...all.map(({ to_mm }) => to_mm)) - Math.min(...all.map(({ from_mm }) => from_mm))
}
