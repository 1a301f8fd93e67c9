import { describe, expect, it } from 'vitest'
import { changeDocument } from '../design/edit/change-document.ts'
import { deskOf } from '../design/edit/desk.ts'
import { exampleText } from '../design/edit/test-support/example-texts.ts'
import { readDesign } from '../design/read-design.ts'
import { evaluate } from '../evaluate.ts'
import { helpingChanges } from './helping-changes.ts'
import { sizeInputs } from './sensitivity-inputs.ts'

const heron = exampleText('heron')
const leastOf = (text: string): number => evaluate(readDesign(text).value!).strength?.ranked[0].margin ?? Number.NaN

/** Heron with nothing but one size to try: all others are expressions. */
function withOneSize(): string {
  const others = sizeInputs(deskOf(heron)).filter(
    ({ place, up }) => up.length === 1 && place.join('.') !== 'dimensions.topLinkLength.value',
  )
  const tied = others.map(
    ({ place, typed }) => ({ kind: 'set', place, value: `${typed} + 0 * topLinkLength / 1 mm * (${typed})` }) as const,
  )
  return changeDocument(heron, tied)
}

describe('which change helps most', () => {
  it('is what two documents made by hand gain', () => {
    const text = withOneSize()
    const inputs = sizeInputs(deskOf(text))
    const run = helpingChanges(text)
    let step = run.next()
    while (!step.done) step = run.next()
    const { changes, tried_count, first } = step.value
    expect(tried_count).toBe(inputs.length)
    const link = changes.find(({ input }) => input.place.join('.') === 'dimensions.topLinkLength.value')
    const [now, less, more] = ['24.507 mm', '24.407 mm', '24.607 mm'].map((length) =>
      leastOf(text.replace('"24.507 mm"', `"${length}"`)),
    )
    // SOURCE other-method (three documents, the length written in, evaluated apart)
    expect(first?.margin).toBe(now)
    expect(link).toMatchObject({ way: less > more ? 'down' : 'up' })
    expect(link?.gain).toBeCloseTo(Math.max(less, more) - now, 9)
  })

  it('looks at sizes and neither at who uses the finger nor at what is asked of it', () => {
    const places = sizeInputs(deskOf(heron)).map(({ place }) => place.join('.'))
    expect(places).toContain('screws.front.torque')
    expect(places).toContain('springs.return.wire.diameter')
    expect(places).toContain('parts.proximal.thickness')
    expect(places.filter((place) => /^(loadCases|friction|requirements|factors|use)\b|pads|outline/.test(place))).toEqual([])
  })

  it('steps pins together with their holes, which a pin alone would not go into', () => {
    const [pins] = sizeInputs(deskOf(heron))
    const { parts, pins: made } = readDesign(changeDocument(heron, pins.up)).value!
    // SOURCE hand (3 + 0.1 and 3.012 + 0.1 mm)
    for (const { diameter_mm, joins } of made) {
      expect(diameter_mm).toBeCloseTo(3.1, 9)
      for (const { part, hole } of joins) expect(parts[part].holes[hole].diameter_mm).toBeCloseTo(3.112, 9)
    }
    // Holes that follow their pin are not moved twice.
    const following = JSON.parse(heron)
    following.dimensions.holeDiameter.value = 'pinDiameter + 0.012 mm'
    const [one] = sizeInputs(deskOf(JSON.stringify(following)))
    expect(one.up).toHaveLength(1)
  })

  it('gives nothing for a document that cannot be read', () => {
    expect(helpingChanges('{').next()).toEqual({ done: true, value: { changes: [], tried_count: 0 } })
  })
})
