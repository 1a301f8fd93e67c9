import { describe, expect, it } from 'vitest'
import type { Design, Edge } from '../design/design.ts'
import { assembled } from '../sketches/assembled.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { fingerByHand, halved, pastDeadCentre } from '../sketches/finger-by-hand.ts'
import { fourBar, pinCrank } from '../sketches/linkages.ts'
import { oneFriction } from '../sketches/sketch.ts'
import { makePathBench, type PathNode } from './path.ts'
import { toggleMargin } from './toggle-margin.ts'
import { nodeAt } from './trace.ts'
import { travelPath } from './travel-path.ts'

type Travel = readonly [open: number, closed: number]

function withTravel(design: Design, [open, closed]: Travel): Design {
  return { ...design, drive: { ...design.drive, travel: { open, closed } } }
}

/** The finger with a stop: a round of 2 mm about link 2's far pin against an edge of the middle phalanx. */
function stopped(edge: Edge, travel: Travel): Design {
  const design = withTravel(finger(), travel)
  const far = design.parts[5].holes[1].at
  const round = { part: 5, at: far, radius_mm: 2 }
  const stop = { id: 'rest', round, against: { part: 2, edge: 0 }, friction: oneFriction(0.1), gap_mm: 0 }
  return { ...design, parts: design.parts.map((part, index) => (index === 2 ? { ...part, edges: [edge] } : part)), stops: [stop] }
}

function travelOf(design: Design, roads: 'both' | 'newton' = 'both') {
  const { mechanism, posture } = assembled(design)
  return travelPath(makePathBench(mechanism, roads), posture)!
}

const mcpOf = (node: PathNode) => -node.posture[5]
const last = (nodes: readonly PathNode[]) => nodes[nodes.length - 1]

/** The far pin of link 2 in the middle phalanx's frame, by school geometry. */
function topBInMiddle(mcp: number) {
  const { topB, pip, middle } = fingerByHand(mcp)!
  const [dx, dy] = [topB[0] - pip[0], topB[1] - pip[1]]
  return { x: Math.cos(middle) * dx + Math.sin(middle) * dy, y: Math.cos(middle) * dy - Math.sin(middle) * dx }
}

const level: Edge = { id: 'seat', kind: 'straight', from: { x_mm: 30, y_mm: 1.5 }, to: { x_mm: 10, y_mm: 1.5 } }
const corner: Edge = { id: 'seat', kind: 'straight', from: { x_mm: 30, y_mm: 1.3 }, to: { x_mm: 20.9, y_mm: 1.3 } }
const centre = { x_mm: 20, y_mm: 6 }
const bowl: Edge = {
  id: 'seat',
  kind: 'arc',
  centre,
  radius_mm: 4.5,
  from_rad: Math.PI,
  to_rad: 2 * Math.PI,
  solid: 'inside',
}

describe('the travel of the finger', () => {
  for (const roads of ['both', 'newton'] as const) {
    describe(roads === 'both' ? 'by closed forms with Newton where they end' : 'by Newton alone', () => {
      it('ends where the stop touches, to 1e-9 rad', () => {
        // SOURCE other-method (school geometry pin by pin and bisection of the gap)
        const cases = [
          [level, (mcp: number) => topBInMiddle(mcp).y + 2 - 1.5],
          [corner, (mcp: number) => 2 - Math.hypot(topBInMiddle(mcp).x - 20.9, topBInMiddle(mcp).y - 1.3)],
          [bowl, (mcp: number) => 6.5 - Math.hypot(topBInMiddle(mcp).x - 20, topBInMiddle(mcp).y - 6)],
        ] as const
        for (const [edge, overlap] of cases) {
          const travel = travelOf(stopped(edge, [0, 85 * DEG]), roads)
          expect(travel.end).toEqual({ by: 'stop', stop: 0 })
          const expected = halved(overlap, 60 * DEG, 77 * DEG)
          expect(Math.abs(mcpOf(last(travel.nodes)) - expected)).toBeLessThan(1e-9)
          expect(expected / DEG).toBeGreaterThan(62)
        }
      })

      it('ends at the dead centre when nothing stops it, to 1e-9 rad', () => {
        const travel = travelOf(withTravel(finger(), [0, 85 * DEG]), roads)
        expect(travel.end).toEqual({ by: 'fold' })
        // SOURCE other-method (school geometry: link 2 and its arm in line, by bisection); about 77.64° in the derivation
        const expected = halved(pastDeadCentre, 70 * DEG, 80 * DEG)
        expect(expected / DEG).toBeCloseTo(77.64, 2)
        expect(Math.abs(mcpOf(last(travel.nodes)) - expected)).toBeLessThan(1e-9)
        expect(Math.abs(toggleMargin(travel.toggles[0], last(travel.nodes).posture))).toBeLessThan(1e-8)
      })

      it('ends where the range of the drive ends, with the margin of the derivation', () => {
        const travel = travelOf(finger(), roads)
        expect(travel.end).toEqual({ by: 'range' })
        expect(Math.abs(mcpOf(last(travel.nodes)) - 75 * DEG)).toBeLessThan(1e-9)
        // SOURCE other-method (two independent solvers): 8.7179173°
        expect(toggleMargin(travel.toggles[0], last(travel.nodes).posture) / DEG).toBeCloseTo(8.7179173, 6)
      })
    })
  }

  it('is where school geometry puts it, posture by posture', () => {
    const travel = travelOf(withTravel(finger(), [-20 * DEG, 77 * DEG]))
    expect(mcpOf(travel.nodes[0])).toBeCloseTo(-20 * DEG, 10)
    for (const node of travel.nodes) {
      // SOURCE other-method (meeting circles, pin by pin)
      const { pip, dip, middle, distal } = fingerByHand(mcpOf(node))!
      const found = [...node.posture.slice(6, 8), ...node.posture.slice(9, 11)]
      for (const [index, expected] of [...pip, ...dip].entries()) expect(Math.abs(found[index] - expected)).toBeLessThan(1e-10)
      expect(Math.abs(Math.sin((node.posture[8] - middle) / 2))).toBeLessThan(1e-10)
      expect(Math.abs(Math.sin((node.posture[11] - distal) / 2))).toBeLessThan(1e-10)
    }
  })

  it('goes on past dead centre, where the margin is negative and the drive goes back', () => {
    const { nodes, beyond, toggles } = travelOf(finger())
    expect(beyond[0]).toBe(last(nodes))
    const margins = beyond.map(({ posture }) => toggleMargin(toggles[0], posture))
    for (let index = 1; index < margins.length; index++) expect(margins[index]).toBeLessThan(margins[index - 1])
    // SOURCE property: followed to 0.35 rad past dead centre
    expect(last(beyond).arc_mm).toBeGreaterThan(last(nodes).arc_mm)
    expect(margins[margins.length - 1]).toBeCloseTo(-0.35, 9)
    expect(mcpOf(last(beyond))).toBeLessThan(Math.max(...beyond.map(mcpOf)))
  })

  it('gives a node at any arc, the same from both neighbours', () => {
    const { bench, nodes } = travelOf(finger())
    for (const index of [3, 20, 40]) {
      const here = nodes[index].arc_mm
      const before = nodeAt(bench, nodes, here - 1e-9)!
      const after = nodeAt(bench, nodes, here + 1e-9)!
      for (let at = 0; at < before.posture.length; at++) {
        expect(Math.abs(before.posture[at] - after.posture[at])).toBeLessThan(1e-8)
      }
      expect(nodeAt(bench, nodes, here)).toBe(nodes[index])
    }
  })
})

describe('the travel of other linkages', () => {
  it('ends where a pin reaches the end of its slot', () => {
    const design = pinCrank({ crank: 40, rod: 120, offset: 0, drawn_deg: [120, -17] })
    const slot = { length_mm: 240, along_rad: 0 }
    const mount = { ...design.parts[0], holes: design.parts[0].holes.map((hole) => (hole.slot ? { ...hole, slot } : hole)) }
    const short = withTravel({ ...design, parts: [mount, ...design.parts.slice(1)] }, [-120 * DEG, 0])
    const travel = travelOf(short)
    expect(travel.end).toEqual({ by: 'slotEnd', joint: 2 })
    // SOURCE hand: 40 cos θ + √(120² − 40² sin² θ) = 120 gives cos θ = 1/6
    expect(Math.abs(last(travel.nodes).posture[5] - Math.acos(1 / 6))).toBeLessThan(1e-9)
  })

  it('breaks off where a parallelogram lies flat', () => {
    const design = fourBar({ ground: 100, crank: 40, coupler: 100, rocker: 40, drawn_deg: [60, 0, 60] })
    const travel = travelOf(withTravel(design, [-60 * DEG, 60 * DEG]))
    expect(travel.end).toEqual({ by: 'breaks' })
    expect(Math.abs(last(travel.nodes).posture[5])).toBeLessThan(1e-5)
  })

  it('starts at a stop that the finger rests against when it opens', () => {
    const design = withTravel(finger(), [-60 * DEG, 60 * DEG])
    // A seat on the mount above the proximal phalanx: its underside is y = 6, a round of 2 mm rides at (30, 0).
    const seat: Edge = { id: 'seat', kind: 'straight', from: { x_mm: 60, y_mm: 6 }, to: { x_mm: 0, y_mm: 6 } }
    const round = { part: 1, at: { x_mm: 30, y_mm: 0 }, radius_mm: 2 }
    const stop = { id: 'back', round, against: { part: 0, edge: 0 }, friction: oneFriction(0.1), gap_mm: 0 }
    const parts = design.parts.map((part, index) => (index === 0 ? { ...part, edges: [seat] } : part))
    const travel = travelOf({ ...design, parts, stops: [stop] })
    expect(travel.openStop).toBe(0)
    // SOURCE hand: 30 sin θ = 6 − 2, θ = asin(4/30)
    expect(Math.abs(mcpOf(travel.nodes[0]) + Math.asin(4 / 30))).toBeLessThan(1e-9)
    expect(travel.nodes[0].arc_mm).toBe(0)
    expect(travel.end).toEqual({ by: 'range' })
  })
})
