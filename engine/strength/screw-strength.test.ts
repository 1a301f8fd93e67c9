import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { LoadCase } from '../design/design.ts'
import { readDesign } from '../design/read-design.ts'
import type { Screw } from '../design/screws/screw.ts'
import { screwClasses, threads } from '../design/screws/thread-rows.ts'
import { assemble } from '../motion/assemble.ts'
import { mechanismOf } from '../motion/mechanism.ts'
import { USUAL_FACTORS } from './factors.ts'
import { mountPulls } from './mount-pull.ts'
import { stressArea, strippingAreas } from './screw.ts'
import { preloadOf, screwStrength } from './screw-strength.ts'

const read = readDesign(readFileSync(join(import.meta.dirname, '../../designs/heron.json'), 'utf8'), 'heron')
if (read.problems !== undefined) throw new Error('the example is refused')
const heron = read.value
const mechanism = mechanismOf(heron)
const posture = assemble(mechanism).posture ?? new Float64Array()

const threadNamed = (name: string) => threads.find((row) => row.name === name) ?? threads[0]
const classNamed = (name: string) => screwClasses.find((row) => row.name === name) ?? screwClasses[0]
const screw = (changes: Partial<Screw> = {}): Screw => ({
  id: 'front',
  thread: threadNamed('M3'),
  class: classNamed('8.8'),
  part: 0,
  engagement_mm: 6,
  tapped: {},
  torque_Nmm: 600,
  turning: { kind: 'coefficient', torque_ratio: 0.2 },
  scatter_ratio: 0.25,
  screws_count: 1,
  ...changes,
})
const holding = (x_mm: number, screws_count = 1, pulls_rad = -Math.PI / 2): Screw =>
  screw({ screws_count, holdsMount: { at: { x_mm, y_mm: -7 }, pulls_rad } })

describe('a screw turned in with a torque', () => {
  it.each([
    // SOURCE standard (ISO 898-1, proof loads of class 8.8, coarse thread, from memory; the standard rounds its areas first)
    { name: 'M3', load: 2920 },
    { name: 'M4', load: 5100 },
    { name: 'M5', load: 8230 },
    { name: 'M6', load: 11_600 },
    { name: 'M8', load: 21_200 },
  ])('$name is stretched for good at the load of the standard', ({ name, load }) => {
    expect(Math.abs((stressArea(threadNamed(name)) * classNamed('8.8').proof_MPa) / load - 1)).toBeLessThan(0.007)
  })

  it.each([
    // SOURCE standard (ISO 3506-1, tensile strength and 0.2 % proof stress of stainless screws, from memory)
    { name: 'A2-50', tensile: 500, proof: 210 },
    { name: 'A2-70', tensile: 700, proof: 450 },
    { name: 'A2-80', tensile: 800, proof: 600 },
    // SOURCE standard (ISO 898-1, proof stress above and tensile strength of 10.9 and 12.9, from memory)
    { name: '10.9', tensile: 1040, proof: 830 },
    { name: '12.9', tensile: 1220, proof: 970 },
  ])('of class $name bears what the standard says', ({ name, tensile, proof }) => {
    const { tensile_MPa, proof_MPa } = classNamed(name)
    expect(tensile_MPa).toBeCloseTo(tensile, 9)
    expect(proof_MPa).toBeCloseTo(proof, 9)
  })

  it('has the preload of the worked example', () => {
    // SOURCE book (Jindal, Machine Design, ex. 9-5, p. 268, by a notebook that quotes it: M14, 115 mm², 0.75 × 650 MPa, K 0.2: 156.97 N·m)
    const thread = { ...threadNamed('M8'), diameter_mm: 14 }
    expect(preloadOf(screw({ thread, torque_Nmm: 156_970 })).likely_N / (0.75 * 650 * 115)).toBeCloseTo(1, 4)
  })

  it('has about the same preload by friction as by the coefficient that is common for it', () => {
    // SOURCE book (Shigley, section 8-8, from memory: with 0.15 in the thread and under the head K is about 0.2 for any size)
    for (const thread of threads) {
      const { torque_ratio } = preloadOf(screw({ thread, turning: { kind: 'friction', thread: 0.15, head: 0.15 } }))
      expect(Math.abs(torque_ratio / 0.2 - 1), thread.name).toBeLessThan(0.06)
    }
  })

  it('is judged at its largest preload and the pull of the load', () => {
    const checks = screwStrength(screw(), heron.parts[0], { factors: USUAL_FACTORS, pull: 100 })
    // SOURCE hand (600/(0.2 × 3) = 1000, 1250 at most, 750 at least; 1350/5.031 = 268.3 MPa; 580/(4/3 × 268.3) − 1 = 0.621)
    expect(checks.proof.margin?.value).toBeCloseTo(0.621, 3)
    // SOURCE hand (thread of the part π 2.874/0.5 × (0.25 + tan 30° × 0.099) = 5.546 mm²/mm; 1350/(5.546 × 6) = 40.57 MPa; 6061-T6 27 ksi = 186.2:
    // 186.2/(2 × 40.57) − 1 = 1.294; 6 × 2/(… ) engagement 6/2.294 = 2.615)
    expect(checks.stripping.margin?.value).toBeCloseTo(1.294, 2)
    const steps = 'steps' in checks.stripping ? checks.stripping.steps : []
    expect(steps.find(({ name }) => name === 'engagement needed')?.value).toBeCloseTo(2.615, 2)
    // SOURCE hand (750/(1.5 × 100) − 1)
    expect(checks.separation?.margin?.value).toBeCloseTo(4, 9)
  })

  it('strips nothing at the engagement that it needs, and does so below', () => {
    const at = (engagement_mm: number) =>
      screwStrength(screw({ engagement_mm }), heron.parts[0], { factors: USUAL_FACTORS, pull: undefined }).stripping
    const first = at(5)
    const needed = 'steps' in first ? (first.steps.find(({ name }) => name === 'engagement needed')?.value ?? 0) : 0
    expect(at(needed).margin?.value).toBeCloseTo(0, 9) // SOURCE property
    expect(at(0.9 * needed).margin?.value).toBeLessThan(0)
  })

  it('stays open where the part does not tell its strength', () => {
    const { material: _, ...bare } = heron.parts[0]
    expect(screwStrength(screw(), bare, { factors: USUAL_FACTORS, pull: undefined }).stripping).toEqual({
      why: 'parts.mount states no material',
    })
  })
})

it('has threads whose limits lie as a thread’s do', () => {
  // SOURCE property (nut: minor below pitch; screw: pitch below major; the pitch diameter is d − 0.6495 p, ISO 724, from memory)
  for (const thread of threads) {
    expect(thread.minorMost_mm).toBeLessThan(thread.pitchDiameter_mm)
    expect(thread.internalPitchMost_mm).toBeLessThan(thread.majorLeast_mm)
    expect(thread.pitchDiameter_mm).toBeCloseTo(thread.diameter_mm - 0.649519 * thread.pitch_mm, 2)
    const { internal_mm, external_mm } = strippingAreas(thread)
    expect(internal_mm).toBeGreaterThan(external_mm)
  }
})

describe('the pull of the load at the screws of the mount', () => {
  const tip = heron.parts.findIndex(({ id }) => id === 'distal')
  const load = (force_N: number): LoadCase => ({
    id: 'push',
    name: 'push',
    forces: [{ part: tip, pad: 2, frame: 0, direction_rad: Math.PI / 2, force_N }],
    couples: [],
    acts: 'closed',
    sideways: [],
  })
  const pulls = (screws: readonly Screw[], force_N: number) =>
    mountPulls(mechanism, screws, [{ loadCase: load(force_N), drive: 0, posture }])

  it('balances the load with as little as a rigid plate needs', () => {
    const force = 10
    const at = heron.parts[tip].pads[2].at
    const turn = posture[3 * tip + 2]
    const tipX = posture[3 * tip] + at.x_mm * Math.cos(turn) - at.y_mm * Math.sin(turn)
    const screws = [holding(-3, 2), holding(-11, 2)]
    const [front, rear] = pulls(screws, force).map((one) => (typeof one === 'string' ? Number.NaN : one.pull_N))
    // SOURCE hand (10 N up at the tip, x about 92: even 10/4 = 2.5; moment 10 (x + 7) about the middle; over Σ s² = 4 × 16 = 64: 4/64 of it on each)
    expect(front).toBeCloseTo(2.5 + (4 / 64) * force * (tipX + 7), 9)
    // SOURCE property (the rear ones are pressed, not pulled)
    expect(rear).toBe(0)
  })

  it('is the same whichever way the joint is written', () => {
    // SOURCE property (turned by half a turn the load presses where it pulled: the rear screws take it)
    const screws = [holding(-3, 2), holding(-11, 2)]
    const down = pulls(screws, -10).map((one) => (typeof one === 'string' ? Number.NaN : one.pull_N))
    expect(down[0]).toBe(0)
    expect(down[1]).toBeGreaterThan(0)
  })

  it('is told by screws in one place only when nothing turns the mount', () => {
    expect(pulls([holding(-3, 2)], 10)[0]).toMatch(/stand in one line/)
  })
})
