/** Test support: plain linkages by their lengths, drawn roughly; assembly puts them right. */
import type { Design } from '../design/design.ts'
import { type Sketch, sketch } from './sketch.ts'

const DEG = Math.PI / 180

export interface FourBarSizes {
  /** From the crank's pin at the origin along +x to the rocker's, mm. */
  readonly ground: number
  readonly crank: number
  readonly coupler: number
  readonly rocker: number
  /** Angles from +x, counter-clockwise; the crank's is exact, the others say which way it is put together. */
  readonly drawn_deg: readonly [crank: number, coupler: number, rocker: number]
}

/** Parts mount, crank, coupler, rocker (1, 2, 3); pins o, a, b, g; each link's frame at its first pin, x along it. */
export function fourBar({ ground, crank, coupler, rocker, drawn_deg }: FourBarSizes, more: Partial<Sketch> = {}): Design {
  const [first, second, third] = drawn_deg.map((angle) => angle * DEG)
  return sketch({
    parts: [
      { id: 'mount', role: 'mount', holes: { o: [0, 0], g: [ground, 0] }, drawn: [0, 0, 0] },
      { id: 'crank', holes: { o: [0, 0], a: [crank, 0] }, drawn: [0, 0, first] },
      { id: 'coupler', holes: { a: [0, 0], b: [coupler, 0] }, drawn: [crank * Math.cos(first), crank * Math.sin(first), second] },
      { id: 'rocker', holes: { g: [0, 0], b: [rocker, 0] }, drawn: [ground, 0, third] },
    ],
    pins: [
      { id: 'o', joins: ['mount.o', 'crank.o'] },
      { id: 'a', joins: ['crank.a', 'coupler.a'] },
      { id: 'b', joins: ['coupler.b', 'rocker.b'] },
      { id: 'g', joins: ['mount.g', 'rocker.g'] },
    ],
    drive: { part: 'crank', pin: 'o', open: -100, closed: 100 },
    ...more,
  })
}

export interface SliderCrankSizes {
  readonly crank: number
  readonly rod: number
  /** y of the line that the slider runs on, mm. */
  readonly offset: number
  /** The crank's is exact; the rod's direction from the crank pin says which way it is put together. */
  readonly drawn_deg: readonly [crank: number, rod: number]
}

const GUIDE_MM = 400

/** A block on two pins in slots of the mount. Parts mount, crank, rod, block; the block's frame at the rod's pin. */
export function blockCrank({ crank, rod, offset, drawn_deg }: SliderCrankSizes): Design {
  const [first, second] = drawn_deg.map((angle) => angle * DEG)
  const run = crank * Math.cos(first) + rod * Math.cos(second)
  const slot = [4 * GUIDE_MM, 0] as const
  return sketch({
    parts: [
      {
        id: 'mount',
        role: 'mount',
        holes: { o: [0, 0], near: [0, offset], far: [30, offset] },
        slots: { near: slot, far: slot },
        drawn: [0, 0, 0],
      },
      { id: 'crank', holes: { o: [0, 0], a: [crank, 0] }, drawn: [0, 0, first] },
      { id: 'rod', holes: { a: [0, 0], b: [rod, 0] }, drawn: [crank * Math.cos(first), crank * Math.sin(first), second] },
      { id: 'block', holes: { b: [0, 0], near: [-15, 0], far: [15, 0] }, drawn: [run, offset, 0] },
    ],
    pins: [
      { id: 'o', joins: ['mount.o', 'crank.o'] },
      { id: 'a', joins: ['crank.a', 'rod.a'] },
      { id: 'b', joins: ['rod.b', 'block.b'] },
      { id: 'near', joins: ['block.near', 'mount.near'] },
      { id: 'far', joins: ['block.far', 'mount.far'] },
    ],
    drive: { part: 'crank', pin: 'o', open: -100, closed: 100 },
  })
}

/** The rod's own pin in a slot of the mount. Parts mount, crank, rod. */
export function pinCrank({ crank, rod, offset, drawn_deg }: SliderCrankSizes): Design {
  const [first, second] = drawn_deg.map((angle) => angle * DEG)
  return sketch({
    parts: [
      { id: 'mount', role: 'mount', holes: { o: [0, 0], b: [0, offset] }, slots: { b: [4 * GUIDE_MM, 0] }, drawn: [0, 0, 0] },
      { id: 'crank', holes: { o: [0, 0], a: [crank, 0] }, drawn: [0, 0, first] },
      { id: 'rod', holes: { a: [0, 0], b: [rod, 0] }, drawn: [crank * Math.cos(first), crank * Math.sin(first), second] },
    ],
    pins: [
      { id: 'o', joins: ['mount.o', 'crank.o'] },
      { id: 'a', joins: ['crank.a', 'rod.a'] },
      { id: 'b', joins: ['rod.b', 'mount.b'] },
    ],
    drive: { part: 'crank', pin: 'o', open: -100, closed: 100 },
  })
}

export interface SlottedLeverSizes {
  readonly centres: number
  readonly crank: number
  /** From the lever's pivot to its far end, mm. */
  readonly lever: number
}

/** Lever on a pin at the origin, crank about (0, centres) whose pin runs in the lever's slot. Parts mount, crank, lever. */
export function slottedLever({ centres, crank, lever }: SlottedLeverSizes): Design {
  const turn = Math.PI / 2 - Math.atan2(crank, centres)
  return sketch({
    parts: [
      { id: 'mount', role: 'mount', holes: { c: [0, centres], p: [0, 0] }, drawn: [0, 0, 0] },
      { id: 'crank', holes: { c: [0, 0], s: [crank, 0] }, drawn: [0, centres, 0] },
      {
        id: 'lever',
        holes: { p: [0, 0], s: [centres, 0] },
        slots: { s: [4 * crank, 0] },
        pads: { end: [lever, 0] },
        drawn: [0, 0, turn],
      },
    ],
    pins: [
      { id: 'c', joins: ['mount.c', 'crank.c'] },
      { id: 's', joins: ['crank.s', 'lever.s'] },
      { id: 'p', joins: ['mount.p', 'lever.p'] },
    ],
    drive: { part: 'crank', pin: 'c', open: -100, closed: 100 },
  })
}
