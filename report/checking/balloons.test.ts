import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { inspectionPlan, readVariation } from '../../engine/index.ts'
import { balloonPlaces } from './balloon-places.ts'
import { balloonFile } from './draw-balloons.ts'

const rows = { above: 0, below: 200, middle: 100, step: 27 }

describe('balloons', () => {
  it('keep apart by a step, in the order of what they belong to, and move as little as they can together', () => {
    const anchors = Array.from({ length: 40 }, (_, index) => ({
      number: index + 1,
      at: { x: (index * 37) % 83, y: (index * 53) % 200 },
    }))
    const balloons = balloonPlaces(anchors, rows)
    // SOURCE property
    for (const one of balloons)
      for (const other of balloons)
        if (one.number < other.number)
          expect(Math.hypot(one.centre.x - other.centre.x, one.centre.y - other.centre.y)).toBeGreaterThanOrEqual(27 - 1e-9)
    const above = balloons.filter(({ centre }) => centre.y === 0).toSorted((one, other) => one.centre.x - other.centre.x)
    expect(above.map(({ at }) => at.x)).toEqual(above.map(({ at }) => at.x).toSorted((one, other) => one - other))
    expect(above.reduce((sum, { at, centre }) => sum + centre.x - at.x, 0)).toBeCloseTo(0, 9)
  })

  it('stand right over what they belong to where there is room', () => {
    const far = [
      { number: 1, at: { x: 0, y: 10 } },
      { number: 2, at: { x: 100, y: 190 } },
    ]
    // SOURCE property
    expect(balloonPlaces(far, rows).map(({ centre }) => centre)).toEqual([
      { x: 0, y: 0 },
      { x: 100, y: 200 },
    ])
  })

  it('number every characteristic of every part, and of no other', () => {
    const text = readFileSync(new URL('../../designs/heron.json', import.meta.url), 'utf8')
    const variation = readVariation(text, 'heron').value!
    const plan = inspectionPlan(variation)
    for (const part of variation.design.parts) {
      const own = plan.filter(({ piece }) => piece.kind === 'part' && piece.id === part.id).map(({ number }) => String(number))
      const drawn = [...(balloonFile(part, plan) ?? '').matchAll(/class="value">(\d+)</g)].map(([, number]) => number)
      // SOURCE property
      expect(drawn.toSorted()).toEqual(own.toSorted())
    }
    expect(balloonFile(variation.design.parts[0], [])).toBeUndefined()
  })
})
