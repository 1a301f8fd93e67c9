/** Test support: mechanisms of every kind that the plan knows, with random sizes, each drawn closed. */
import type { Design } from '../design/design.ts'
import { type LaidOut, type LaidPin, laidOut } from './laid-out.ts'
import { type Seeded, seeded } from './seeded.ts'

/** What `randomMechanism` can make. */
export const KINDS = [
  'four-bar',
  'two four-bars in series',
  'Watt six-bar',
  'Stephenson six-bar',
  'Stephenson six-bar driven in its five-bar loop',
  'three parts on one pin',
  'slider-crank',
  'slider-crank with the slots in the block',
  'crank whose pin runs in a slot of the mount',
  'slotted lever',
  'slotted lever with a further four-bar',
  'pin in the slot of a moving part',
  'scotch yoke',
] as const

export type Kind = (typeof KINDS)[number]

/** The same kind and seed give the same design. */
export function randomMechanism(kind: Kind, seed: number): Design {
  return laidOut(randomLayout(kind, seed))
}

/** Where the pins of `randomMechanism` stand. */
export function randomLayout(kind: Kind, seed: number): LaidOut {
  const dice = seeded(seed)
  const pins = pinsOf(kind, dice)
  const names = [...new Set(['mount', ...pins.flatMap((pin) => pin.joins)])]
  const frame = (): [number, number, number] => [dice.between(-20, 80), dice.between(-20, 60), dice.between(-3, 3)]
  const frames = Object.fromEntries(names.map((name) => [name, name === 'mount' ? ([0, 0, 0] as const) : frame()]))
  return { frames, pins, drive: { part: 'crank', pin: 'o', open: -9, closed: 9 } }
}

function near(dice: Seeded, x: number, y: number): readonly [number, number] {
  return [x + dice.between(-6, 6), y + dice.between(-6, 6)]
}

function pinsOf(kind: Kind, dice: Seeded): LaidPin[] {
  const crank = fourBar(dice)
  const [, a, b] = crank
  switch (kind) {
    case 'four-bar':
      return crank
    case 'two four-bars in series':
      return [...crank, ...hung(dice, ['rocker', 'link2', 'rocker2', 'mount'], [110, 0])]
    case 'Watt six-bar':
      return [...crank, ...hung(dice, ['coupler', 'link2', 'rocker2', 'rocker'], [110, 20])]
    case 'Stephenson six-bar':
      return [...crank, ...hung(dice, ['coupler', 'link2', 'rocker2', 'mount'], [110, 20])]
    case 'Stephenson six-bar driven in its five-bar loop':
      return fiveBarDriven(dice)
    case 'three parts on one pin':
      return [
        ...crank.slice(0, 2),
        { ...b, joins: [dice.between(0, 1) < 0.5 ? 'rocker' : 'coupler', 'coupler', 'rocker', 'link2'].filter(firstOnly) },
        crank[3],
        { id: 'e', at: near(dice, 110, 55), joins: ['link2', 'rocker2'] },
        { id: 'h', at: near(dice, 115, 0), joins: ['mount', 'rocker2'] },
      ]
    default:
      return slottedPins(kind, dice, a)
  }
}

function firstOnly(name: string, index: number, all: readonly string[]): boolean {
  return all.indexOf(name) === index
}

function fourBar(dice: Seeded): LaidPin[] {
  return [
    { id: 'o', at: near(dice, 0, 0), joins: ['mount', 'crank'] },
    { id: 'a', at: near(dice, 5, 30), joins: ['crank', 'coupler'] },
    { id: 'b', at: near(dice, 55, 50), joins: ['coupler', 'rocker'] },
    { id: 'g', at: near(dice, 65, 0), joins: ['mount', 'rocker'] },
  ]
}

/** A further dyad, from one placed part to another. */
function hung(
  dice: Seeded,
  [from, link, rocker, to]: readonly [string, string, string, string],
  at: readonly [number, number],
): LaidPin[] {
  return [
    { id: 'd', at: near(dice, 70, 30), joins: [from, link] },
    { id: 'e', at: near(dice, 105, 45), joins: [link, rocker] },
    { id: 'h', at: near(dice, at[0], at[1]), joins: [to, rocker] },
  ]
}

/** No dyad hangs on the crank and the mount alone: the two floating parts have three pins each way round. */
function fiveBarDriven(dice: Seeded): LaidPin[] {
  return [
    { id: 'o', at: near(dice, 0, 0), joins: ['mount', 'crank'] },
    { id: 'a', at: near(dice, 0, 30), joins: ['crank', 'plate'] },
    { id: 'b', at: near(dice, 40, 55), joins: ['plate', 'link'] },
    { id: 'c', at: near(dice, 55, 30), joins: ['plate', 'link2'] },
    { id: 'd', at: near(dice, 90, 50), joins: ['link', 'rocker'] },
    { id: 'e', at: near(dice, 80, 20), joins: ['link2', 'rocker'] },
    { id: 'g', at: near(dice, 95, 0), joins: ['mount', 'rocker'] },
  ]
}

function slottedPins(kind: Kind, dice: Seeded, a: LaidPin): LaidPin[] {
  const main: LaidPin = { id: 'o', at: near(dice, 0, 0), joins: ['mount', 'crank'] }
  const tilt = dice.between(-0.4, 0.4)
  switch (kind) {
    case 'slider-crank':
    case 'slider-crank with the slots in the block':
      return [main, a, ...slidingBlock(kind === 'slider-crank', dice, tilt)]
    case 'crank whose pin runs in a slot of the mount':
      return [main, a, { id: 's', at: near(dice, 70, 5), joins: ['coupler', 'mount'], slot: { in: 'mount', along_rad: tilt } }]
    case 'slotted lever':
    case 'slotted lever with a further four-bar': {
      const lever = slottedLever(dice)
      const further: LaidPin[] = hung(dice, ['lever', 'link2', 'rocker2', 'mount'], [110, 0])
      return kind === 'slotted lever' ? [main, ...lever] : [main, ...lever, ...further]
    }
    case 'pin in the slot of a moving part':
      return [
        ...fourBar(dice),
        { id: 'p', at: near(dice, 95, 0), joins: ['mount', 'follower'] },
        { id: 's', at: near(dice, 75, 35), joins: ['follower', 'rocker'], slot: { in: 'rocker', along_rad: 0.3 + tilt } },
      ]
    default:
      return [
        main,
        { id: 'y', at: near(dice, 20, 22), joins: ['crank', 'yoke'], slot: { in: 'yoke', along_rad: Math.PI / 2 + tilt } },
        { id: 'n', at: [-60, 4], joins: ['mount', 'yoke'], slot: { in: 'yoke', along_rad: 0 } },
        { id: 'f', at: [-100, 4], joins: ['mount', 'yoke'], slot: { in: 'yoke', along_rad: 0 } },
      ]
  }
}

/** A rod and a block; the slots are parallel and not always on one line. */
function slidingBlock(slotsInMount: boolean, dice: Seeded, along_rad: number): LaidPin[] {
  const offset = dice.between(-5, 5)
  const guide = (id: string, run: number, off: number): LaidPin => ({
    id,
    at: [95 + run * Math.cos(along_rad) - off * Math.sin(along_rad), -3 + run * Math.sin(along_rad) + off * Math.cos(along_rad)],
    joins: slotsInMount ? ['block', 'mount'] : ['mount', 'block'],
    slot: { in: slotsInMount ? 'mount' : 'block', along_rad, off_mm: dice.between(-8, 8) },
  })
  return [{ id: 'b', at: near(dice, 85, 5), joins: ['coupler', 'block'] }, guide('n', -12, 0), guide('f', 14, offset)]
}

function slottedLever(dice: Seeded): LaidPin[] {
  const pin = near(dice, 5, 25)
  const pivot = near(dice, 0, -45)
  const along_rad = Math.atan2(pin[1] - pivot[1], pin[0] - pivot[0]) + dice.between(-0.3, 0.3)
  return [
    { id: 's', at: pin, joins: ['crank', 'lever'], slot: { in: 'lever', along_rad } },
    { id: 'p', at: pivot, joins: ['mount', 'lever'] },
  ]
}
