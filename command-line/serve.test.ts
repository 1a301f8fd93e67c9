// SOURCE hand (exit statuses: 0 all met, 1 one short, 2 undecided, 3 refused, 64 wrong use, as `fingerwright --help` states them)
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { example, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()

describe('serve', () => {
  /** A program with a page and one example of its own. */
  function installed(): string {
    const home = join(folder, 'home')
    mkdirSync(join(home, 'build/page'), { recursive: true })
    mkdirSync(join(home, 'designs'), { recursive: true })
    writeFileSync(join(home, 'build/page/index.html'), '<!doctype html><title>page</title>')
    writeFileSync(join(home, 'designs/heron.json'), JSON.stringify(example))
    return home
  }

  async function servedNames(words: readonly string[]): Promise<readonly string[]> {
    const names: string[] = []
    const { status } = await tryCommand(['serve', ...words, '--port', '0'], {
      home: installed(),
      whileServing: async (output) => {
        const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(output)?.[0] ?? ''
        const { designs } = (await (await fetch(`${address}api/designs`)).json()) as { designs: { name: string }[] }
        names.push(...designs.map((design) => design.name))
      },
    })
    expect(status).toBe(0)
    return names
  }

  it('shows the examples, and the design that it was given before them', async () => {
    const path = join(folder, 'own.json')
    writeFileSync(path, JSON.stringify(example))
    expect(await servedNames([])).toEqual(['heron'])
    expect(await servedNames([path])).toEqual(['own', 'heron'])
  })

  it('lists an example that it was given only once, and another file of its name apart', async () => {
    mkdirSync(join(folder, 'own'), { recursive: true })
    writeFileSync(join(folder, 'own/heron.json'), JSON.stringify(example))
    expect(await servedNames([join(installed(), 'designs/heron.json')])).toEqual(['heron'])
    expect(await servedNames([join(folder, 'own/heron.json')])).toEqual(['heron', 'heron-2'])
  })

  it('takes the port from PORT, and refuses one that is taken', async () => {
    const taken: number[] = []
    await tryCommand(['serve', '--port', '0'], {
      home: installed(),
      whileServing: async (output) => {
        const port = /:(\d+)\//.exec(output)?.[1] ?? ''
        const { status, errors } = await tryCommand(['serve'], { home: installed(), environment: { PORT: port } })
        expect(errors).toContain(`port ${port} is taken`)
        taken.push(status)
      },
    })
    expect(taken).toEqual([64])
  })

  it('says so when the page is not built or the design is not there', async () => {
    expect((await tryCommand(['serve'], { home: folder })).errors).toContain('not built')
    expect((await tryCommand(['serve', join(folder, 'nothing.json')], { home: installed() })).status).toBe(64)
  })
})
