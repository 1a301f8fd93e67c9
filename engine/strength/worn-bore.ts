/**
 * A hole that its pin has worn, as the round hole that stands for it.
 *
 *        ___
 *      /  ↑  \  ← worn here, deepest where it was pressed most, by direction φ in the hole's part:
 *     |   ●   |
 *      \ ___ /       D(φ) = Σ h(φ') max(0, cos(φ − φ'))
 *
 * A pin that beds in by h takes h cos(φ − φ') off its half of the wall: the volume is h × diameter × width, the projected area. The
 * hole that stands for the worn one touches it on the side that was pressed most (along Σ h e) and on the side opposite: its
 * centre has moved by half of Σ h e, its diameter has grown by D there plus D opposite. Derived in docs/theory/wear.md.
 */
import type { Point } from '../design/design.ts'
import type { Vector } from '../numbers/vector.ts'

/** Directions that are told apart: 5°, well below what a force swings by on the way. */
export const BORE_SECTORS = 72
const SECTOR_rad = (2 * Math.PI) / BORE_SECTORS
const DIRECTIONS = Array.from({ length: BORE_SECTORS }, (_, sector) => ({
  x: Math.cos(sector * SECTOR_rad),
  y: Math.sin(sector * SECTOR_rad),
}))

/** Sector that a direction falls into. @param angle_rad counter-clockwise from x of the hole's part */
export function boreSector(angle_rad: number): number {
  const sector = Math.round(angle_rad / SECTOR_rad) % BORE_SECTORS
  return sector < 0 ? sector + BORE_SECTORS : sector
}

/** The round hole in the place of a worn one. */
export interface WornBore {
  /** Of its centre in the frame of the hole's part. */
  readonly shift: Point
  /** Of its diameter. */
  readonly growth_mm: number
  /** On the side that was pressed most. */
  readonly depth_mm: number
}

/** @param depths_mm one a sector: how far the pin has bedded in while it pressed that way */
export function wornBore(depths_mm: Float64Array): WornBore {
  let x = 0
  let y = 0
  let all = 0
  depths_mm.forEach((depth, sector) => {
    x += depth * DIRECTIONS[sector].x
    y += depth * DIRECTIONS[sector].y
    all += depth
  })
  const along = Math.sqrt(x * x + y * y)
  const side = along > EVEN_ratio * all ? { x: x / along, y: y / along } : deepestSide(depths_mm)
  const depth_mm = depthAt(depths_mm, side)
  const opposite_mm = depthAt(depths_mm, { x: -side.x, y: -side.y })
  return { shift: { x_mm: x / 2, y_mm: y / 2 }, growth_mm: depth_mm + opposite_mm, depth_mm }
}

/** Below this share of all that was lost the sum has no direction: the hole was pressed evenly from opposite sides. */
const EVEN_ratio = 1e-9

function depthAt(depths_mm: Float64Array, { x, y }: Vector): number {
  let depth = 0
  for (let sector = 0; sector < BORE_SECTORS; sector++) {
    depth += depths_mm[sector] * Math.max(0, DIRECTIONS[sector].x * x + DIRECTIONS[sector].y * y)
  }
  return depth
}

function deepestSide(depths_mm: Float64Array): Vector {
  return DIRECTIONS.reduce((most, side) => (depthAt(depths_mm, side) > depthAt(depths_mm, most) ? side : most))
}
