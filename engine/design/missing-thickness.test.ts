import { describe, expect, it } from 'vitest'
import { exampleText } from './edit/test-support/example-texts.ts'
import { missingThickness } from './missing-thickness.ts'
import { readDesign } from './read-design.ts'

/** The example with one margin asked for, and parts that say neither how thick they are nor where they lie. */
function asked(figure: string, ...thin: readonly string[]): string {
  const { risks: _risks, weight: _weight, ...document } = JSON.parse(exampleText('heron'))
  document.requirements = { one: { figure, atLeast: 0, reason: 'invented', source: 'invented' } }
  for (const id of thin) {
    const { thickness: _, across: __, ...rest } = document.parts[id]
    document.parts[id] = rest
  }
  return JSON.stringify(document)
}

const placesOf = (text: string) => readDesign(text).problems?.map(({ place, code }) => `${place}: ${code}`)

describe('a part that bears load and states no thickness', () => {
  it.each([
    ['the least of all', 'strength.least', ['baseLink', 'proximal', 'middle']],
    ['its bending', 'strength.part.proximal.bending', ['proximal']],
    ['the tension of a link', 'strength.link.baseLink.tension', ['baseLink']],
    ['the holes at a pin of it', 'strength.pin.baseFar.bearing', ['baseLink', 'middle']],
    ['a stop on it', 'strength.stop.shelf.contact', ['middle']],
  ])('is refused where a requirement asks for %s', (_, figure, thin) => {
    const refused = placesOf(asked(figure, 'baseLink', 'proximal', 'middle'))
    // SOURCE property (the parts that the figure hangs on and no others)
    expect(refused?.toSorted()).toEqual(thin.map((id) => `parts.${id}.thickness: missing`).toSorted())
  })

  it('is sound where nothing asks for a margin of it, and is named when somebody does', () => {
    for (const figure of ['return.margin', 'strength.spring.return.set', 'strength.pin.dip.shear']) {
      const { value } = readDesign(asked(figure, 'baseLink', 'topLink'))
      expect(value && missingThickness(value).map(({ place }) => place)).toEqual([
        'parts.baseLink.thickness',
        'parts.topLink.thickness',
      ])
    }
  })

  it('needs no thickness where it says where it lies across the finger, or where there is no load', () => {
    const design = readDesign(asked('return.margin')).value!
    expect(missingThickness(design)).toEqual([])
    const bare = readDesign(asked('return.margin', 'baseLink')).value!
    expect(missingThickness({ ...bare, loadCases: [] })).toEqual([])
  })

  it('is not named again where its thickness itself is at fault', () => {
    const document = JSON.parse(asked('strength.least', 'baseLink'))
    document.parts.baseLink.thickness = '2 kg'
    expect(placesOf(JSON.stringify(document))).toEqual(['parts.baseLink.thickness: wrong unit'])
    document.parts.baseLink.thickness = 2
    expect(placesOf(JSON.stringify(document))).toEqual(['parts.baseLink.thickness: wrong value'])
  })
})
