// SOURCE hand (exit status 64 as `fingerwright --help` states it) and standard RFC 9110 (421, 401, 200), from memory
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { send } from '../server/test-support/raw-request.ts'
import { example, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const home = testFolder()
const store = join(home, 'store')

beforeAll(async () => {
  mkdirSync(join(home, 'build/page'), { recursive: true })
  mkdirSync(join(home, 'designs'))
  writeFileSync(join(home, 'build/page/index.html'), '<!doctype html><title>page</title>')
  writeFileSync(join(home, 'build/page/sign-in.html'), '<!doctype html><title>sign in</title><p><!-- said --></p>')
  writeFileSync(join(home, 'designs/heron.json'), JSON.stringify(example))
  await tryCommand(['passphrase', '--store', store], { input: 'four plain words here' })
})

/** Serves until it was looked at; gives what was printed and what the look brought. */
async function serving<Seen>(words: readonly string[], look: (address: string) => Promise<Seen>) {
  const seen: Seen[] = []
  const { output, errors, status } = await tryCommand(['serve', ...words, '--port', '0', '--store', store], {
    home,
    whileServing: async (printed) => {
      const port = /:(\d+)\//.exec(printed)?.[1]
      if (port !== undefined) seen.push(await look(`http://127.0.0.1:${port}/`))
    },
  })
  return { output, errors, status, seen: seen[0] }
}

const statusUnder = (host: string) => async (address: string) =>
  (await send(address, { path: '/api/designs', headers: { host } })).status

describe('serve', () => {
  it('asks nobody to sign in on loopback', async () => {
    expect(await serving([], statusUnder('localhost'))).toMatchObject({ status: 0, seen: 200 })
  })

  it.each([
    ['--host', '127.0.0.1'],
    ['--name', 'bench.example'],
    ['--name', 'https://bench.example'],
  ])('has everybody sign in once %s %s lets others in', async (...words) => {
    expect(await serving(words, statusUnder('127.0.0.1'))).toMatchObject({ status: 0, seen: 401 })
  })

  it('answers under the address and the names that it was told, and no other', async () => {
    const words = ['--host', '127.0.0.1', '--name', 'bench.example', '--name', 'bench', join(home, 'designs/heron.json')]
    for (const host of ['127.0.0.1', 'bench.example', 'bench:4117']) {
      expect((await serving(words, statusUnder(host))).seen, host).toBe(401)
    }
    for (const host of ['localhost', 'evil.example']) expect((await serving(words, statusUnder(host))).seen, host).toBe(421)
  })

  it('says that plain HTTP can be listened to, where it goes over a network', async () => {
    const open = await serving(['--host', '0.0.0.0', '--name', 'bench.example'], statusUnder('bench.example'))
    expect(open).toMatchObject({ status: 0, seen: 401 })
    expect(open.output).toMatch(/The page is at http:\/\/bench\.example:\d+\//)
    expect(open.output).toContain('plain HTTP')
    expect(open.output).toContain('SSH tunnel')
    for (const words of [[], ['--host', '127.0.0.1'], ['--name', 'https://bench.example']]) {
      expect((await serving(words, async () => undefined)).output).not.toContain('plain HTTP')
    }
  })

  it.each([
    ['a name as an address', ['--host', 'bench.example'], 'names go with --name'],
    ['an address with a zone', ['--host', 'fe80::1%lo'], 'IP address'],
    ['every address without a name', ['--host', '0.0.0.0'], '--name'],
    ['every IPv6 address without a name', ['--host', '::'], '--name'],
    ['an address of another machine', ['--host', '192.0.2.1'], 'no address of this machine'],
    ['a name with a port', ['--name', 'bench.example:80'], 'without a port'],
    ['an empty name', ['--name', ''], '--name ""'],
  ])('refuses %s', async (_what, words, says) => {
    const { status, errors } = await tryCommand(['serve', ...words, '--port', '0', '--store', store], { home })
    expect(status).toBe(64)
    expect(errors).toContain(says)
  })

  it.each([
    ['--host', '127.0.0.1'],
    ['--host', '0.0.0.0'],
    ['--name', 'bench.example'],
  ])('lets nobody in by %s %s before a passphrase is set, and says how to set one', async (...words) => {
    const empty = join(home, 'empty')
    const { status, output, errors } = await tryCommand(['serve', ...words, '--store', empty], { home })
    expect({ status, output }).toEqual({ status: 64, output: '' })
    expect(errors).toContain(`no passphrase is set in ${empty}`)
    expect(errors).toContain(`fingerwright passphrase --store ${empty}`)
  })
})
