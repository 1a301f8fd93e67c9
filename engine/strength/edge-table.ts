/**
 * A lower bound of how far material reaches from a point in each direction, so that most directions need no measuring.
 *
 * Per sector: the least of its two end rays and of the outline's corners inside, times the cosine of the sector. Between those the
 * boundary is straight, and a straight line comes nearer than its ends by no more than that.
 */
import type { Hole, Part, Point } from '../design/design.ts'
import { outlineReach } from './outline-reach.ts'

/** Sectors of 10°: bounds within two per cent on straight edges. */
const SECTORS = 36
const SECTOR_rad = (2 * Math.PI) / SECTORS
const WITHIN_ratio = Math.cos(SECTOR_rad)
const DIRECTIONS = Array.from({ length: SECTORS }, (_, sector) => ({
  x: Math.cos(sector * SECTOR_rad),
  y: Math.sin(sector * SECTOR_rad),
}))

/** Least reach of each sector, mm, counter-clockwise from x in the part's frame. */
export type EdgeTable = Float64Array

/** The table of one point inside of an outline. */
export function edgeTable(outline: readonly Point[], from: Point): EdgeTable {
  const table = new Float64Array(SECTORS).fill(Number.POSITIVE_INFINITY)
  const lower = (sector: number, reach: number): void => {
    if (reach < table[sector]) table[sector] = reach
  }
  for (let sector = 0; sector < SECTORS; sector++) {
    const reach = outlineReach(outline, from, DIRECTIONS[sector])
    lower(sector, reach)
    lower((sector + SECTORS - 1) % SECTORS, reach)
  }
  for (const { x_mm, y_mm } of outline) {
    const x = x_mm - from.x_mm
    const y = y_mm - from.y_mm
    lower(sectorOf(Math.atan2(y, x)), Math.sqrt(x * x + y * y))
  }
  for (let sector = 0; sector < SECTORS; sector++) table[sector] *= WITHIN_ratio
  return table
}

/** Tables by outline and hole: a memory, not a state. */
const known = new WeakMap<readonly Point[], WeakMap<Hole, EdgeTable>>()

/** The table of a part about one of its holes. */
export function edgeTableAt({ outline, holes }: Part, hole: number): EdgeTable {
  const ofOutline = known.get(outline) ?? new WeakMap<Hole, EdgeTable>()
  known.set(outline, ofOutline)
  const found = ofOutline.get(holes[hole]) ?? edgeTable(outline, holes[hole].at)
  ofOutline.set(holes[hole], found)
  return found
}

/** Lower bound of the reach in any direction, mm. */
export function leastOfAll(table: EdgeTable): number {
  let least = Number.POSITIVE_INFINITY
  for (let sector = 0; sector < SECTORS; sector++) if (table[sector] < least) least = table[sector]
  return least
}

/** Lower bound of the reach in a direction, mm. @param angle_rad in the part's frame */
export function leastReach(table: EdgeTable, angle_rad: number): number {
  return table[sectorOf(angle_rad)]
}

function sectorOf(angle_rad: number): number {
  const turns = angle_rad / (2 * Math.PI)
  return Math.min(SECTORS - 1, Math.floor((turns - Math.floor(turns)) * SECTORS))
}
