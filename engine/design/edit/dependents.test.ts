import { describe, expect, it } from 'vitest'
import { dependents } from './dependents.ts'
import { removalOf } from './removal.ts'
import { exampleText } from './test-support/example-texts.ts'

describe('heron', () => {
  const heron = exampleText('heron')

  it('says who names the pin of its distal joint', () => {
    // SOURCE hand (read off the file)
    expect(dependents(heron, ['pins', 'dip']).map(({ says }) => says)).toEqual(['toggle distal: pin 3'])
    expect(dependents(heron, ['pins', 'pip']).map(({ says }) => says)).toEqual(['requirement pipFlexion: figure'])
  })

  it('says who uses a dimension', () => {
    const says = dependents(heron, ['dimensions', 'drawnFlexion']).map((one) => one.says)
    // SOURCE hand (read off the file)
    expect(says).toEqual(['part middle: drawn turn', 'part distal: drawn x', 'part distal: drawn y', 'part distal: drawn turn'])
  })

  it('keeps a link while its pins and the stop are there', () => {
    const removal = removalOf(heron, ['parts', 'topLink'])
    // SOURCE hand (read off the file)
    expect(removal).toMatchObject({
      dependents: [
        { says: 'pin topNear: hole 2' },
        { says: 'pin topFar: hole 2' },
        { says: 'stop shelf: round part' },
        { says: 'stop shelf: round hole' },
        { says: 'gives way 1: part' },
      ],
    })
  })

  it('lets its spring, its stop, a requirement and its weight go', () => {
    for (const place of [['springs', 'return'], ['stops', 'shelf'], ['requirements', 'effort'], ['weight']]) {
      const { changes } = removalOf(heron, place)
      expect(changes).toEqual([{ kind: 'remove', place }])
    }
  })

  it('keeps what it cannot do without, and says what it would lack', () => {
    expect(removalOf(heron, ['drive'])).toMatchObject({ dependents: [], problems: [{ place: 'drive' }] })
    expect(removalOf(heron, ['pins', 'mcp', 'joins', 0])).toMatchObject({ problems: [{ place: 'pins.mcp.joins' }] })
    expect(removalOf(heron, ['loadCases', 'carry', 'forces', 0])).toMatchObject({ problems: [{ place: 'loadCases.carry' }] })
  })
})
