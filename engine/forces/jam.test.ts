import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { nodeAt } from '../motion/trace.ts'
import { type TravelPath, travelPath } from '../motion/travel-path.ts'
import { DEG } from '../sketches/finger.ts'
import { type Scene, scene } from '../sketches/force-scene.ts'
import { returnSpring, shelfFinger } from '../sketches/shelf-finger.ts'
import { findJam, type JamKind, reserveAt } from './jam.ts'

function jamOf(here: Scene, path: TravelPath, kind: JamKind) {
  return findJam(
    here.bench,
    path,
    kind,
    path.nodes.map((node) => ({ node })),
  )
}

function ready(design: Design): { here: Scene; path: TravelPath } {
  const here = scene(design)
  return { here, path: travelPath(here.paths, here.drawn)! }
}

describe('the jam on the way', () => {
  const { here, path } = ready({ ...shelfFinger({ friction: 0.12 }), springs: [returnSpring(300)] })

  it('is where the reserve goes through nothing, smoothly on both sides', () => {
    // SOURCE property: the drag at the pins has no pole at the jam; left and right slopes agree there
    for (const kind of ['fromRest', 'moving'] as const) {
      const jam = jamOf(here, path, kind)
      if (jam.kind !== 'at') throw new Error(jam.kind)
      const at = jam.node.arc_mm
      const reserve = (arc_mm: number) => reserveAt(here.bench, nodeAt(here.paths, path.beyond, arc_mm)!, kind)!
      const step = 1e-3
      expect(Math.abs(reserve(at))).toBeLessThan(1e-6)
      const [before, after] = [reserve(at - step), reserve(at + step)]
      expect(before).toBeGreaterThan(0)
      expect(after).toBeLessThan(0)
      // From rest another corner may take over at the jam itself, which bends the curve but does not break it.
      expect(-after / before).toBeGreaterThan(kind === 'moving' ? 0.99 : 0.1)
      expect(-after / before).toBeLessThan(kind === 'moving' ? 1.01 : 10)
    }
  })

  it('lies beyond the stop of a finger that lets go, and moving lies further on than from rest', () => {
    const rest = jamOf(here, path, 'fromRest')
    const moving = jamOf(here, path, 'moving')
    if (rest.kind !== 'at' || moving.kind !== 'at') throw new Error('no jam')
    expect(rest.node.arc_mm).toBeGreaterThan(path.nodes[path.nodes.length - 1].arc_mm)
    expect(moving.node.arc_mm).toBeGreaterThan(rest.node.arc_mm)
  })

  it('is none where the toggle turns back before it comes that near to dead centre', () => {
    const plain = shelfFinger({ friction: 0.02 })
    const longer = plain.parts.map((part, index) => {
      const [near, far] = part.holes
      return index === 5 ? { ...part, holes: [near, { ...far, at: { ...far.at, x_mm: far.at.x_mm + 0.113 } }] } : part
    })
    const { here: odd, path: way } = ready({ ...plain, parts: longer, springs: [returnSpring(300)] })
    const jam = jamOf(odd, way, 'fromRest')
    // SOURCE other-method (followed node by node): the margin falls to about 4.07° and grows again; a reserve of nothing far behind is no such jam
    if (jam.kind !== 'turnsBack') throw new Error(jam.kind)
    expect(toggleMargin(way.toggles[0], jam.node.posture) / DEG).toBeGreaterThan(3.5)
    expect(toggleMargin(way.toggles[0], jam.node.posture) / DEG).toBeLessThan(4.5)
    expect(reserveAt(odd.bench, way.beyond[way.beyond.length - 1], 'fromRest')).toBeLessThan(0)
  })

  it('does not depend on the size of the spring', () => {
    // SOURCE property: the equations are homogeneous in the spring
    const margins = [1, 40, 5000].map((preload) => {
      const one = ready({ ...shelfFinger({ friction: 0.12 }), springs: [returnSpring(preload)] })
      const jam = jamOf(one.here, one.path, 'fromRest')
      return jam.kind === 'at' ? toggleMargin(one.path.toggles[0], jam.node.posture) / DEG : Number.NaN
    })
    expect(margins[1]).toBeCloseTo(margins[0], 9)
    expect(margins[2]).toBeCloseTo(margins[0], 9)
  })

  it('is everywhere for a finger that no spring opens, or one that closes', () => {
    for (const springs of [[], [returnSpring(-300)]]) {
      const one = ready({ ...shelfFinger({ friction: 0.12 }), springs })
      expect(jamOf(one.here, one.path, 'fromRest').kind).toBe('everywhere')
    }
  })

  it('comes first where drag at the pins has used the reserve up', () => {
    // SOURCE property: declared drag takes its own amount from the reserve
    const plain = { ...shelfFinger({ friction: 0.12 }), springs: [returnSpring(300)] }
    const stiff = ready({ ...plain, pins: plain.pins.map((pin) => ({ ...pin, drag_Nmm: 5 })) })
    const dragged = reserveAt(stiff.here.bench, stiff.path.nodes[5], 'moving')!
    const free = reserveAt(here.bench, path.nodes[5], 'moving')!
    expect(dragged).toBeCloseTo(free - 5, 8)
    const worn = ready({ ...plain, pins: plain.pins.map((pin) => ({ ...pin, drag_Nmm: 500 })) })
    expect(jamOf(worn.here, worn.path, 'moving').kind).toBe('everywhere')
  })
})
