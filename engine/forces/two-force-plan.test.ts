import { describe, expect, it } from 'vitest'
import { type Mechanism, mechanismOf } from '../motion/mechanism.ts'
import { finger } from '../sketches/finger.ts'
import { partNamed } from '../sketches/force-scene.ts'
import { plainToggle } from '../sketches/plain-toggle.ts'
import { scotchYoke } from '../sketches/scotch-yoke.ts'
import { planTwoForce } from './two-force-plan.ts'

/** Names of the parts in the order in which they are taken off, each with what holds it besides its pin. */
function taken(mechanism: Mechanism, acting: { readonly load: readonly string[]; readonly port: readonly string[] }) {
  const marked = (ids: readonly string[]) => {
    const out = new Uint8Array(mechanism.parts_count)
    for (const id of ids) out[partNamed(mechanism, id)] = 1
    return out
  }
  const { parts, pins } = mechanism.design
  const plan = planTwoForce(mechanism, { load: marked(acting.load), port: marked(acting.port) })
  return plan?.held.map(({ part, pin, by }) => {
    const what = by === 'port' ? 'port' : parts[by.near.part].id
    return `${parts[part].id} on ${pins[mechanism.joints[pin.joint].pin].id} by ${what}`
  })
}

describe('the order in which parts are taken off', () => {
  const mechanism = mechanismOf(finger())
  const toggle = mechanismOf(plainToggle())

  it('goes from the tip of the finger to the drive, whichever phalanges are loaded', () => {
    const inner = ['middle on pip by link1', 'proximal on mcp by port']
    for (const others of [[], ['middle'], ['middle', 'proximal']]) {
      const loaded = taken(mechanism, { load: ['distal', ...others], port: ['proximal'] })
      expect(loaded).toEqual(['distal on dip by link2', ...inner])
      // With nothing on it, a distal phalanx on two pins is itself a bare link, and holds the other.
      const free = taken(mechanism, { load: others, port: ['proximal'] })
      expect(free).toEqual(['link2 on topA by distal', ...inner])
      expect(taken(mechanism, { load: ['link2', ...others], port: ['proximal'] })).toEqual(free)
    }
  })

  it('does not exist where every part in a ring of two pins is loaded', () => {
    expect(taken(mechanism, { load: ['distal', 'link2'], port: ['proximal'] })).toBeUndefined()
    expect(taken(mechanism, { load: ['distal', 'link1'], port: ['proximal'] })).toBeUndefined()
  })

  it('does not exist for a port on a phalanx that something else hangs on, on a link, or on every part', () => {
    expect(taken(mechanism, { load: ['middle'], port: ['distal'] })).toBeUndefined()
    expect(taken(mechanism, { load: ['middle'], port: ['link1'] })).toBeUndefined()
    const all = mechanism.design.parts.slice(1).map(({ id }) => id)
    expect(taken(mechanism, { load: [], port: all })).toBeUndefined()
  })

  it('counts a loaded link as a part', () => {
    expect(taken(toggle, { load: ['rocker'], port: ['ab'] })).toEqual(['rocker on g by bc', 'ab on a by port'])
    expect(taken(toggle, { load: ['bc'], port: ['rocker'] })).toEqual(['bc on c by ab', 'rocker on g by port'])
  })

  it('counts the second of two bare links on one pin as a part', () => {
    expect(taken(toggle, { load: ['rocker'], port: ['rocker'] })).toEqual(['bc on c by ab', 'rocker on g by port'])
  })

  it('does not exist without a port, or with a slot', () => {
    expect(taken(toggle, { load: ['rocker'], port: [] })).toBeUndefined()
    expect(taken(mechanismOf(scotchYoke(0.7)), { load: ['yoke'], port: ['crank'] })).toBeUndefined()
  })
})
