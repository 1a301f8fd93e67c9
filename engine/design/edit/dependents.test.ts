import { describe, expect, it } from 'vitest'
import { dependents } from './dependents.ts'
import { isRemovable, removalOf } from './removal.ts'
import { exampleText } from './test-support/example-texts.ts'

describe('heron', () => {
  const heron = exampleText('heron')

  it('says who names the pin of its distal joint', () => {
    // SOURCE hand (read off the file)
    expect(dependents(heron, ['pins', 'dip']).map(({ says }) => says)).toEqual(['toggle distal: pin 3', 'order pins: pin 3'])
    expect(dependents(heron, ['pins', 'pip']).map(({ says }) => says)).toEqual([
      'requirement pipFlexion: figure',
      'order pins: pin 2',
    ])
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
        { says: 'order links: part 2' },
      ],
    })
  })

  it('lets its stop, a requirement and its weight go', () => {
    for (const place of [['stops', 'shelf'], ['requirements', 'effort'], ['weight']]) {
      const { changes } = removalOf(heron, place)
      expect(changes).toEqual([{ kind: 'remove', place }])
    }
  })

  it('lets its spring go with the order and the grease for it, and a part out of an order for several', () => {
    const remove = (...place: readonly (string | number)[]) => ({ kind: 'remove', place })
    const { springs: _, grease: __, ...unsprung } = JSON.parse(heron)
    const spare = { ...unsprung, parts: { ...unsprung.parts, spare: { role: 'other' } } }
    spare.orders.spring.springs = undefined
    spare.orders.spring.parts = ['spare', 'mount', 'middle']
    // SOURCE hand (read off the files)
    expect(removalOf(heron, ['springs', 'return']).changes).toEqual([
      remove('grease', 'arbour'),
      remove('orders', 'spring'),
      remove('springs', 'return'),
    ])
    expect(removalOf(JSON.stringify(spare), ['parts', 'spare'])).toEqual({
      changes: [remove('orders', 'spring', 'parts', 0), remove('parts', 'spare')],
    })
  })

  it('lets a hole go with its mask, and the list of masks with the last of them', () => {
    const remove = (...place: readonly (string | number)[]) => ({ kind: 'remove', place })
    const masking = (...masked: readonly string[]) => {
      const document = JSON.parse(heron)
      document.parts.mount.holes.eye = { x: '-9 mm', y: '3 mm', diameter: '2 mm' }
      document.parts.mount.masked = masked
      return JSON.stringify(document)
    }
    const eye = ['parts', 'mount', 'holes', 'eye']
    // SOURCE hand (read off the files)
    expect(removalOf(masking('threads.rear', 'holes.eye'), eye)).toEqual({
      changes: [remove('parts', 'mount', 'masked', 1), remove(...eye)],
    })
    expect(removalOf(masking('holes.eye'), eye)).toEqual({ changes: [remove('parts', 'mount', 'masked'), remove(...eye)] })
    expect(removalOf(masking('threads.rear'), ['screws', 'rear']).changes).toContainEqual(remove('parts', 'mount', 'masked'))
  })

  it('lets a place of the rack and a corner go, and keeps a corner without which a rack would touch beside the part', () => {
    const remove = (...place: readonly (string | number)[]) => ({ kind: 'remove', place })
    const rack = ['parts', 'mount', 'racks', 1]
    expect([isRemovable(rack), isRemovable(['drive'])]).toEqual([true, false])
    expect(removalOf(heron, rack).changes).toEqual([remove(...rack)])
    expect(removalOf(heron, ['parts', 'mount', 'outline', 2]).changes).toHaveLength(1)
    expect(removalOf(heron, ['parts', 'proximal', 'outline', 9])).toMatchObject({ problems: [{ code: 'outside' }] })
  })

  it('keeps what it cannot do without, and says what it would lack', () => {
    expect(removalOf(heron, ['drive'])).toMatchObject({ dependents: [], problems: [{ place: 'drive' }] })
    expect(removalOf(heron, ['pins', 'mcp', 'joins', 0])).toMatchObject({ problems: [{ place: 'pins.mcp.joins' }] })
    expect(removalOf(heron, ['loadCases', 'carry', 'forces', 0])).toMatchObject({ problems: [{ place: 'loadCases.carry' }] })
  })
})
