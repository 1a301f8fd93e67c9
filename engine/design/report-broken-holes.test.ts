import { describe, expect, it } from 'vitest'
import { readDesign } from './read-design.ts'
import { type Changes, documentText } from './test-support/full-document.ts'

const top = 'parts.proximal.holes.top'
const problemsWith = (changes: Changes) => readDesign(documentText(changes)).problems ?? []
const placesWith = (changes: Changes) => problemsWith(changes).map(({ place, code }) => `${place}: ${code}`)

// The outline of the proximal phalanx runs from y = −5 mm to y = 7 mm and ends at x = 49 mm; its holes have 3.012 mm.
describe('a hole near the edge of its part', () => {
  it('is taken while a thousandth of a millimetre stands beside it', () => {
    // SOURCE hand (7 − 3.012 / 2 − 0.001 = 5.493)
    expect(placesWith({ [`${top}.y`]: '5.493 mm - 1e-9 mm' })).toEqual([])
    expect(placesWith({ [`${top}.y`]: '5.4931 mm' })).toEqual([`${top}: too close`])
  })

  it('is measured to the nearest edge, corner and end', () => {
    // SOURCE hand (49 − 1.506 − 0.001 = 47.493)
    expect(placesWith({ [`${top}.x`]: '47.4929 mm' })).toEqual([])
    expect(placesWith({ [`${top}.x`]: '47.4931 mm' })).toEqual([`${top}: too close`])
  })

  it('is refused with where its middle stands, what it needs and how far it has to move', () => {
    const [inside] = problemsWith({ [`${top}.y`]: '6 mm' })
    // SOURCE hand (1 mm inside; 1.506 − 1 + 0.001 = 0.507 mm)
    expect(inside.found).toContain('a hole of 3.012 mm with its middle 1 mm inside of its part’s outline')
    expect(inside.needed).toContain('1.506 mm')
    expect(inside.wayOut).toContain('0.507 mm')
    const [outside] = problemsWith({ [`${top}.y`]: '9 mm' })
    expect(outside.found).toContain('its middle 2 mm outside of its part’s outline')
    const [on] = problemsWith({ [`${top}.y`]: '7 mm' })
    expect(on.found).toContain('on its part’s outline')
  })

  it('is as long as its slot', () => {
    // SOURCE hand (both ends stand 3 mm from the middle of a slot of 6 mm: 49 − 3 − 1.506 − 0.001 = 44.493)
    const slot = (along: string) => ({ [`${top}.slot`]: { length: '6 mm', along }, 'pins.linkTop.fixedIn': undefined })
    const broken = (changes: Changes) => placesWith(changes).filter((one) => one === `${top}: too close`)
    expect(broken({ ...slot('0 deg'), [`${top}.x`]: '44.4929 mm' })).toHaveLength(0)
    expect(broken({ ...slot('0 deg'), [`${top}.x`]: '44.4931 mm' })).toHaveLength(1)
    expect(broken({ ...slot('90 deg'), [`${top}.y`]: '2.4929 mm' })).toHaveLength(0)
    expect(broken({ ...slot('90 deg'), [`${top}.y`]: '2.4931 mm' })).toHaveLength(1)
  })

  it('has no edge to break where its part has no outline', () => {
    expect(
      placesWith({
        'parts.proximal.outline': undefined,
        'parts.proximal.mass': '9 g',
        'parts.proximal.centreOfMass': { x: '22 mm', y: '0 mm' },
        [`${top}.y`]: '9 mm',
      }),
    ).toEqual([])
  })

  it('is not reported again when its place cannot be read', () => {
    expect(placesWith({ [`${top}.y`]: '9 kg' })).toEqual([`${top}.y: wrong unit`])
  })
})
