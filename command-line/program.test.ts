// SOURCE hand (exit statuses: 0 all met, 1 one short, 2 undecided, 3 refused, 64 wrong use, as `fingerwright --help` states them)
import { describe, expect, it } from 'vitest'
import { designSchema } from '../engine/index.ts'
import { version } from '../server/index.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

describe('help and version', () => {
  it('prints the version', async () => {
    expect(await tryCommand(['--version'])).toEqual({ status: 0, output: `${version}\n`, errors: '' })
  })

  it.each([[], ['verdict'], ['motion'], ['hold'], ['new'], ['serve'], ['passphrase'], ['schema']].map((words) => [words]))(
    'is explained for %j',
    async (words) => {
      const { status, output } = await tryCommand([...words, '--help'])
      expect(status).toBe(0)
      expect(output).toContain('fingerwright')
    },
  )

  it('states every exit status', async () => {
    const { output } = await tryCommand(['--help'])
    for (const status of ['0', '1', '2', '3', '64']) expect(output).toMatch(new RegExp(`^ +${status}  `, 'm'))
  })
})

it('schema prints the schema of the engine', async () => {
  expect(JSON.parse((await tryCommand(['schema'])).output)).toEqual(JSON.parse(JSON.stringify(designSchema())))
})
