import { describe, expect, it } from 'vitest'
import { driveCoordinate } from '../motion/condition.ts'
import { placed } from '../motion/mechanism.ts'
import { tangentAt } from '../motion/path.ts'
import { settle } from '../motion/settle.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { travelPath } from '../motion/travel-path.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { coupleOn, forceOn, type Scene, scene } from '../sketches/force-scene.ts'
import { type FourBarSizes, fourBar } from '../sketches/linkages.ts'
import { seeded } from '../sketches/seeded.ts'
import { returnSpring, shelfFinger } from '../sketches/shelf-finger.ts'
import { oneFriction } from '../sketches/sketch.ts'
import { againstMotion, balanceIn, type FillLevers, prepare, withoutFriction } from './balance.ts'
import { framesAt } from './force-frame.ts'
import { atLetGo, closedFinger, playBand } from './states.ts'
import { type TakenUp, takeUp } from './take-up.ts'

const SIZES: FourBarSizes = { ground: 60, crank: 25, coupler: 55, rocker: 40, drawn_deg: [100, 10, 80] }
const CLEARANCE_MM = 0.05
const PUSH_NMM = 700

/** A four-bar with clearance and friction at every pin, the crank held, a couple on the rocker. */
function loaded(given: { friction?: number; clearance?: boolean; stiffness?: number; push?: number; levers?: FillLevers }): {
  here: Scene
  taken: TakenUp
} {
  const plain = fourBar(SIZES)
  const parts = plain.parts.map((part) => ({
    ...part,
    holes: part.holes.map((hole) => ({ ...hole, diameter_mm: 3 + CLEARANCE_MM })),
  }))
  const pins = plain.pins.map((pin) => ({ ...pin, friction: oneFriction(given.friction ?? 0) }))
  const here = scene({ ...plain, parts, pins })
  const { mechanism, paths, drawn, drive, bench } = here
  const aim = drive.value(drawn)
  const along = coupleOn(mechanism, 1, -1)
  const forcesAt = (posture: Float64Array) => {
    const frames = framesAt(bench.room, { posture, tangent: tangentAt(paths, posture, along)! })!
    const prepared = prepare(frames.opening, {
      port: coupleOn(mechanism, 1, -1),
      load: coupleOn(mechanism, 3, given.push ?? PUSH_NMM),
    })!
    const balance = balanceIn(prepared, given.levers ?? againstMotion(bench.leversOf('moving', 'likely')))
    return balance && { balance }
  }
  const taken = takeUp(
    {
      bench: paths,
      held: driveCoordinate(mechanism, drawn, aim),
      forcesAt,
      marginsAt: (posture) => [posture[3 * 2 + 2], posture[3 * 3 + 2]],
      clearance: given.clearance ?? true,
      stiffnessOf: (part) => (part === 2 ? given.stiffness : undefined),
    },
    drawn,
  )!
  return { here, taken }
}

/** Rocker angle of the four-bar with a coupler of another length, by the law of cosines. */
function rockerAngle(coupler_mm: number): number {
  const crank = SIZES.drawn_deg[0] * DEG
  const a = { x: SIZES.crank * Math.cos(crank), y: SIZES.crank * Math.sin(crank) }
  const span = Math.hypot(SIZES.ground - a.x, a.y)
  const inside = Math.acos((SIZES.rocker ** 2 + span ** 2 - coupler_mm ** 2) / (2 * SIZES.rocker * span))
  return Math.atan2(a.y, a.x - SIZES.ground) - inside
}

describe('clearance taken up', () => {
  it('is the coupler longer or shorter by two clearances, on a four-bar whose pins all carry the coupler’s force', () => {
    // SOURCE other-method: without friction the load goes to the extremum over all offsets in their circles (energy); all four
    // offsets add up along the coupler, so the extremum is that of a four-bar with the coupler at its length ± 4 · c / 2.
    for (const push of [PUSH_NMM, -PUSH_NMM]) {
      const { taken } = loaded({ push })
      const longest = rockerAngle(SIZES.coupler + 2 * CLEARANCE_MM)
      const shortest = rockerAngle(SIZES.coupler - 2 * CLEARANCE_MM)
      const expected = push > 0 ? Math.max(longest, shortest) : Math.min(longest, shortest)
      expect(taken.posture[3 * 3 + 2]).toBeCloseTo(expected, 9)
    }
  })

  it('puts every pin against the side that its normal force presses, with friction’s force square to it', () => {
    // SOURCE property: on the part with the hole the force along the contact is −μ times the force across it, against the turn
    const friction = 0.3
    const { here, taken } = loaded({ friction })
    const { joints } = here.mechanism
    const { balance } = taken.state
    joints.forEach((joint, index) => {
      const pin = placed(taken.posture, joint.a, joint.atA)
      const hole = placed(taken.posture, joint.b, joint.atB)
      const n = { x: (pin.x_mm - hole.x_mm) / (CLEARANCE_MM / 2), y: (pin.y_mm - hole.y_mm) / (CLEARANCE_MM / 2) }
      expect(Math.hypot(n.x, n.y)).toBeCloseTo(1, 8)
      const [x, y] = [balance.forces[joint.row], balance.forces[joint.row + 1]]
      const across = x * n.x + y * n.y
      const along = -x * n.y + y * n.x
      expect(across).toBeGreaterThan(0)
      expect(along / across).toBeCloseTo(-Math.sign(balance.levers[index]) * friction, 6)
    })
  })

  it('leaves a joint that carries nothing in the middle of its play', () => {
    // SOURCE property: the middle pad held by the drive loads nothing in the toggle, so its play does not matter
    const postures = [0.01, 0.3].map((play) => {
      const plain = finger({ friction: 0.1, clearance_mm: 0.02 })
      const wide = plain.parts.map((part) => ({
        ...part,
        holes: part.holes.map((hole) =>
          ['dip', 'topA', 'topB', 'near', 'far'].includes(hole.id) && part.id !== 'link1'
            ? { ...hole, diameter_mm: 3 + play }
            : hole,
        ),
      }))
      const here = scene({ ...plain, parts: wide })
      const { mechanism, paths, drawn, bench, toggles } = here
      const forcesAt = (posture: Float64Array) => {
        const frames = framesAt(bench.room, { posture, tangent: tangentAt(paths, posture, coupleOn(mechanism, 1, -1))! })!
        const load = forceOn(mechanism, posture, { part: 2, at: [13, -6], force: [0, 50] })
        const balance = balanceIn(prepare(frames.opening, { port: coupleOn(mechanism, 1, -1), load })!, withoutFriction)
        return balance && { balance }
      }
      const held = driveCoordinate(mechanism, drawn, 40 * DEG)
      const start = settle(paths, drawn, held)!.posture
      const marginsAt = (posture: Float64Array) => [toggleMargin(toggles[0], posture)]
      return takeUp({ bench: paths, held, forcesAt, marginsAt, clearance: true, stiffnessOf: () => undefined }, start)!.posture
    })
    for (const [index, value] of postures[0].entries()) expect(value).toBeCloseTo(postures[1][index], 10)
  })
})

describe('the stretch of a link', () => {
  it('is its tension over its stiffness', () => {
    // SOURCE other-method: the four-bar with a coupler longer by T / k, T = M over the coupler's lever about the rocker's pin,
    // worked out in turn
    for (const push of [PUSH_NMM, -PUSH_NMM]) {
      const { taken } = loaded({ clearance: false, stiffness: 50, push })
      let coupler = SIZES.coupler
      for (let round = 0; round < 60; round++) {
        const angle = rockerAngle(coupler)
        const crank = SIZES.drawn_deg[0] * DEG
        const b = { x: SIZES.rocker * Math.cos(angle), y: SIZES.rocker * Math.sin(angle) }
        const along = { x: SIZES.ground + b.x - SIZES.crank * Math.cos(crank), y: b.y - SIZES.crank * Math.sin(crank) }
        // Tension pulls B towards A: its moment about G is −T (b × along) / length and balances the couple.
        const lever = (b.x * along.y - b.y * along.x) / coupler
        coupler = SIZES.coupler + push / lever / 50
      }
      expect(taken.posture[3 * 3 + 2]).toBeCloseTo(rockerAngle(coupler), 8)
    }
  })

  it('is nothing for a link of unstated stiffness', () => {
    const { here, taken } = loaded({ clearance: false })
    for (const [index, value] of taken.posture.entries()) expect(value).toBeCloseTo(here.drawn[index], 10)
  })
})

describe('the play of the closed finger', () => {
  const design = {
    ...finger({ clearance_mm: 0.02 }),
    drive: { kind: 'turn', part: 1, against: 0, pin: 0, travel: { open: 0, closed: 75 * DEG } } as const,
  }
  const here = scene(design)
  const path = travelPath(here.paths, here.drawn)!
  const closed = closedFinger(path, here.bench)
  const band = playBand(closed, 0)!

  it('holds every margin that offsets within their circles can give, and reaches the extremes', () => {
    // SOURCE other-method: margins by closing the loops with 300 random offsets, and by turning each offset to its crest in turn
    const { mechanism, paths, toggles } = here
    const margin = (angles: readonly number[]): number => {
      const offsets = new Float64Array(mechanism.rows_count)
      for (const [joint, angle] of angles.entries()) {
        offsets[mechanism.joints[joint].row] = 0.01 * Math.cos(angle)
        offsets[mechanism.joints[joint].row + 1] = 0.01 * Math.sin(angle)
      }
      return toggleMargin(toggles[0], settle(paths, closed.node.posture, closed.held, offsets)!.posture)
    }
    const dice = seeded(9)
    for (let trial = 0; trial < 300; trial++) {
      const found = margin(mechanism.joints.map(() => dice.between(0, 2 * Math.PI)))
      expect(found).toBeGreaterThan(band.least_rad)
      expect(found).toBeLessThan(band.most_rad)
    }
    for (const [sense, extreme] of [
      [1, band.most_rad],
      [-1, band.least_rad],
    ] as const) {
      const angles = mechanism.joints.map((_, joint) => joint)
      for (let round = 0; round < 6; round++) {
        for (const joint of angles.keys())
          angles[joint] = crest((angle) => sense * margin(angles.with(joint, angle)), angles[joint])
      }
      expect(margin(angles) / DEG).toBeCloseTo(extreme / DEG, 6)
    }
  })

  it('is nothing without clearance', () => {
    const tight = scene({ ...design, parts: finger().parts })
    const tightPath = travelPath(tight.paths, tight.drawn)!
    const tightBand = playBand(closedFinger(tightPath, tight.bench), 0)!
    expect(tightBand.most_rad - tightBand.least_rad).toBeLessThan(1e-9)
  })
})

/** Angle at which a function that rises and falls once in a turn is largest: ternary search from a start. */
function crest(value: (angle: number) => number, start: number): number {
  const coarse = Array.from({ length: 8 }, (_, step) => start + (step * Math.PI) / 4)
  const best = coarse.reduce((most, angle) => (value(angle) > value(most) ? angle : most), start)
  let [low, high] = [best - Math.PI / 4, best + Math.PI / 4]
  for (let round = 0; round < 36; round++) {
    const third = (high - low) / 3
    if (value(low + third) < value(high - third)) low += third
    else high -= third
  }
  return (low + high) / 2
}

describe('the finger at let-go', () => {
  it('stands where the springs put its play, at its stop, and keeps its stop closed', () => {
    const tight = scene({ ...shelfFinger({ friction: 0.1 }), springs: [returnSpring(200)] })
    const loose = scene({ ...shelfFinger({ friction: 0.1, clearance_mm: 0.015 }), springs: [returnSpring(200)] })
    const stateOf = (here: Scene) => {
      const path = travelPath(here.paths, here.drawn)!
      const closed = closedFinger(path, here.bench)
      const letGo = atLetGo(closed, { clearance: true, stiffnessOf: () => undefined })!
      return { letGo, closed, margin: toggleMargin(here.toggles[0], letGo.posture) }
    }
    const exact = stateOf(tight)
    const played = stateOf(loose)
    expect(exact.margin).toBeCloseTo(toggleMargin(tight.toggles[0], exact.closed.node.posture), 9)
    // SOURCE property: the stop's gap stays closed, and the margin stays within the play
    expect(Math.abs(played.closed.held.value(played.letGo.posture))).toBeLessThan(1e-10)
    const band = playBand(played.closed, 0)!
    expect(played.margin).toBeGreaterThan(band.least_rad)
    expect(played.margin).toBeLessThan(band.most_rad)
  })
})
