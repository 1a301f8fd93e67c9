import { describe, expect, it } from 'vitest'
import type { Spring } from '../design.ts'
import { readDesign } from '../read-design.ts'
import { type Changes, documentText } from '../test-support/full-document.ts'

const read = (changes: Changes) => readDesign(documentText(changes))
const problems = (changes: Changes) => (read(changes).problems ?? []).map(({ place, code }) => `${place}: ${code}`)
const spring = (id: string, changes: Changes): Spring | undefined => read(changes).value?.springs.find((one) => one.id === id)

const torsion = {
  material: 'music wire',
  diameter: '1.2 mm',
  outside: '11.2 mm',
  turns: 8.75,
  legs: { on: '10 mm', against: '10 mm' },
}
const coil = { material: 'hard-drawn wire', diameter: '1 mm', inside: '7 mm', coils: 10, ends: 'squared ground' }
const body = { material: 'music wire', diameter: '0.5 mm', mean: '4 mm', turns: 20 }

describe('a spring by its wire', () => {
  it('has the rate and the preload of its coil when neither is stated', () => {
    const found = spring('return', {
      'springs.return.rate': undefined,
      'springs.return.preload': undefined,
      'springs.return.wire': { ...torsion, woundUp: '50 deg' },
    })
    // SOURCE hand (1.2⁴ × 200000 / (10.8 × 10 × (8.75 + 20/(30π))) = 414720 / (108 × 8.9622) = 428.47 N·mm a turn, /360 = 1.1902 a degree;
    // × 50° = 59.51)
    if (found?.kind !== 'torsion') throw new Error('no torsion spring')
    expect((found.rate_Nmm_rad * Math.PI) / 180).toBeCloseTo(1.1902, 4)
    expect(found.preload_Nmm).toBeCloseTo(59.51, 2)
  })

  it('keeps what is stated where its coil agrees, and shares its torque with others beside it', () => {
    const stated = { 'springs.return.rate': '1.2 N*mm/deg', 'springs.return.wire': torsion }
    expect(spring('return', stated)).toMatchObject({ rate_Nmm_rad: (1.2 * 180) / Math.PI }) // SOURCE hand (degrees in radians)
    const pair = spring('return', { 'springs.return.rate': undefined, 'springs.return.wire': { ...torsion, springs: 2 } })
    const one = spring('return', { 'springs.return.rate': undefined, 'springs.return.wire': torsion })
    if (pair?.kind !== 'torsion' || one?.kind !== 'torsion') throw new Error('no torsion spring')
    expect(pair.rate_Nmm_rad / one.rate_Nmm_rad).toBeCloseTo(2, 12) // SOURCE property (two of them give twice the torque)
  })

  it('has the rate of a coil that is pressed or pulled', () => {
    // SOURCE hand (G = 80000: 80000 × 1 / (8 × 8³ × 8) = 2.44141; G = 82700, E = 203400: 82700 × 0.0625 / (8 × 64 × 20.40659) = 0.494700)
    expect(
      spring('push', { 'springs.push.rate': undefined, 'springs.push.wire': coil, 'springs.push.freeLength': '18 mm' }),
    ).toMatchObject({
      rate_N_mm: expect.closeTo(2.44141, 5),
    })
    const pulled = { 'springs.pull.rate': undefined, 'springs.pull.wire': body, 'springs.pull.freeLength': '18 mm' }
    expect(spring('pull', { ...pulled, 'springs.pull.initial': '1 N' })).toMatchObject({ rate_N_mm: expect.closeTo(0.4947, 5) })
  })
})

describe('a spring that contradicts itself or cannot be wound is refused', () => {
  const wire = (changes: object) => ({ 'springs.return.rate': undefined, 'springs.return.wire': { ...torsion, ...changes } })
  const pushed = (changes: object, freeLength = '18 mm') => ({
    'springs.push.rate': undefined,
    'springs.push.freeLength': freeLength,
    'springs.push.wire': { ...coil, ...changes },
  })

  it.each<readonly [title: string, changes: Changes, problems: readonly string[]]>([
    ['neither rate nor wire', { 'springs.return.rate': undefined }, ['springs.return.rate: missing']],
    [
      'no preload, and not how far it is wound up',
      { ...wire({}), 'springs.return.preload': undefined },
      ['springs.return.preload: missing'],
    ],
    ['an index of 3.1', wire({ outside: undefined, mean: '4.3 mm', diameter: '1 mm', arbour: '3 mm' }), []],
    [
      'an index of 2.9',
      wire({ outside: undefined, mean: '2.9 mm', diameter: '1 mm', arbour: '1 mm' }),
      ['springs.return.wire: too small'],
    ],
    ['less than one turn', wire({ turns: 0.9 }), ['springs.return.wire.turns: too small']],
    ['a coil that does not go over its pin', wire({ outside: '5.3 mm' }), ['springs.return.wire: too small']],
    ['no diameter of the coil', wire({ outside: undefined }), ['springs.return.wire: missing']],
    ['two diameters of the coil', wire({ mean: '10 mm' }), ['springs.return.wire: too many']],
    ['half a spring', wire({ springs: 1.5 }), ['springs.return.wire.springs: wrong value']],
    ['a wire that is not in the table', wire({ material: 'string' }), ['springs.return.wire.material: wrong value']],
    ['coils that touch when free', pushed({}, '10 mm'), ['springs.push.wire: too large']],
    ['ends that leave nothing to give way', pushed({ coils: 2.5 }), ['springs.push.wire.coils: too small']],
    [
      'a body longer than the spring',
      { 'springs.pull.rate': undefined, 'springs.pull.wire': body, 'springs.pull.freeLength': '10 mm' },
      ['springs.pull.wire: too large'],
    ],
    [
      // SOURCE book (Shigley, equation 10-41, from memory: at an index of 8 231/e^0.84 + 6.9 × 3.231 = 122.0 MPa; 8 × 2 × 4/(π 0.125) = 163.0)
      'more initial force than can be wound in',
      {
        'springs.pull.rate': undefined,
        'springs.pull.wire': body,
        'springs.pull.freeLength': '18 mm',
        'springs.pull.initial': '2 N',
      },
      ['springs.pull.initial: too large'],
    ],
  ])('%s', (_, changes, expected) => {
    expect(problems(changes)).toEqual(expected)
  })

  it('a coil that has no room', () => {
    const room = (changes: object) => ({ ...wire({}), 'springs.return.room': { outside: '12 mm', width: '13 mm', ...changes } })
    expect(problems(room({}))).toEqual([])
    // SOURCE hand (9.75 × 1.2 = 11.7 along the pin, 11.2 outside)
    expect(problems(room({ outside: '11.1 mm' }))).toEqual(['springs.return.room.outside: too small'])
    expect(problems(room({ width: '11.6 mm' }))).toEqual(['springs.return.room.width: too small'])
    expect(problems({ ...pushed({}), 'springs.push.room': { outside: '9 mm', over: '6.9 mm' } })).toEqual([])
    expect(problems({ ...pushed({}), 'springs.push.room': { outside: '9 mm', over: '7 mm' } })).toEqual([
      'springs.push.room.over: too large',
    ])
  })

  it('names both numbers of a contradiction', () => {
    const found = read({ 'springs.return.rate': '2 N*mm/deg', 'springs.return.wire': torsion }).problems ?? []
    expect(found).toHaveLength(1)
    // SOURCE hand (the rate by the wire is worked out above)
    expect(found[0]).toMatchObject({ code: 'contradiction', found: '“2 N*mm/deg”, and 1.19 N·mm/deg by the wire' })
    expect(found[0].needed).toBe('two that agree within 10 %')
  })

  it('takes a wider agreement that is stated', () => {
    const changes = { 'springs.return.rate': '1.4 N*mm/deg', 'springs.return.wire': torsion }
    expect(problems(changes)).toEqual(['springs.return.rate: contradiction'])
    expect(problems({ ...changes, 'springs.return.wire.within': '20 %' })).toEqual([])
  })
})
