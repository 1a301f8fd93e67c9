import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readSpreadAsked } from './spread-asked.ts'
import { testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const plain = join(import.meta.dirname, '../cases/documents/plain-toggle.json')
const folder = testFolder()

/** The plain toggle, whose sizes have the general tolerance; nothing is required of it. */
function toleratedToggle(): string {
  const document = JSON.parse(readFileSync(plain, 'utf8'))
  const file = join(folder, 'toggle.json')
  writeFileSync(file, JSON.stringify({ ...document, generalTolerance: 'ISO 2768-m' }))
  return file
}

describe('fingerwright spread', () => {
  it('counts, prints the same for the same seed, and draws no ruler where there is no window', async () => {
    const file = toleratedToggle()
    const first = await tryCommand(['spread', file, '--samples', '32', '--seed', '4'])
    expect(first.errors).toBe('')
    expect(first.output).toContain('Seed 4, 32 samples')
    expect((await tryCommand(['spread', file, '--samples', '32', '--seed', '4'])).output).toBe(first.output)
    const { output, status } = await tryCommand(['spread', file, '--samples', '32', '--json'])
    const document = JSON.parse(output)
    expect(document).toMatchObject({ seed: 1, samples: 32, target: 0.99 })
    expect(status).toBe(0)
    const ruler = await tryCommand(['spread', file, '--samples', '1', '--ruler', join(folder, 'ruler.svg')])
    expect(ruler.status).toBe(64)
    expect(ruler.errors).toContain('this design has no hold window')
  })

  it('refuses a design that is out of order with status 3, and options that it cannot read with 64', async () => {
    const broken = join(folder, 'broken.json')
    writeFileSync(broken, '{ "format": "fingerwright-design/1" }')
    expect((await tryCommand(['spread', broken])).status).toBe(3)
    const wrong = await tryCommand(['spread', plain, '--samples', 'many'])
    expect(wrong.status).toBe(64)
    expect(wrong.errors).toContain('--samples takes a whole number')
  })

  it('reads a target as a share or as a percentage, inside of its limits only', () => {
    // SOURCE hand (99.5 / 100)
    expect(readSpreadAsked({ target: '99.5 %' }).target_ratio).toBeCloseTo(0.995, 12)
    expect(readSpreadAsked({ target: '0.9' }).target_ratio).toBe(0.9)
    for (const target of ['100 %', '0', '-1', 'all']) expect(() => readSpreadAsked({ target })).toThrow('--target takes a share')
    for (const seed of ['-1', '4294967296', '1.5']) expect(() => readSpreadAsked({ seed })).toThrow('--seed takes')
  })
})
