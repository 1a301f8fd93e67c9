import { describe, expect, it } from 'vitest'
import { assembled, type Put } from '../sketches/assembled.ts'
import { laidOut } from '../sketches/laid-out.ts'
import { blockCrank, fourBar } from '../sketches/linkages.ts'
import { closureGap } from './closure.ts'
import { makePathBench, type PathNode, tangentAt } from './path.ts'
import { largestOf, makeBench } from './settle.ts'
import { type Trace, trace, type Watch } from './trace.ts'

/** Start of the path of a design whose part 1 turns counter-clockwise (1) or clockwise (−1). */
function startOf({ mechanism, posture }: Put, way: 1 | -1) {
  const bench = makePathBench(mechanism)
  const along = new Float64Array(mechanism.columns_count)
  along[2] = way
  return { bench, start: { posture, tangent: tangentAt(bench, posture, along)!, arc_mm: 0 } satisfies PathNode }
}

/** Follows part 1 until it has turned by so much from the start. */
function turned(put: Put, way: 1 | -1, by_rad: number): Trace {
  const { bench, start } = startOf(put, way)
  const watch: Watch = {
    id: 'turned',
    value: ({ posture }) => way * (posture[5] - start.posture[5]) - by_rad,
    crossing: 'rising',
    ends: true,
  }
  return trace(bench, start, [watch])
}

function openness({ mechanism }: Put, { nodes }: Trace): number {
  const gap = new Float64Array(mechanism.columns_count)
  return Math.max(
    ...nodes.map(({ posture }) => {
      closureGap(makeBench(mechanism), posture, undefined, gap)
      return largestOf(gap)
    }),
  )
}

const WHOLE = 2 * Math.PI

function sameUpToTurns(a: Float64Array, b: Float64Array): number {
  return Math.max(...a.map((value, index) => Math.abs(index % 3 === 2 ? Math.sin((value - b[index]) / 2) : value - b[index])))
}

const SIX_BARS = {
  'two four-bars on one rocker': ['rocker', 130, 45] as const,
  'a link on the coupler': ['coupler', 100, 75] as const,
}

function sixBar([on, x, y]: readonly [string, number, number]) {
  const still = [0, 0, 0] as const
  return laidOut({
    frames: { mount: still, crank: still, coupler: still, rocker: still, link: still, arm: still },
    pins: [
      { id: 'o', at: [0, 0], joins: ['mount', 'crank'] },
      { id: 'a', at: [30.642, 25.712], joins: ['crank', 'coupler'] },
      { id: 'b', at: [143.19, 67.34], joins: ['coupler', 'rocker'] },
      { id: 'g', at: [100, 0], joins: ['mount', 'rocker'] },
      { id: 'd', at: [x, y], joins: [on, 'link'] },
      { id: 'e', at: [190, 150], joins: ['link', 'arm'] },
      { id: 'h', at: [230, 0], joins: ['mount', 'arm'] },
    ],
    drive: { part: 'crank', pin: 'o', open: -100, closed: 100 },
  })
}

describe('the path of a linkage that can turn right round', () => {
  const designs = {
    'slider-crank': blockCrank({ crank: 40, rod: 120, offset: -20, drawn_deg: [60, -25] }),
    ...Object.fromEntries(Object.entries(SIX_BARS).map(([name, place]) => [`six-bar with ${name}`, sixBar(place)])),
  }
  for (const [name, design] of Object.entries(designs)) {
    for (const way of [1, -1] as const) {
      it(`comes back to where it was after two turns of a ${name} (${way > 0 ? 'counter-clockwise' : 'clockwise'})`, () => {
        const put = assembled(design)
        const swept = turned(put, way, 2 * WHOLE)
        // SOURCE property: the crank turns right round on the one assembly, so two turns on everything stands where it stood
        expect(swept.endedBy).toMatchObject({ id: 'turned' })
        expect(sameUpToTurns(swept.nodes[swept.nodes.length - 1].posture, put.posture)).toBeLessThan(1e-9)
        expect(openness(put, swept)).toBeLessThan(1e-10 * put.mechanism.scale_mm)
      })
    }
  }
})

describe('the path where it has two ways on', () => {
  const parallelogram = (rocker: number, crank_deg = 60) =>
    assembled(fourBar({ ground: 100, crank: 40, coupler: 100, rocker, drawn_deg: [crank_deg, 0, crank_deg] }))

  it('ends where an exact parallelogram lies flat, and stays one up to there', () => {
    for (const way of [1, -1] as const) {
      for (const crank_deg of [60, 47.3, 90]) {
        const followed = turned(parallelogram(40, crank_deg), way, WHOLE)
        const last = followed.nodes[followed.nodes.length - 1].posture
        expect(followed.endedBy).toBe('cannot go on')
        // SOURCE property: flat at 0° and at 180°; until then crank and rocker turn as one. Halving stops at 4e-6 of a degree.
        expect(Math.abs(last[5] - (way > 0 ? Math.PI : 0))).toBeLessThan(1e-5)
        for (const { posture } of followed.nodes) expect(Math.abs(posture[11] - posture[5])).toBeLessThan(1e-6)
      }
    }
  })

  it('does not jump from one assembly of an almost-parallelogram to the other', () => {
    for (const more of [0.1, 0.01, 1e-3]) {
      for (const way of [1, -1] as const) {
        const followed = turned(parallelogram(40 + more), way, 3 * WHOLE)
        // SOURCE property: 40 + 100 < 100 + 40 + x, so the crank turns right round on either of two separate assemblies (Grashof's
        // rule), and rocker and coupler never come in line: the sine of the angle between them keeps its sign.
        expect(followed.endedBy).toMatchObject({ id: 'turned' })
        for (const { posture } of followed.nodes) expect(Math.sin(posture[11] - posture[8])).toBeGreaterThan(0)
      }
    }
  })

  it('goes through the dead centres of an almost-parallelogram whose crank is the longer one', () => {
    const followed = turned(parallelogram(39.9), 1, WHOLE)
    const turns = followed.nodes.map(({ posture }) => posture[5])
    // SOURCE property: 39.9 + 100 < 100 + 40 with the rocker the shortest, so it turns right round and the crank rocks (Grashof).
    // SOURCE hand: |a − g| is at most 100 + 39.9, so cos = (40² + 100² − 139.9²) / (2 · 40 · 100) = −0.996500 and 175.206°;
    // at least 100 − 39.9, so cos = (40² + 100² − 60.1²) / 8000 = 0.998499 and 3.140°
    expect(followed.endedBy).toBe('too long')
    expect(Math.max(...turns)).toBeLessThan(175.206 * (Math.PI / 180))
    expect(Math.max(...turns)).toBeGreaterThan(175 * (Math.PI / 180))
    expect(Math.min(...turns)).toBeGreaterThan(3.139 * (Math.PI / 180))
    expect(Math.min(...turns)).toBeLessThan(3.2 * (Math.PI / 180))
  })
})
