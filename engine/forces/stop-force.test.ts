import { describe, expect, it } from 'vitest'
import { addForce } from '../motion/closure.ts'
import { stopContact } from '../motion/stop-contact.ts'
import { travelPath } from '../motion/travel-path.ts'
import { framesOf, scene } from '../sketches/force-scene.ts'
import { DISTAL, padCase, shelfFinger } from '../sketches/shelf-finger.ts'
import { oneFriction } from '../sketches/sketch.ts'
import { amplitudeIn, prepare } from './balance.ts'
import { emptyRow, powerIn } from './force-frame.ts'
import { addLoadCase } from './loads.ts'
import { stopBand } from './stop-force.ts'

function pushed(friction: number, stopFriction: number) {
  const plain = shelfFinger({ friction })
  const stop = { ...plain.stops[0], friction: oneFriction(stopFriction) }
  const here = scene({ ...plain, stops: [stop] })
  const path = travelPath(here.paths, here.drawn)!
  const { opening } = framesOf(here, path.nodes[path.nodes.length - 1])
  const row = emptyRow(opening)
  addLoadCase(row, padCase('push', { part: DISTAL, pad: 1, force_N: -30 }))
  const load = row.out.slice()
  return { here, opening, load, stop, band: stopBand(here.bench, opening, { stop, load })! }
}

describe('the force of a closed stop', () => {
  it('is one number without friction: what virtual work asks for', () => {
    // SOURCE other-method: power of the load over the power of the unit contact force
    const { here, opening, load, stop, band } = pushed(0, 0)
    const unit = emptyRow(opening)
    const { at, normal } = stopContact(here.mechanism, stop, opening.posture)
    addForce(unit, { part: stop.round.part, at, force: normal })
    addForce(unit, { part: stop.against.part, at, force: { x: -normal.x, y: -normal.y } })
    const expected = -powerIn(opening, load) / powerIn(opening, unit.out)
    expect(expected).toBeGreaterThan(30)
    expect(band.least_N).toBeCloseTo(expected, 9)
    expect(band.most_N).toBeCloseTo(expected, 9)
  })

  it('widens with the friction of the pins and of the stop', () => {
    // SOURCE property: more states of rest
    const bands = [pushed(0, 0), pushed(0.05, 0), pushed(0.05, 0.1), pushed(0.08, 0.15)].map(({ band }) => band)
    for (let step = 1; step < bands.length; step++) {
      expect(bands[step].least_N).toBeLessThan(bands[step - 1].least_N)
      expect(bands[step].most_N!).toBeGreaterThan(bands[step - 1].most_N!)
    }
  })

  it('spans all corners of friction in the pins and both slopes of friction at the stop', () => {
    // SOURCE other-method: full enumeration of 2^7 · 2 states
    const { here, opening, load, stop, band } = pushed(0.06, 0.12)
    const levers = here.bench.leversOf('rest', 'most')
    const { at, normal } = stopContact(here.mechanism, stop, opening.posture)
    const found: number[] = []
    for (const slope of [-0.12, 0.12]) {
      const row = emptyRow(opening)
      const force = { x: normal.x - slope * normal.y, y: normal.y + slope * normal.x }
      addForce(row, { part: stop.round.part, at, force })
      addForce(row, { part: stop.against.part, at, force: { x: -force.x, y: -force.y } })
      const prepared = prepare(opening, { port: row.out, load })!
      for (let corner = 0; corner < 2 ** levers.length; corner++) {
        const amplitude = amplitudeIn(prepared, (_rates, out) => {
          for (let joint = 0; joint < out.length; joint++) out[joint] = (corner >> joint) & 1 ? levers[joint] : -levers[joint]
        })
        if (amplitude !== undefined) found.push(amplitude)
      }
    }
    expect(found).toHaveLength(256)
    expect(band.least_N / Math.min(...found)).toBeCloseTo(1, 7)
    expect(band.most_N! / Math.max(...found)).toBeCloseTo(1, 7)
  })

  it('is nothing at least where the load pushes open, since a stop cannot pull', () => {
    const { here, opening, load, stop } = pushed(0.05, 0.1)
    const band = stopBand(here.bench, opening, { stop, load: load.map((value) => -value) })!
    expect(band.least_N).toBe(0)
  })
})
