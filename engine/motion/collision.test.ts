import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { limits } from '../numbers/limits.ts'
import { assembled } from '../sketches/assembled.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { fourBar } from '../sketches/linkages.ts'
import { nearestOver } from './clearance.ts'
import { collisionsOver } from './collision.ts'
import { makePathBench } from './path.ts'
import { travelPath } from './travel-path.ts'

type Corners = readonly (readonly [number, number])[]
type Slices = readonly (readonly [number, number])[]

/** A design with outlines and slices for some of its parts. */
function shaped(design: Design, shapes: Readonly<Record<string, { outline: Corners; across?: Slices }>>): Design {
  const parts = design.parts.map((part) => {
    const shape = shapes[part.id]
    if (!shape) return part
    const outline = shape.outline.map(([x_mm, y_mm]) => ({ x_mm, y_mm }))
    return { ...part, outline, ...(shape.across && { across: shape.across.map(([from_mm, to_mm]) => ({ from_mm, to_mm })) }) }
  })
  return { ...design, parts }
}

function travelled(design: Design) {
  const { mechanism, posture } = assembled(design)
  const bench = makePathBench(mechanism)
  return { bench, nodes: travelPath(bench, posture)!.nodes }
}

function lookedAt(design: Design) {
  const { bench, nodes } = travelled(design)
  return collisionsOver(bench, nodes)
}

function nearestIn(design: Design) {
  const { bench, nodes } = travelled(design)
  return nearestOver(bench, nodes)
}

const bar = (length: number): Corners => [
  [-2, -2],
  [length + 2, -2],
  [length + 2, 2],
  [-2, 2],
]

const flat: Slices = [[-2, 2]]

/** A crank of 40 mm that turns down from 60° to 5°, towards a block on the mount from x = 20 on with its top at y = 10. */
const crankAndBlock = (across: { crank?: Slices; mount?: Slices }, top = 10) => {
  const design = fourBar({ ground: 100, crank: 40, coupler: 120, rocker: 80, drawn_deg: [60, 15, 70] })
  const block: Corners = [
    [20, top],
    [20, -30],
    [60, -30],
    [60, top],
  ]
  return shaped(
    { ...design, drive: { ...design.drive, travel: { open: -60 * DEG, closed: -5 * DEG } } },
    {
      crank: { outline: bar(40), ...(across.crank && { across: across.crank }) },
      mount: { outline: block, ...(across.mount && { across: across.mount }) },
    },
  )
}

describe('parts that run into each other', () => {
  it('are named with the place where they first meet and how deep it gets', () => {
    const { collisions } = lookedAt(crankAndBlock({ crank: flat, mount: flat }))
    expect(collisions).toHaveLength(1)
    const [{ parts, first, deepest, overlap }] = collisions
    expect(parts).toEqual([0, 1])
    // SOURCE hand: the block's corner (20, 10) stands 10 cos θ − 20 sin θ above the bar's middle line, whose lower side is at −2.
    // It is 0.05 inside where √500 cos(θ + 63.4349°) = −1.95: θ = 95.0029° − 63.4349° = 31.5680°
    expect(first.posture[5] / DEG).toBeCloseTo(31.568, 3)
    // SOURCE property: the crank goes on down to 5°, so it is deepest at the end
    expect(deepest.posture[5] / DEG).toBeCloseTo(5, 9)
    // SOURCE hand: the bar's lower side then enters the block at x = 20, y = (20 sin 5° − 2) / cos 5° = −0.2580, and ends inside it
    // at its corner 42 sin 5° − 2 cos 5° = 1.6681 high: its middle is 0.7051 high, 9.2949 below the block's top
    expect(overlap.depth_mm).toBeCloseTo(9.2949, 4)
  })

  it('pass each other where they share no width, and slide on each other’s faces', () => {
    for (const mount of [
      [[2, 6]],
      [[-9, -2.5]],
      [
        [2, 3],
        [5, 6],
      ],
    ] as Slices[]) {
      expect(lookedAt(crankAndBlock({ crank: flat, mount })).collisions).toEqual([])
    }
    // SOURCE property: one prong of a fork is enough
    const fork: Slices = [
      [-6, -4],
      [1.9, 4],
    ]
    expect(lookedAt(crankAndBlock({ crank: flat, mount: fork })).collisions).toHaveLength(1)
  })

  it('are not looked at without an outline or a place across the width, and are named', () => {
    const report = lookedAt(crankAndBlock({ crank: flat }))
    expect(report.collisions).toEqual([])
    // SOURCE property: the mount has no slice; coupler and rocker (2, 3) have no outline
    expect(report.notLookedAt).toEqual([0, 2, 3])
    expect(lookedAt(crankAndBlock({ crank: flat, mount: flat })).notLookedAt).toEqual([2, 3])
    expect(lookedAt(finger()).notLookedAt).toEqual([0, 1, 2, 3, 4, 5])
  })

  it('count from just more than a broken edge', () => {
    // SOURCE hand: at 5° the bar's lower side is at y = (20 sin 5° − 2) / cos 5° = −0.2580 over the block's corner (20, t), which
    // stands (t + 0.2580) cos 5° inside the bar
    const topFor = (depth_mm: number) => (20 * Math.sin(5 * DEG) - 2) / Math.cos(5 * DEG) + depth_mm / Math.cos(5 * DEG)
    const meets = (depth_mm: number) => lookedAt(crankAndBlock({ crank: flat, mount: flat }, topFor(depth_mm))).collisions
    expect(meets(0.98 * limits.collisionDepth_mm)).toEqual([])
    expect(meets(1.02 * limits.collisionDepth_mm)).toHaveLength(1)
    expect(meets(1)[0].overlap.depth_mm).toBeCloseTo(1, 9)
  })
})

describe('parts that come near each other', () => {
  it('are named with their distance and where it is least', () => {
    const { parts, node, clearance_mm } = nearestIn(crankAndBlock({ crank: flat, mount: flat }, -10))!
    expect(parts).toEqual([0, 1])
    // SOURCE property: the crank goes down to 5°, where it is nearest
    expect(node.posture[5] / DEG).toBeCloseTo(5, 9)
    // SOURCE hand: the block's corner (20, −10) lies 20 sin 5° + 10 cos 5° = 11.7051 below the bar's middle line, whose lower side is at −2
    expect(clearance_mm).toBeCloseTo(9.7051, 4)
  })

  it('have less than nothing between them by how deep they overlap', () => {
    const design = crankAndBlock({ crank: flat, mount: flat })
    const [{ overlap }] = lookedAt(design).collisions
    expect(nearestIn(design)!.clearance_mm).toBe(-overlap.depth_mm)
  })

  it('are none where no two parts share a width', () => {
    expect(nearestIn(crankAndBlock({ crank: flat, mount: [[2, 6]] }))).toBeUndefined()
    expect(nearestIn(crankAndBlock({ crank: flat }))).toBeUndefined()
  })
})
