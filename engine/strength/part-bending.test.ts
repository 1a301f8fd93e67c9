import { describe, expect, it } from 'vitest'
import type { Design, Part } from '../design/design.ts'
import { partBending } from './part-bending.ts'
import { type ForcesOfPins, heron, heronBench } from './test-support/heron-bench.ts'

const indexOf = (id: string) => heron.parts.findIndex((one) => one.id === id)
const withPart = (id: string, change: Partial<Part>): Design => ({
  ...heron,
  parts: heron.parts.map((one) => (one.id === id ? { ...one, ...change } : one)),
})
const bar = (from: number, to: number, [low, high]: readonly [number, number]) =>
  [
    [from, low],
    [to, low],
    [to, high],
    [from, high],
  ].map(([x_mm, y_mm]) => ({ x_mm, y_mm }))

/** Stress of a part of a design as drawn, under forces at its pins. */
function stressOf(id: string, design: Design, forces: ForcesOfPins): number {
  return partBending(heronBench([{ forces }], design), indexOf(id)).margin?.limit.stress ?? Number.NaN
}

/** x and y of a force along and across a part as drawn. */
function turned(id: string, along: number, across: number): [number, number] {
  const { posture } = heronBench([{ forces: {} }]).states[0]
  const turn = posture[3 * indexOf(id) + 2]
  return [Math.cos(turn) * along - Math.sin(turn) * across, Math.sin(turn) * along + Math.cos(turn) * across]
}

describe('a link that is pulled', () => {
  const pull = (size: number) => {
    const [x, y] = turned('topLink', size, 0)
    // The link is part b of both joints: outwards at both ends.
    return { topNear: [-x, -y], topFar: [x, y] } as const
  }
  const link = { outline: bar(-3, 28, [-3, 3]), across: [{ from_mm: -1, to_mm: 1 }] }

  it('is only pulled where its pins lie in its middle', () => {
    // SOURCE hand (100 / (2 × 6) = 8.33 MPa between the holes; beside a hole that a cut meets 100 / (2 × (6 − 3.012 or a chord of it)) is more:
    // the cuts lie at multiples of 24.507/24 = 1.0211, the first 1.0211 from the middle of a hole of r 1.506: chord 2.2138; 100 / (2 × 3.7862) =
    // 13.21)
    expect(stressOf('topLink', withPart('topLink', link), pull(100))).toBeCloseTo(13.21, 1)
  })

  it('is bent too where they lie beside its middle', () => {
    const solid = { ...link, holes: heron.parts[indexOf('topLink')].holes.map((hole) => ({ ...hole, diameter_mm: 0.01 })) }
    const beside = { ...solid, outline: bar(-3, 28, [-1, 5]) }
    // SOURCE hand (8.333 (1 + 6 × 2 / 6) = 25.0)
    expect(stressOf('topLink', withPart('topLink', solid), pull(100))).toBeCloseTo(8.333, 2)
    expect(stressOf('topLink', withPart('topLink', beside), pull(100))).toBeCloseTo(25, 2)
  })
})

describe('a phalanx that is gripped', () => {
  it('is a beam between its pins', () => {
    const straight = withPart('middle', { outline: bar(-4, 30, [-4, 4]), holes: heron.parts[indexOf('middle')].holes })
    const loadCases = heron.loadCases.map((one) =>
      one.id === 'carry'
        ? {
            ...one,
            forces:
              heron.loadCases.find(({ id }) => id === 'middleGrip')?.forces.map((force) => ({ ...force, force_N: 260 })) ?? [],
          }
        : one,
    )
    // 260 N across the part at 14 of 26 mm: 120 N back at pip, where it is part b, and 140 N at dip, where it is part a.
    const pip = turned('middle', 0, -120)
    const dip = turned('middle', 0, 140)
    const stress = stressOf('middle', { ...straight, loadCases }, { pip, dip })
    // SOURCE hand (cuts every 26/24: at 14.083 M = 140 × 11.917 = 1668.3, V = 140; h 8, b 9: 6 × 1668.3 / (9 × 64) = 17.38, 1.5 × 140 / 72 = 2.917;
    // √(17.38² + 3 × 2.917²) = 18.10)
    expect(stress).toBeCloseTo(18.1, 1)
  })

  it('loses in proportion to its forces', () => {
    const none = { ...heron, loadCases: heron.loadCases.map((one) => ({ ...one, forces: [] })) }
    const [one, two] = [1, 2].map((size) =>
      stressOf('middle', none, { pip: [100 * size, 40 * size], dip: [-30 * size, 10 * size] }),
    )
    expect(two / one).toBeCloseTo(2, 12) // SOURCE property (stresses go with the forces)
  })
})

it('says what is missing, and spares what nothing presses', () => {
  const { material: _, ...bare } = heron.parts[indexOf('middle')]
  const parts = heron.parts.map((one) => (one.id === 'middle' ? bare : one))
  const pressed = heronBench([{ forces: { pip: [100, 0] } }], { ...heron, parts })
  expect(partBending(pressed, indexOf('middle'))).toMatchObject({ why: 'parts.middle states no material' })
  expect(partBending(heronBench([]), indexOf('middle'))).toMatchObject({ spared: true })
})
