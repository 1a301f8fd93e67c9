import { describe, expect, it } from 'vitest'
import type { Place } from '../json-places.ts'
import { readDesign } from '../read-design.ts'
import { changeDocument } from './change-document.ts'
import { dependents } from './dependents.ts'
import { removalOf } from './removal.ts'
import { exampleText } from './test-support/example-texts.ts'
import { thingsOf } from './test-support/things-of.ts'

/** Places at which the reader of designs misses a name once a thing is gone. */
function missedWithout(text: string, place: Place): readonly string[] {
  const problems = readDesign(changeDocument(text, [{ kind: 'remove', place }])).problems ?? []
  return problems.filter(({ code }) => code === 'unknown name').map((problem) => problem.place)
}

describe.each(['heron', 'crane'])('of every thing of %s', (name) => {
  const text = exampleText(name)
  const things = thingsOf(JSON.parse(text))

  it('the reader of designs misses at each place that names it', () => {
    expect(things.length).toBeGreaterThan(30) // SOURCE hand (heron has 6 parts with 14 holes and 7 pins alone)
    for (const place of things) {
      const named = dependents(text, place).map((one) => one.place.join('.'))
      // SOURCE other-method (the thing is taken out and the file is read). Expressions of dimensions that miss a name have no value
      // themselves, and the reader does not say the same fault again where they are used.
      expect(named, place.join('.')).toEqual(expect.arrayContaining([...missedWithout(text, place)]))
      const isUnderstated = place[0] === 'dimensions' || place[0] === 'parts'
      if (!isUnderstated) expect(new Set(named), place.join('.')).toEqual(new Set(missedWithout(text, place)))
    }
  })

  it('it is removed when nobody names it and the file can do without, and only then', () => {
    for (const place of things) {
      const removal = removalOf(text, place)
      const after = readDesign(changeDocument(text, [{ kind: 'remove', place }])).problems
      if (removal.changes) expect(after, place.join('.')).toBeUndefined()
      else expect(removal.dependents.length + removal.problems.length, place.join('.')).toBeGreaterThan(0)
    }
  })
})

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
