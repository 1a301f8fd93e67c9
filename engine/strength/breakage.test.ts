import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { readyFor } from '../figures/ready-finger.ts'
import { framesAt } from '../forces/force-frame.ts'
import { returnReserve } from '../forces/return-reserve.ts'
import { returnSpring, shelfFinger } from '../sketches/shelf-finger.ts'
import { sketch } from '../sketches/sketch.ts'
import { breakageOf, breakages, memberWords } from './breakage.ts'

function sprung(friction: number, springs = [returnSpring(60)]): Design {
  return { ...shelfFinger({ friction }), springs }
}

function told(design: Design): Readonly<Record<string, string>> {
  const ready = readyFor(design)
  if (!ready) throw new Error('cannot be moved')
  const names = (parts: readonly number[]) => parts.map((part) => design.parts[part].id).join(' ')
  return Object.fromEntries(
    breakages(ready).map(({ member, outcome, loose, limp }) => [
      memberWords(design, member),
      [
        outcome,
        ...(loose.length > 0 ? [`loose: ${names(loose)}`] : []),
        ...(limp.length > 0 ? [`limp: ${names(limp)}`] : []),
      ].join('; '),
    ]),
  )
}

describe('the example finger with one thing broken', () => {
  it('behaves as its joints tell', () => {
    const found = told(sprung(0.1))
    // SOURCE hand (the spring turns the proximal at the MCP; the link from the mount rules the middle, the top link the distal phalanx)
    expect(found['spring return']).toBe('stays closed')
    expect(found['pin mcp']).toBe('goes limp; limp: proximal middle distal link1 link2')
    expect(found['pin dip']).toBe('opens in part; limp: distal link2')
    expect(found['part link2']).toBe('opens in part; limp: distal')
    expect(found['pin baseA']).toBe('opens in part; limp: middle distal link1 link2')
    expect(found['part distal']).toBe('opens in part; limp: link2')
  })

  it('has as many freedoms left as are counted: nothing is limp where one spring of two is gone', () => {
    const two = [returnSpring(60), { ...returnSpring(40), id: 'second' }]
    // SOURCE hand (mobility stays 1, and the other spring opens it)
    expect(told(sprung(0.1, two))['spring second']).toBe('opens')
  })

  it('stays closed where friction is too much for the spring that is left, as the return says', () => {
    const two = (friction: number) => sprung(friction, [returnSpring(60), { ...returnSpring(40), id: 'second' }])
    const outcomes = new Set<string | undefined>()
    for (const friction of [0.05, 0.1, 0.45, 0.6]) {
      const ready = readyFor(sprung(friction))
      const node = ready?.path.nodes[ready.path.nodes.length - 1]
      const frames = ready && node && framesAt(ready.bench.room, node)
      const reserve = ready && frames && returnReserve(ready.bench, frames.opening)
      const left = readyFor(two(friction))
      const { outcome: found, taken_ratio = Number.NaN } = (left && breakageOf(left, { kind: 'spring', index: 1 })) ?? {}
      expect(taken_ratio < 1).toBe(found === 'opens')
      // SOURCE other-method (the return reserve from the worst rest at the closed posture, which takes friction to all orders)
      expect(found, `at ${friction}`).toBe((reserve?.fromRest?.amplitude ?? -1) > 0 ? 'opens' : 'stays closed')
      outcomes.add(found)
    }
    expect(outcomes.size).toBe(2)
  })
})

describe('a chain without links', () => {
  const chain = sketch({
    parts: [
      { id: 'mount', role: 'mount', holes: { a: [0, 0] }, drawn: [0, 0, 0] },
      { id: 'arm', role: 'proximal', holes: { a: [0, 0] }, drawn: [0, 0, 0] },
    ],
    pins: [{ id: 'a', joins: ['mount.a', 'arm.a'] }],
    drive: { part: 'arm', pin: 'a', open: 0, closed: 1.2 },
    springs: [{ ...returnSpring(60), id: 'return' }],
  })

  it('comes apart at its only pin', () => {
    // SOURCE hand (nothing else joins the arm to the mount)
    expect(told(chain)['pin a']).toBe('comes apart; loose: arm')
    expect(told(chain)['spring return']).toBe('stays closed')
  })
})
