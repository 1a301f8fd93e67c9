// SOURCE hand (exit statuses: 0 all met, 1 one short, 2 undecided, 3 refused, 64 wrong use, as `fingerwright --help` states them)
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readDesign } from '../engine/index.ts'
import { testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()

describe('new', () => {
  it('writes a design that is read without problems, under the name of its file', async () => {
    const path = join(folder, 'my finger.json')
    const { status, output } = await tryCommand(['new', path])
    expect(status).toBe(0)
    expect(output).toContain(path)
    const design = readDesign(readFileSync(path, 'utf8'))
    expect(design.problems).toBeUndefined()
    expect(design.value?.title).toBe('my finger')
  })

  it('never overwrites', async () => {
    const path = join(folder, 'kept.json')
    writeFileSync(path, 'mine')
    const { status, errors } = await tryCommand(['new', path])
    expect(status).toBe(64)
    expect(errors).toContain('exists already')
    expect(readFileSync(path, 'utf8')).toBe('mine')
  })

  it.each(['finger.txt', 'nowhere/finger.json'])('does not write %s', async (name) => {
    const { status, errors } = await tryCommand(['new', join(folder, name)])
    expect(status).toBe(64)
    expect(errors).toContain(name)
  })
})
