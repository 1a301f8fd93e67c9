// SOURCE hand (exit statuses as `fingerwright --help` states them; the example's joints for what hangs on what)
import { describe, expect, it } from 'vitest'
import { caution } from '../report/index.ts'
import { example, examplePath } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

describe('breaks', () => {
  it('says what the example does without each of its members, and ends with the caution', async () => {
    const { output } = await tryCommand(['breaks', examplePath])
    expect(output.replaceAll('\n', ' ')).toContain('No break sheds a piece; it stays closed without spring return.')
    expect(output).toMatch(/part topLink .* opens in part +– +distal\n/)
    expect(output.replaceAll('\n', ' ')).toContain(caution)
  })

  it('judges the stated order for machines, and asks for none that is not stated', async () => {
    const { status, output } = await tryCommand(['breaks', examplePath, '--json'])
    const { order } = JSON.parse(output).breaks
    expect(order.steps.map((step: { member: string }) => step.member)).toEqual(
      example.givesWay.map((member: object) => Object.entries(member)[0].join(' ')),
    )
    expect(status).toBe({ met: 0, short: 1, undecided: 2 }[order.verdict as 'met'])
    const { givesWay: _, ...unasked } = example
    const plain = await tryCommand(['breaks', '-', '--json'], { input: JSON.stringify(unasked) })
    expect(plain.status).toBe(0)
    expect(JSON.parse(plain.output).breaks.order).toBeUndefined()
  })
})
