import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { tableCoatings } from '../design/read-coatings.ts'
import { readDesign } from '../design/read-design.ts'
import { evaluate } from '../evaluate.ts'
import type { Evaluation, Figure } from './evaluation.ts'

const read = readDesign(readFileSync(new URL('../../designs/heron.json', import.meta.url), 'utf8'), 'heron')
if (!read.value) throw new Error('the example is refused')
const heron = read.value
const evaluated = evaluate(heron)
const figure = ({ figures }: Evaluation, id: string): Figure | undefined => figures.find((one) => one.id === id)
const value = (evaluation: Evaluation, id: string): number => Number(figure(evaluation, id)?.value)
const leaning = (change: Partial<Design['loadCases'][number]>): Evaluation =>
  evaluate({ ...heron, loadCases: heron.loadCases.map((one) => (one.id === 'sidePush' ? { ...one, ...change } : one)) })

describe('a finger leant on, as figures', () => {
  it('has its hinges and phalanges in the list of what gives first', () => {
    const names = evaluated.strength?.ranked.map(({ figure: id }) => id) ?? []
    for (const id of ['pin.mcp', 'pin.pip', 'pin.dip', 'part.proximal', 'part.middle', 'part.distal']) {
      expect(names).toContain(`strength.${id}.sideLoad`)
    }
    expect(figure(evaluated, 'strength.pin.topNear.sideLoad')).toMatchObject({ beyond: 'above any' })
  })

  it('is worse off straight than hooked', () => {
    // SOURCE property (the lever from the knuckle to the tip is longest when the finger is straight: all postures include the closed one)
    const allTheWay = leaning({ acts: 'travel' })
    expect(value(allTheWay, 'strength.pin.mcp.sideLoad')).toBeLessThan(0.6 * value(evaluated, 'strength.pin.mcp.sideLoad'))
    expect(allTheWay.strength?.ranked.find(({ figure: id }) => id === 'strength.pin.mcp.sideLoad')?.at?.arc_ratio).toBeLessThan(
      0.1,
    )
  })

  it('is spared where nobody pushes', () => {
    const still = evaluate({ ...heron, loadCases: heron.loadCases.filter(({ id }) => id !== 'sidePush') })
    expect(figure(still, 'strength.pin.mcp.sideLoad')?.why).toBe('no load case pushes it from the side')
  })
})

describe('cracks from use, as figures', () => {
  it('come sooner the longer the life', () => {
    // SOURCE property (the line of strength against life falls)
    const longer = evaluate({ ...heron, use: { closingsPerDay: 3000, years: 5 } })
    for (const id of ['strength.pin.topNear.fatigue', 'strength.pin.topNear.lugFatigue', 'strength.pin.mcp.lugFatigue']) {
      expect(value(longer, id)).toBeLessThan(value(evaluated, id))
    }
  })

  it('cannot be told without a life', () => {
    const { use: _, ...rest } = heron
    expect(figure(evaluate(rest), 'strength.pin.mcp.fatigue')).toMatchObject({ why: expect.stringContaining('(use)') })
  })

  it('come later in lugs that are not hard anodised', () => {
    const bare = evaluate({ ...heron, parts: heron.parts.map(({ coating: _, ...part }) => part) })
    // SOURCE property (a hard skin lowers the fatigue strength and leaves the static one)
    expect(value(bare, 'strength.pin.dip.lugFatigue')).toBeGreaterThan(value(evaluated, 'strength.pin.dip.lugFatigue'))
    expect(value(bare, 'strength.pin.dip.bearing')).toBe(value(evaluated, 'strength.pin.dip.bearing'))
  })
})

it('leaves open what a hot cure leaves of a hardened alloy, and says what happened to it', () => {
  const hot = tableCoatings.get('bonded MoS2 film, hot cure')
  const parts = heron.parts.map((part) => (part.id === 'middle' && hot ? { ...part, coating: hot } : part))
  const cured = evaluate({ ...heron, parts })
  expect(figure(cured, 'strength.part.middle.bending')).toMatchObject({
    why: 'material 7075-T6 after 60 min at 204 °C states no yield strength and no ultimate strength',
  })
})
