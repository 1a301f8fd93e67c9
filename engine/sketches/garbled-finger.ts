/** Test support: a sound design put out of order in ways that the document allows. */
import type { Design, LoadCase, Part, Port } from '../design/design.ts'
import type { Seeded } from './seeded.ts'
import { oneFriction } from './sketch.ts'

/** One to four random changes of a design; the same dice give the same design. */
export function garbled(design: Design, dice: Seeded): Design {
  const times = 1 + Math.floor(dice.between(0, 4))
  let changed = design
  for (let time = 0; time < times; time++) {
    const change = CHANGES[Math.min(CHANGES.length - 1, Math.floor(dice.between(0, CHANGES.length)))]
    changed = change(changed, dice)
  }
  return changed
}

type Change = (design: Design, dice: Seeded) => Design

const index = (list: readonly unknown[], dice: Seeded): number =>
  Math.min(list.length - 1, Math.floor(dice.between(0, list.length)))

function movedHoles(design: Design, dice: Seeded, by_mm: number): Design {
  const parts = design.parts.map((part): Part => {
    const holes = part.holes.map((hole) => {
      const at = { x_mm: hole.at.x_mm + dice.between(-by_mm, by_mm), y_mm: hole.at.y_mm + dice.between(-by_mm, by_mm) }
      return { ...hole, at }
    })
    return { ...part, holes }
  })
  return { ...design, parts }
}

function anyPort(design: Design, dice: Seeded): Port {
  const kind = dice.between(0, 3)
  if (kind < 1) return { kind: 'drive' }
  const part = 1 + index(design.parts.slice(1), dice)
  if (kind < 2) return { kind: 'couple', part, against: dice.between(0, 1) < 0.5 ? 0 : (part % (design.parts.length - 1)) + 1 }
  const padded = design.parts.findIndex((candidate) => candidate.pads.length > 0)
  return { kind: 'force', part: padded, pad: 0, direction_rad: dice.between(-3, 3), frame: 0 }
}

function turnedLoads(design: Design, dice: Seeded): Design {
  const loadCases = design.loadCases.map((loadCase): LoadCase => {
    const size = 10 ** dice.between(-6, 6)
    const forces = loadCase.forces.map((force) => ({ ...force, direction_rad: dice.between(-4, 4), force_N: size }))
    const couples = [{ part: 1 + index(design.parts.slice(1), dice), against: 0, couple_Nmm: dice.between(-1, 1) * size }]
    const acts = dice.between(0, 1) < 0.5 ? 'travel' : 'closed'
    const keeper = dice.between(0, 1) < 0.5 ? { keeper: { port: anyPort(design, dice), allowed: dice.between(0, 100) } } : {}
    return { ...loadCase, forces, couples: dice.between(0, 1) < 0.5 ? couples : [], acts, ...keeper }
  })
  return { ...design, loadCases }
}

function rangeOf(design: Design, dice: Seeded): Design {
  const travel = { open: dice.between(-2, 0.5), closed: dice.between(0.6, 4) }
  return { ...design, drive: { ...design.drive, travel } }
}

function pulled(design: Design, dice: Seeded): Design {
  const part = 1 + index(design.parts.slice(1), dice)
  const at = { x_mm: dice.between(-10, 30), y_mm: dice.between(-10, 10) }
  const towards = { part: 0, at: { x_mm: dice.between(-80, 80), y_mm: dice.between(-80, 80) } }
  const travel = { open: dice.between(-20, 0), closed: dice.between(1, 40) }
  if (dice.between(0, 1) < 0.5) return { ...design, drive: { kind: 'pull', on: { part, at }, towards, travel } }
  const turns = dice.between(0, 1) < 0.5 ? 'clockwise' : 'counter-clockwise'
  return { ...design, drive: { kind: 'wrap', roller: { part, at }, pitchRadius_mm: dice.between(1, 12), turns, towards, travel } }
}

const rubbed = (design: Design, friction: number): Design => ({
  ...design,
  pins: design.pins.map((pin) => ({ ...pin, friction: oneFriction(friction) })),
})

const CHANGES: readonly Change[] = [
  (design, dice) => movedHoles(design, dice, 5),
  (design, dice) => movedHoles(design, dice, 0.5),
  (design, dice) => movedHoles(design, dice, 30),
  turnedLoads,
  rangeOf,
  pulled,
  (design) => rubbed(design, 0),
  (design, dice) => rubbed(design, dice.between(0, 1) < 0.15 ? dice.between(0.6, 2) : dice.between(0.15, 0.6)),
  (design) => ({ ...design, springs: [] }),
  (design, dice) => ({
    ...design,
    springs: design.springs.map((spring) =>
      spring.kind === 'torsion'
        ? { ...spring, preload_Nmm: dice.between(-500, 500), rate_Nmm_rad: dice.between(0, 1e4) }
        : spring,
    ),
  }),
  (design) => ({ ...design, toggles: [] }),
  (design) => ({ ...design, toggles: design.toggles.map((toggle) => ({ ...toggle, folded: !toggle.folded })) }),
  (design) => ({ ...design, stops: [] }),
  (design, dice) => ({ ...design, stops: design.stops.map((stop) => ({ ...stop, gap_mm: dice.between(-3, 3) })) }),
  (design, dice) => ({
    ...design,
    stops: [...design.stops, ...design.stops.map((stop) => ({ ...stop, id: 'more', gap_mm: dice.between(-0.1, 0.1) }))],
  }),
  (design) => ({ ...design, loadCases: design.loadCases.map(({ keeper: _, ...loadCase }) => loadCase) }),
  (design) => ({ ...design, loadCases: [] }),
  (design, dice) => ({ ...design, release: { port: anyPort(design, dice) } }),
  (design, dice) => ({ ...design, weight: { from_rad: dice.between(-10, 0), to_rad: dice.between(0, 10) } }),
  (design) => ({ ...design, parts: design.parts.map(({ stiffness_N_mm: _, ...part }) => part) }),
  (design, dice) => ({ ...design, parts: design.parts.map((part) => ({ ...part, stiffness_N_mm: 10 ** dice.between(0, 6) })) }),
  (design, dice) => ({
    ...design,
    parts: design.parts.map((part) => ({
      ...part,
      holes: part.holes.map((hole) => ({ ...hole, diameter_mm: hole.diameter_mm + dice.between(-0.02, 0.3) })),
    })),
  }),
  (design, dice) => ({ ...design, pins: design.pins.map((pin) => ({ ...pin, drag_Nmm: dice.between(0, 1000) })) }),
]
