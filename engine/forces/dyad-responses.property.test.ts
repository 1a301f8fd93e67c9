import { describe, expect, it } from 'vitest'
import { dot } from '../numbers/row.ts'
import { FORCE_KINDS, type ForceKind, randomForces } from '../sketches/random-forces.ts'
import { type FramePair, framesAt, responseTo, rubbingRate, rubbingResponse } from './force-frame.ts'
import { type ForceRoom, forceRoom } from './force-room.ts'

/** Kinds that come apart into dyads at every posture of the sketches. */
const OF_DYADS: readonly ForceKind[] = ['four-bar', 'two four-bars in series', 'finger']

/**
 * Joint forces of all combinations that do no work: the load and each joint's friction, balanced by a couple on the drive's part.
 */
function carriedBy(frames: FramePair, load: Float64Array): number[] {
  const frame = frames.closing
  const { mechanism, tangent } = frame
  const port = new Float64Array(load.length)
  port[3 * (mechanism.joints[0].b - 1) + 2] = 1
  const toPort = response(port)
  const ofLoad = response(load)
  const portPower = dot(port, tangent)
  const rubbed = mechanism.joints.map((_, joint) => ({
    forces: Array.from(rubbingResponse(frame, joint, 1).subarray(0, mechanism.rows_count)),
    power: rubbingRate(frame, joint, 1),
  }))
  return [{ forces: ofLoad, power: dot(load, tangent) }, ...rubbed].flatMap(({ forces, power }) =>
    forces.map((force, row) => force - (power / portPower) * toPort[row]),
  )

  function response(generalised: Float64Array): number[] {
    const out = new Float64Array(generalised.length)
    responseTo(frame, generalised, out)
    return Array.from(out.subarray(0, mechanism.rows_count))
  }
}

const withoutDyads = (room: ForceRoom): ForceRoom => ({ ...room, dyads: undefined })

describe('joint forces dyad by dyad', () => {
  it('are those of the factored matrix, whatever does no work', () => {
    let compared = 0
    for (const kind of FORCE_KINDS) {
      for (let seed = 1; seed <= 20; seed++) {
        const made = randomForces(kind, seed)
        if (!made) continue
        const room = forceRoom(made.scene.mechanism)
        const byDyads = framesAt(room, made.node)
        if (!byDyads || !room.byDyads) continue
        const closed = carriedBy(byDyads, made.load)
        const factored = framesAt(withoutDyads(room), made.node)
        if (!factored) continue
        const general = carriedBy(factored, made.load)
        const largest = Math.max(...general.map(Math.abs))
        // SOURCE other-method (the same equations by a factored matrix)
        for (const [index, force] of general.entries()) expect(Math.abs(closed[index] - force) / largest).toBeLessThan(1e-9)
        compared++
      }
    }
    expect(compared).toBeGreaterThan(60) // SOURCE property (three kinds at the least are made of dyads)
  })

  it.each(OF_DYADS)('serve a %s', (kind) => {
    const made = randomForces(kind, 3)
    // SOURCE property (such a linkage is built up from dyads)
    expect(made && forceRoom(made.scene.mechanism).dyads).toBeDefined()
  })

  it.each(['slider-crank', 'scotch yoke'] as const)('leave a %s to the matrix', (kind) => {
    const made = randomForces(kind, 3)
    // SOURCE property (it has a slot)
    expect(made && forceRoom(made.scene.mechanism).dyads).toBeUndefined()
  })
})
