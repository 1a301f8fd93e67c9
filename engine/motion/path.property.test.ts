import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { assembled } from '../sketches/assembled.ts'
import { laidOut } from '../sketches/laid-out.ts'
import { mirrored, rotated } from '../sketches/moved-layout.ts'
import { KINDS, randomLayout, randomMechanism } from '../sketches/random-mechanism.ts'
import { seeded } from '../sketches/seeded.ts'
import { makePathBench, march, marchLength, type PathBench, type PathNode, postureAhead, reversed, tangentAt } from './path.ts'
import { sideOf } from './plan-side.ts'
import { nodeWhereZero } from './trace.ts'

const SEEDS = Array.from({ length: 20 }, (_, seed) => seed + 1)

/** Start of the path with the crank turning counter-clockwise (1) or clockwise. */
function startOf(design: Design, way: 1 | -1, roads: 'both' | 'newton' = 'both') {
  const { mechanism, posture } = assembled(design)
  const bench = makePathBench(mechanism, roads)
  const along = new Float64Array(mechanism.columns_count)
  along[2] = way
  const tangent = tangentAt(bench, posture, along)
  return tangent && { bench, start: { posture, tangent, arc_mm: 0 } satisfies PathNode }
}

function followed(bench: PathBench, start: PathNode, steps: number): PathNode[] {
  const nodes = [start]
  for (let step = 0; step < steps; step++) {
    const last = nodes[nodes.length - 1]
    const next = march(bench, last, marchLength(bench.mechanism, last.tangent))
    if (!next) break
    nodes.push(next)
  }
  return nodes
}

function widest(a: Float64Array, b: Float64Array): number {
  return a.reduce((most, value, index) => Math.max(most, Math.abs(value - b[index])), 0)
}

describe('the path', () => {
  it('is the same by closed forms and by Newton', () => {
    // SOURCE other-method (dense Newton on all closure equations)
    let compared = 0
    for (const kind of KINDS) {
      for (const seed of SEEDS) {
        const both = startOf(randomMechanism(kind, seed), 1)
        const newton = startOf(randomMechanism(kind, seed), 1, 'newton')
        if (!both || !newton) continue
        const nodes = followed(both.bench, both.start, 25)
        const others = followed(newton.bench, newton.start, 25)
        for (const [index, { posture }] of nodes.entries()) {
          // Where Newton took a shorter step the nodes lie elsewhere; those are compared by reversal and at events.
          if (!others[index] || Math.abs(others[index].arc_mm - nodes[index].arc_mm) > 1e-9) break
          expect(widest(posture, others[index].posture)).toBeLessThan(1e-8)
          compared++
        }
      }
    }
    // SOURCE property: 260 mechanisms, ten postures each at the least
    expect(compared).toBeGreaterThan(2600)
  })

  it('is the same postures backwards', () => {
    for (const kind of KINDS) {
      for (const seed of SEEDS) {
        const begun = startOf(randomMechanism(kind, seed), 1)
        if (!begun) continue
        const { bench, start } = begun
        const nodes = followed(bench, start, 12)
        const back = followed(bench, reversed(nodes[nodes.length - 1]), 40)
        // SOURCE property: the way back passes the start; the place there is found where the start's own plane is crossed
        const behind = (node: PathNode) =>
          start.tangent.reduce((sum, value, column) => {
            const away = node.posture[column + 3] - start.posture[column + 3]
            return sum + value * (column % 3 === 2 ? away * bench.mechanism.scale_mm : away)
          }, 0)
        const far = back.findIndex((node) => node.arc_mm > nodes[nodes.length - 1].arc_mm && behind(node) <= 0)
        const valued = (node: PathNode) => ({ node, value: behind(node) })
        const passed = far > 0 ? nodeWhereZero(bench, valued(back[far - 1]), valued(back[far]), behind) : back[0]
        expect(far > 0 || nodes.length === 1).toBe(true)
        expect(widest(passed!.posture, start.posture)).toBeLessThan(1e-8)
      }
    }
  })

  it('keeps its assembly from 10,000 random starts', () => {
    const dice = seeded(7)
    let changed = 0
    for (let trial = 0; trial < 10_000; trial++) {
      const kind = KINDS[trial % KINDS.length]
      const begun = startOf(randomMechanism(kind, 1000 + (trial % 250)), trial % 2 === 0 ? 1 : -1)
      if (!begun?.bench.planRoom) continue
      const { bench, start } = begun
      const { steps } = bench.planRoom!.plan
      const nodes = followed(bench, start, 1 + Math.floor(dice.between(0, 4)))
      for (let index = 1; index < nodes.length; index++) {
        const [before, after] = [nodes[index - 1], nodes[index]]
        // SOURCE property: between neighbours every signed sine changes by no more than the parts turn against one another, which is
        // less than twice the marched 4° and the fifth that a correction may add; a jump to the other assembly changes its sign.
        for (const step of steps) {
          const change = Math.abs(sideOf(step, after.posture) - sideOf(step, before.posture))
          if (change > 2 * 0.07 * 1.2) changed++
        }
      }
    }
    expect(changed).toBe(0)
  })

  it('is mirrored by a mirrored linkage and turned by a turned one', () => {
    for (const kind of KINDS) {
      for (const seed of SEEDS.slice(0, 8)) {
        const layout = randomLayout(kind, seed)
        const plain = startOf(laidOut(layout), 1)
        const mirror = startOf(laidOut(mirrored(layout)), -1)
        const turned = startOf(laidOut(rotated(layout, 0.8)), 1)
        if (!plain || !mirror || !turned) continue
        const nodes = followed(plain.bench, plain.start, 10)
        const mirrorNodes = followed(mirror.bench, mirror.start, 10)
        const turnedNodes = followed(turned.bench, turned.start, 10)
        // SOURCE property: mechanics does not know left from right, nor where up is
        expect(mirrorNodes.length).toBe(nodes.length)
        expect(turnedNodes.length).toBe(nodes.length)
        for (const [index, { posture }] of nodes.entries()) {
          const flipped = posture.map((value, at) => (at % 3 === 0 ? value : -value))
          expect(widest(flipped, mirrorNodes[index].posture)).toBeLessThan(1e-7)
          expect(widest(turnedPosture(posture, 0.8), turnedNodes[index].posture)).toBeLessThan(1e-7)
        }
      }
    }
  })

  it('gives the same node ahead whatever was asked before', () => {
    for (const kind of KINDS) {
      const begun = startOf(randomMechanism(kind, 3), 1)
      if (!begun) continue
      const { bench, start } = begun
      const once = postureAhead(bench, start, 0.4)?.posture
      postureAhead(bench, start, -1.3)
      tangentAt(bench, start.posture, start.tangent)
      expect(postureAhead(bench, start, 0.4)?.posture).toEqual(once)
      expect(once).toBeDefined()
    }
  })
})

function turnedPosture(posture: Float64Array, by_rad: number): Float64Array {
  const [c, s] = [Math.cos(by_rad), Math.sin(by_rad)]
  return posture.map((value, at) => {
    if (at < 3) return value
    if (at % 3 === 0) return c * value - s * posture[at + 1]
    return at % 3 === 1 ? s * posture[at - 1] + c * value : value + by_rad
  })
}
