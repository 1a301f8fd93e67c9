// SOURCE hand (exit statuses as `fingerwright --help` states them; the example design for what stands in it)
import { describe, expect, it } from 'vitest'
import { readDesign } from '../engine/index.ts'
import { caution } from '../report/index.ts'
import { example, examplePath } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

describe('springs', () => {
  it('lists coils that do what the spring of the example does, and ends with the caution', async () => {
    const { status, output } = await tryCommand(['springs', examplePath, 'return'])
    expect(status).toBe(0)
    expect(output).toMatch(/^Spring return has to give 60.0 to 150 N·mm over/)
    expect(output).toContain('music wire')
    expect(output.replaceAll('\n', ' ')).toContain(caution)
  })

  it('prints springs that the design takes over as they stand', async () => {
    const { output } = await tryCommand(['springs', examplePath, '--json'])
    const { springs } = JSON.parse(output)
    expect(springs.length).toBeGreaterThan(2)
    const { rate, preload, wire } = springs[0]
    const spring = {
      ...example.springs.return,
      rate,
      preload,
      wire: { ...example.springs.return.wire, outside: undefined, ...wire },
    }
    expect(readDesign(JSON.stringify({ ...example, springs: { return: spring } })).problems).toBeUndefined()
  })

  it('calls no room what rounding leaves of it', async () => {
    const roomy = { ...example.springs.return, room: { outside: '14 mm', width: '15 mm' } }
    const input = JSON.stringify({ ...example, springs: { return: roomy } })
    const { output } = await tryCommand(['springs', '-'], { input })
    // SOURCE property (a coil as wide as its room leaves nothing around it)
    expect(output).toMatch(/ 14\.0 .* 0 and 0\.91\n/)
    expect(output).not.toContain('10⁻')
  })

  it('asks for the room that is not stated, and for a spring that there is', async () => {
    const { room: _, ...roomless } = example.springs.return
    const input = JSON.stringify({ ...example, springs: { return: roomless } })
    const { status, errors } = await tryCommand(['springs', '-'], { input })
    expect(status).toBe(3)
    expect(errors).toContain('springs.return.room: nothing.')
    const unknown = await tryCommand(['springs', examplePath, 'push'])
    expect(unknown.status).toBe(64)
    expect(unknown.errors).toContain('it has return')
  })
})
