import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Design } from './design/design.ts'
import { figureNames } from './design/figure-names.ts'
import { readDesign } from './design/read-design.ts'
import { evaluate } from './evaluate.ts'
import { askedFigures, evaluateAsked } from './evaluate-asked.ts'
import { garbled } from './sketches/garbled-finger.ts'
import { type Seeded, seeded } from './sketches/seeded.ts'

function shown(name: string): Design {
  const { value } = readDesign(readFileSync(new URL(`../designs/${name}.json`, import.meta.url), 'utf8'), name)
  if (!value) throw new Error(`${name} is refused`)
  return value
}

/** A few figures of a design, and a requirement on one more: bounds are nobody's, only the finding is looked at. */
function someAsked(design: Design, { between }: Seeded): { readonly asking: Design; readonly also: readonly string[] } {
  const names = figureNames(design).map(({ id }) => id)
  const some = (): string => names[Math.floor(between(0, names.length))]
  const requirements = [some(), some()].map((figure, index) => {
    return {
      id: `r${index}`,
      figure,
      bound: { kind: 'atLeast', value: 0.1, unit: '', typed: '0.1' },
      reason: '',
      source: '',
    } as const
  })
  return { asking: { ...design, requirements }, also: [some(), some()] }
}

describe('what is asked for is what evaluating everything gives, to the last bit', () => {
  it.each(['heron', 'kestrel', 'heron-jams'])('%s, asked for figures at random', (name) => {
    const dice = seeded(7)
    const design = shown(name)
    for (let trial = 0; trial < 6; trial++) {
      const { asking, also } = someAsked(design, dice)
      const asked = askedFigures(asking, also)
      const found = evaluateAsked(asking, asked)
      const all = evaluate(asking)
      // SOURCE property
      expect(found.figures).toEqual(all.figures.filter(({ id }) => asked.has(id)))
      expect(found.findings).toEqual(all.findings)
      expect(found.endsBy).toBe(all.travel?.endsBy)
    }
  })

  it('a link whose stiffness nobody has stated puts the same findings in doubt', () => {
    const heron = shown('heron')
    const parts = heron.parts.map((part) => {
      const { stiffness_N_mm: _, ...rest } = part
      return part.role === 'link' ? rest : part
    })
    const design = { ...heron, parts }
    const findings = evaluateAsked(design, askedFigures(design, [])).findings
    expect(findings).toEqual(evaluate(design).findings)
  })

  it('garbled fingers', () => {
    const heron = shown('heron')
    const dice = seeded(19)
    for (let trial = 0; trial < 40; trial++) {
      const design = garbled(heron, dice)
      const { asking, also } = someAsked(design, dice)
      const all = evaluate(asking)
      expect(evaluateAsked(asking, askedFigures(asking, also)).findings).toEqual(all.findings)
    }
  })
})
