/** Every thing of two designs: who names it, its removal, another name for it. */
import { describe, expect, it } from 'vitest'
import type { Place } from '../json-places.ts'
import { readDesign } from '../read-design.ts'
import { changeDocument } from './change-document.ts'
import { dependents } from './dependents.ts'
import { removalOf } from './removal.ts'
import { renamed } from './renamed.ts'
import { exampleText } from './test-support/example-texts.ts'
import { thingsOf } from './test-support/things-of.ts'

/** Places at which the reader of designs misses a name once a thing is gone. */
function missedWithout(text: string, place: Place): readonly string[] {
  const problems = readDesign(changeDocument(text, [{ kind: 'remove', place }])).problems ?? []
  return problems.filter(({ code }) => code === 'unknown name').map((problem) => problem.place)
}

describe.each(['kestrel', 'crane'])('of every thing of %s', (name) => {
  const text = exampleText(name)
  const things = thingsOf(JSON.parse(text))

  it('the reader of designs misses at each place that names it', () => {
    expect(things.length).toBeGreaterThan(27) // SOURCE hand (kestrel has 6 parts with 14 holes and 7 pins alone)
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
      const changes = removal.changes ?? [{ kind: 'remove', place } as const]
      const after = readDesign(changeDocument(text, changes)).problems
      if (removal.changes) expect(after, place.join('.')).toBeUndefined()
      else expect(removal.dependents.length + removal.problems.length, place.join('.')).toBeGreaterThan(0)
    }
  })
})

describe.each(['kestrel', 'crane'])('every thing of %s under another name', (name) => {
  const text = exampleText(name)
  it('leaves a file without problems, in which everybody names it so; named back the file is the old one', () => {
    for (const place of thingsOf(JSON.parse(text))) {
      const to = 'quiteAnotherName'
      const there = renamed(text, place, to)
      expect(there.problems, place.join('.')).toBeUndefined()
      const changed = changeDocument(text, there.value ?? [])
      const renamedPlace = [...place.slice(0, -1), to]
      expect(readDesign(changed).problems, place.join('.')).toBeUndefined()
      // SOURCE property (a name is only a name: as many name it as before, and the way back is the way)
      expect(dependents(changed, renamedPlace).length, place.join('.')).toBe(dependents(text, place).length)
      const back = renamed(changed, renamedPlace, String(place.at(-1)))
      expect(changeDocument(changed, back.value ?? []), place.join('.')).toBe(text)
    }
  })
})
