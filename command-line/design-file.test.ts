// SOURCE hand (exit statuses: 0 all met, 1 one short, 2 undecided, 3 refused, 64 wrong use, as `fingerwright --help` states them)
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { documentLimit_bytes } from '../server/index.ts'
import { examplePath, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()

describe('a file', () => {
  it.each([
    ['that is not there', 'nothing.json', 'no such file'],
    ['that is a folder', '.', 'folder'],
    ['below a file', 'plain.txt/design.json', 'not a folder'],
  ])('%s is named with the reason, and ends with 64', async (_what, name, reason) => {
    writeFileSync(join(folder, 'plain.txt'), 'plain')
    const path = join(folder, name)
    const { status, errors } = await tryCommand(['verdict', path])
    expect(status).toBe(64)
    expect(errors).toContain(path)
    expect(errors).toContain(reason)
  })

  it.each([
    ['that is empty', ''],
    ['that is not UTF-8', new Uint8Array([0x7b, 0x22, 0xff, 0x22, 0x7d])],
    ['over the limit', ' '.repeat(documentLimit_bytes + 1)],
    ['that is no JSON', 'finger'],
  ])('%s is refused with 3', async (_what, content) => {
    const path = join(folder, 'content.json')
    writeFileSync(path, content)
    const { status, errors } = await tryCommand(['verdict', path])
    expect(status).toBe(3)
    expect(errors).toContain(path)
  })

  it('is taken from the standard input for "-"', async () => {
    const named = await tryCommand(['verdict', examplePath])
    const piped = await tryCommand(['verdict', '-'], { input: readFileSync(examplePath) })
    expect(piped.output).toBe(named.output)
    expect(piped.status).toBe(named.status)
  })
})
