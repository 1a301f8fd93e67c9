import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readDesign } from '../design/read-design.ts'
import { evaluate, workingsOf } from '../evaluate.ts'

const text = readFileSync(join(import.meta.dirname, '../../designs/heron.json'), 'utf8')

function evaluated(change: (document: ReturnType<typeof JSON.parse>) => void = () => {}) {
  const document = JSON.parse(text)
  change(document)
  const read = readDesign(JSON.stringify(document), 'heron')
  if (read.problems !== undefined) throw new Error(read.problems[0].found)
  return evaluate(read.value)
}
const plain = evaluated()
const figure = (id: string, from = plain) => from.figures.find((one) => one.id === id)
const stepOf = (id: string, name: string, from = plain) =>
  workingsOf(from.design)
    .get(id)
    ?.steps.find((step) => step.name === name)?.value

describe('the spring and the screws of the example', () => {
  it('are figures and stand in the list of what gives first', () => {
    const listed = plain.strength?.ranked.flatMap(({ spring, screw }) => spring ?? screw ?? []) ?? []
    expect([...listed].sort()).toEqual(['front', 'front', 'front', 'rear', 'rear', 'rear', 'return', 'return', 'return'])
  })

  it('wind the spring from its preload by the travel of the MCP', () => {
    const turn = (['open', 'closed'] as const).map((end) => Number(figure(`${end}.joint.mcp.flexion`)?.value))
    const most = 60 + ((1.2 * 180) / Math.PI) * (turn[1] - turn[0])
    // SOURCE hand (60 N·mm as drawn, which is open, and 1.2 N·mm for each degree of the travel)
    expect(stepOf('strength.spring.return.set', 'least torque of one spring on the travel')).toBeCloseTo(60, 6)
    expect(stepOf('strength.spring.return.set', 'largest torque of one spring on the travel')).toBeCloseTo(most, 6)
  })

  it('pull at the screws by the bag and the thumb on the fingertip, and by nothing that stays within the finger', () => {
    const pull = Number(stepOf('strength.screw.front.proof', 'pull of the load'))
    expect(pull).toBeGreaterThan(0)
    // SOURCE property (a stiffer spring presses parts of the finger on one another, not on the hand)
    const stiff = evaluated((document) => {
      const spring = document.springs.return
      spring.preload = '90 N*mm'
      spring.wire.woundUp = '75 deg'
    })
    expect(stepOf('strength.screw.front.proof', 'pull of the load', stiff)).toBeCloseTo(pull, 6)
  })

  it('are left out of a design that states neither, and the spring is known where no load acts', () => {
    const bare = evaluated((document) => {
      document.springs.return.wire = undefined
      document.screws = undefined
      document.parts.mount.masked = undefined
    })
    expect(bare.figures.filter(({ id }) => /^strength\.(spring|screw)/.test(id))).toEqual([])
    const idle = evaluated((document) => {
      document.loadCases = undefined
      document.use.shares = undefined
      document.requirements = undefined
      document.risks = undefined
    })
    expect(figure('strength.spring.return.set', idle)?.value).toBe(figure('strength.spring.return.set')?.value)
    expect(figure('strength.least', idle)?.value).toBeUndefined()
  })
})
