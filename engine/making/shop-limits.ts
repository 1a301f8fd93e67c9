/** What a shop works to without being asked twice, from the tables. */

import table from '../../tables/shop-limits.json' with { type: 'json' }
import pins from '../../tables/stock-pins.json' with { type: 'json' }
import { parseQuantity } from '../numbers/quantity.ts'

function length_mm(text: string): number {
  const read = parseQuantity(text, 'length')
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
  alike_mm: length_mm(table.alike.most),
} as const

/** Diameters of pins that are bought from a shelf, and the zones they come in. */
export const stockPins = pins.map(({ diameters, zones, source }) => ({ diameters_mm: diameters.map(length_mm), zones, source }))
