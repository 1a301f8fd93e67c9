/** What a shop works to without being asked twice, from the tables. */

import table from '../../tables/shop-limits.json' with { type: 'json' }
import pins from '../../tables/stock-pins.json' with { type: 'json' }
import { parseQuantity, type QuantityKind } from '../numbers/quantity.ts'

const length_mm = (text: string): number => quantity(text, 'length')

function quantity(text: string, kind: QuantityKind): number {
  const read = parseQuantity(text, kind)
  if (read.fault) throw new Error(`table of shop limits: ${text}: ${read.fault.found}`)
  return read.value
}

/** Bounds with their sources; lengths in mm. */
export const shopLimits = {
  cutterSlenderness_ratio: table.cutter.slenderness,
  leftInCorner_mm: length_mm(table.cutter.left),
  wallLeast_mm: length_mm(table.wall.least),
  drillSlenderness_ratio: table.drill.slenderness,
  reamerStep_mm: length_mm(table.reamer.step),
  gripInSteel_ratio: table.thread.steel,
  gripInLight_ratio: table.thread.light,
  lightBelow_MPa: quantity(table.thread.lightBelow, 'pressure'),
  threadDepth_ratio: table.thread.deepest,
  tapRunOut_pitches: table.thread.runOut,
  tapDrillStep_mm: length_mm(table.thread.drillStep),
  edgeRoom_mm: length_mm(table.edge.room),
  edgeOfThickness_ratio: table.edge.ofThickness,
  runningRoughness_mm: length_mm(table.roughness.running),
  reamedRoughness_mm: length_mm(table.roughness.reamed),
  roughnessOfLimits_ratio: table.roughness.ofLimits,
  rackAway_mm: length_mm(table.rack.away),
  alike_mm: length_mm(table.alike.most),
} as const

/** Diameters of pins that are bought from a shelf, and the zones they come in. */
export const stockPins = pins.map(({ diameters, zones, source }) => ({ diameters_mm: diameters.map(length_mm), zones, source }))
