import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { changeDocument } from '../design/edit/change-document.ts'
import { readDesign } from '../design/read-design.ts'
import { compareBench } from './bench-comparison.ts'
import { adoptFriction, fitFriction } from './fit-friction.ts'
import { reliabilityShown } from './success-run.ts'
import { outlastShown, weibullFit } from './weibull.ts'

const text = readFileSync(new URL('../../cases/documents/plain-toggle.json', import.meta.url), 'utf8')
const toggle = readDesign(text, 'toggle').value!
const figure = 'closed.toggle.knee.jamAngle'
/** SOURCE hand: friction levers r sin(atan μ) of pins of 4, 5 and 3 mm, over links of 25 and 40 mm. */
const jamAt = (mu: number) => {
  const lever = (diameter: number) => (diameter / 2) * Math.sin(Math.atan(mu))
  return Math.asin((lever(5) + lever(3)) / 25) + Math.asin((lever(4) + lever(5)) / 40)
}
const tested = (mu: number, uncertainty = 0) => ({ serial: 'A', figure, found: jamAt(mu), uncertainty })

describe('bench tests', () => {
  it('are compared with the prediction by ratio and by what the model claims', () => {
    const [same, more] = compareBench(toggle, [tested(0.15, 1e-3), tested(0.3)])
    expect(same.ratio?.value).toBeCloseTo(1, 6)
    // SOURCE hand: a range of friction of no width claims one value, and an interval about it is not inside of that
    expect(same.verdict).toBe('undecided')
    expect(more.ratio?.value).toBeCloseTo(jamAt(0.3) / jamAt(0.15), 6)
    expect(more.verdict).toBe('outside')
  })

  it('give the coefficient back that a jam angle was made with', () => {
    const fitted = fitFriction(toggle, 'pins', [tested(0.22), tested(0.26, jamAt(0.28) - jamAt(0.26))])
    // SOURCE hand (the levers above, the other way round)
    expect(fitted.tests[0].rest?.likely).toBeCloseTo(0.22, 3)
    expect(fitted.tests[1].rest?.most).toBeCloseTo(0.28, 3)
    expect(fitted.rest?.likely).toBeCloseTo(0.24, 3)
    const adopted = readDesign(changeDocument(text, adoptFriction(fitted, 'rig of the workshop (invented)')!), 'toggle').value!
    expect(adopted.frictionPairs[0].rest.most).toBeCloseTo(0.28, 3)
    expect(adopted.frictionPairs[0].source).toContain('2 bench tests, rig of the workshop')
  })

  it('that no coefficient gives say nothing', () => {
    const fitted = fitFriction(toggle, 'pins', [{ serial: 'A', figure, found: 2, uncertainty: 0 }])
    // SOURCE hand: no jam angle of this toggle reaches 2 rad
    expect(fitted.tests[0].why).toBe('no coefficient gives it')
    expect(adoptFriction(fitted, 'rig')).toBeUndefined()
  })
})

describe('lives', () => {
  it('of a censored test have the published law', () => {
    const failed = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386]
    const found = weibullFit(failed, new Array(10).fill(500))
    // SOURCE book: NIST/SEMATECH e-Handbook 8.4.1.2, shape 1.7208, scale 606.5280, from memory; recomputed 1.72080, 606.5276
    expect(found?.shape).toBeCloseTo(1.7208, 4)
    expect(found?.scale).toBeCloseTo(606.5276, 3)
    expect(weibullFit([100, 100], [])).toBeUndefined()
  })

  it('without a failure show what a success run shows, and more the longer they ran', () => {
    const ran = new Array(22).fill(1000)
    // SOURCE book: success-run tables, 22 pieces show 90 % with 90 %, from memory; at the life itself the shape does not matter
    expect(outlastShown({ ran, shape: 2, life: 1000 }, 0.9)).toBeCloseTo(reliabilityShown({ tried: 22, failed: 0 }, 0.9), 9)
    // SOURCE hand: twice the life at shape 2 is worth four pieces
    expect(outlastShown({ ran: [2000], shape: 2, life: 1000 }, 0.9)).toBeCloseTo(0.1 ** (1 / 4), 12)
  })
})
