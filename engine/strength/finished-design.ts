import type { Coating, Design, Material } from '../design/design.ts'
import { finishedMaterial } from './finished-material.ts'

/** Designs as they are when finished: a memory, not a state. */
const known = new WeakMap<Design, Design>()

/** A design whose parts and pins have the allowables that their coatings leave them; itself where no coating changes any. */
export function finishedDesign(design: Design): Design {
  const found = known.get(design) ?? finish(design)
  known.set(design, found)
  return found
}

function finish(design: Design): Design {
  const parts = design.parts.map(coated)
  const pins = design.pins.map(coated)
  const isAsBefore =
    parts.every((part, index) => part === design.parts[index]) && pins.every((pin, index) => pin === design.pins[index])
  return isAsBefore ? design : { ...design, parts, pins }
}

function coated<Thing extends { readonly material?: Material; readonly coating?: Coating }>(thing: Thing): Thing {
  if (!thing.material) return thing
  const material = finishedMaterial(thing.material, thing.coating)
  return material === thing.material ? thing : { ...thing, material }
}
