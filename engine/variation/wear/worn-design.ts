import type { Design, Hole } from '../../design/design.ts'
import type { Mechanism } from '../../motion/mechanism.ts'
import { type WornBore, wornBore } from '../../strength/worn-bore.ts'
import { barest, type WearState } from './wear-state.ts'

/**
 * The design as it is after wear: worn holes moved and grown, stops with what was removed as their gap, pins on the surfaces they run on
 * now. An ordinary design that everything else works on.
 *
 * @param mechanism of the design as it left the bench
 * @param depths_mm of each stop
 */
export function wornDesign(mechanism: Mechanism, state: WearState, depths_mm: readonly number[]): Design {
  const { design, joints } = mechanism
  const worn = new Map<string, WornBore>()
  joints.forEach(({ pin, b }, joint) => {
    const hole = design.pins[pin].joins.find(({ part }) => part === b)?.hole
    worn.set(`${b}.${hole}`, wornBore(state.bores[joint].depths_mm))
  })
  const parts = design.parts.map((part, index) => ({
    ...part,
    holes: part.holes.map((hole, at) => wornHole(hole, worn.get(`${index}.${at}`))),
  }))
  const pins = design.pins.map((pin, index) => {
    const pairs = state.bores.filter((_, joint) => joints[joint].pin === index).map(({ pair }) => pair)
    return { ...pin, friction: barest(design, index, pairs) }
  })
  const stops = design.stops.map((stop, index) => ({
    ...stop,
    gap_mm: stop.gap_mm + depths_mm[index],
    friction: state.stops[index].pair,
  }))
  return { ...design, parts, pins, stops }
}

function wornHole(hole: Hole, worn: WornBore | undefined): Hole {
  if (!worn) return hole
  const { shift, growth_mm } = worn
  const at = { x_mm: hole.at.x_mm + shift.x_mm, y_mm: hole.at.y_mm + shift.y_mm }
  return { ...hole, at, diameter_mm: hole.diameter_mm + growth_mm }
}
