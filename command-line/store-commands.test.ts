// SOURCE hand (exit statuses: 0 all met, 1 one short, 2 undecided, 3 refused, 64 wrong use, as `fingerwright --help` states them)
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, describe, expect, it } from 'vitest'
import { openStore } from '../records/index.ts'
import { example, examplePath, testFolder } from './test-support/example.ts'
import { type Around, tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()
const heron = readFileSync(examplePath, 'utf8')
const retitled = JSON.stringify({ ...example, title: 'Heron, another one' })

let count = 0
let store: string
beforeEach(() => {
  store = join(folder, `store-${count++}`)
})

const run = (words: readonly string[], around: Around = {}) =>
  tryCommand(words, { ...around, environment: { FINGERWRIGHT_STORE: store } })
const keep = (text: string, why: string) => run(['keep', '-', '--name', 'heron', '--who', 'K1', '--why', why], { input: text })
const draftOf = async (text: string) => {
  const opened = await openStore({ folder: store, now: () => new Date('2031-04-06T00:00:00Z') })
  opened.keepDraft('heron', { version: 0, keep: 0, steps: [], position: 0, base: text })
  opened.close()
}

describe('keep', () => {
  it('makes revisions of a file, which are listed with their reasons', async () => {
    const kept = await run(['keep', examplePath, '--who', 'K1', '--why', 'as drawn'])
    expect(kept.status).toBe(0)
    expect(kept.output).toBe(`heron is kept as revision 1 in ${join(store, 'store.sqlite')}.\n`)
    await keep(retitled, 'another title')
    const { output } = await run(['revisions', 'heron'])
    expect(output.split('\n')).toEqual([
      '  1  2031-04-05 06:07 UTC  ● met  K1  as drawn',
      '  2  2031-04-05 06:07 UTC  ● met  K1  another title',
      '',
    ])
    expect((await run(['designs'])).output).toMatch(/^ {2}heron +2 {2}● met$/m)
  })

  it('says when a revision was kept already', async () => {
    await keep(heron, 'as drawn')
    expect((await keep(heron, 'as drawn')).output).toContain('was already kept as revision 1')
    expect((await keep(heron, 'seen again')).output).toContain('is kept as revision 2')
  })

  it('of a refused design keeps nothing and lists every problem', async () => {
    const { status, errors } = await keep('{}', 'nothing')
    expect(status).toBe(3)
    expect(errors).toContain('standard input is refused')
    expect(existsSync(store)).toBe(false)
  })

  it.each([
    ['without a reason', ['keep', examplePath, '--who', 'K1'], '--why'],
    ['with an empty reason', ['keep', examplePath, '--who', 'K1', '--why', ' '], '--why " ": must not be empty'],
    ['with a name that is a path', ['keep', examplePath, '--who', 'K1', '--why', 'x', '--name', 'a/b'], '--name "a/b"'],
    ['of a file that is not there', ['keep', join(folder, 'gone.json'), '--who', 'K1', '--why', 'x'], 'gone.json'],
  ])('%s is refused with 64', async (_what, words, said) => {
    const { status, errors } = await run(words)
    expect(status).toBe(64)
    expect(errors).toContain(said)
    expect(existsSync(store)).toBe(false)
  })
})

describe('a name in the place of a file', () => {
  it.each(['verdict', 'motion', 'hold'])('%s answers as for the file, and says which revision it took', async (question) => {
    await keep(heron, 'as drawn')
    const [ofFile, ofName] = [await run([question, examplePath]), await run([question, 'heron'])]
    expect(ofName.output).toBe(ofFile.output)
    expect(ofName.status).toBe(ofFile.status)
    expect(ofName.errors).toBe('heron: revision 1, kept 2031-04-05 06:07 UTC by K1.\n')
  })

  it('means the newest revision, the one whose number is given, or the draft', async () => {
    await keep(heron, 'as drawn')
    await keep(retitled, 'another title')
    await draftOf(heron)
    const title = async (...more: readonly string[]) => (await run(['verdict', 'heron', ...more])).output.split('\n')[0]
    expect(await title()).toBe('Heron, another one')
    expect(await title('--revision', '1')).toBe(example.title)
    expect(await title('--revision', 'draft')).toBe(example.title)
    expect((await run(['verdict', 'heron'])).errors).toContain('Its draft is another: --revision draft.')
  })

  it('means the draft where there is no revision, and says so', async () => {
    await draftOf(retitled)
    const { output, errors } = await run(['verdict', 'heron', '--json'])
    expect(JSON.parse(output).design).toEqual({ name: 'heron', title: 'Heron, another one' })
    expect(errors).toBe('heron has no revision yet: this is its draft, saved 2031-04-06 00:00 UTC.\n')
  })

  it('means the store although a folder is called so, and a file where one is', async () => {
    await keep(retitled, 'another title')
    expect((await run(['verdict', 'designs'])).errors).toContain('no design of this name')
    const file = join(folder, 'heron')
    writeFileSync(file, heron)
    expect((await run(['verdict', file])).output.split('\n')[0]).toBe(example.title)
  })

  it.each([
    ['a name that is misspelt', ['verdict', 'herron'], 'did you mean heron?'],
    ['a name far from any', ['verdict', 'kestrel'], 'fingerwright designs lists'],
    ['a revision that is not there', ['verdict', 'heron', '--revision', '2'], 'heron has no revision 2; it has only revision 1'],
    ['a revision of nothing', ['verdict', 'heron', '--revision', '0'], 'needs the number of a revision, or draft'],
    ['a draft that is not there', ['verdict', 'heron', '--revision', 'draft'], 'heron has no draft'],
    ['a revision of a file', ['verdict', examplePath, '--revision', '1'], 'no design of this name'],
    ['the revisions of nobody', ['revisions', 'herons'], 'did you mean heron?'],
    ['the comparison with nothing', ['compare', 'heron', '1', '9'], 'no revision 9'],
    ['the text of nobody', ['export', 'nobody'], 'no design of this name'],
  ])('is refused with 64 and a way out: %s', async (_what, words, said) => {
    await keep(heron, 'as drawn')
    const { status, output, errors } = await run(words)
    expect(status).toBe(64)
    expect(output).toBe('')
    expect(errors).toContain(said)
  })
})

describe('before anything was kept', () => {
  it.each([['designs'], ['revisions', 'heron'], ['export', 'heron'], ['export-store', 'whole.sqlite']])(
    '%s says that there is no store, and makes none',
    async (...words) => {
      const { status, errors } = await run(words)
      expect(status).toBe(64)
      expect(errors).toContain('there is no store yet')
      expect(existsSync(store)).toBe(false)
    },
  )

  it('a name is looked for as a file only', async () => {
    const { status, errors } = await run(['verdict', 'heron'])
    expect(status).toBe(64)
    expect(errors).toContain('heron: there is no such file')
  })
})

describe('compare', () => {
  it('says which values, findings and figures differ', async () => {
    await keep(heron, 'as drawn')
    const [name, dimension] = Object.entries<{ value?: string } | string>(example.dimensions)[0] ?? []
    const value = typeof dimension === 'string' ? dimension : (dimension?.value ?? '')
    await keep(heron.replace(`"${value}"`, '"43.1 mm"'), 'first dimension')
    const { status, output } = await run(['compare', 'heron', '1', '2'])
    expect(status).toBe(0)
    expect(output).toMatch(/^heron, revision 1 → heron, revision 2\n/)
    expect(output).toContain(`dimension ${name}`)
    expect(output).toContain('43.1 mm')
    expect(output).toContain('Figures')
    expect(output).toMatch(/A finger has \d+ pieces as before/)
  })

  it('of a revision with itself says that nothing moved', async () => {
    await keep(heron, 'as drawn')
    expect((await run(['compare', 'heron', '1', '1'])).output).toContain('Nothing moved.\n\nNo value differs.')
  })
})

describe('export', () => {
  it('gives the file back letter for letter', async () => {
    await keep(heron, 'as drawn')
    await keep(retitled, 'another title')
    expect((await run(['export', 'heron', '--revision', '1'])).output).toBe(heron)
    expect((await run(['export', 'heron'])).output).toBe(retitled)
  })
})

describe('the whole store', () => {
  it('goes to another machine as one file', async () => {
    await keep(heron, 'as drawn')
    const file = join(folder, `whole-${count}.sqlite`)
    expect((await run(['export-store', file])).output).toContain('one design with every revision and draft')
    const there = join(folder, `there-${count}`)
    const bring = () => tryCommand(['import-store', file, '--store', there])
    expect((await bring()).output).toBe('  heron: new, one revision\n')
    expect((await bring()).output).toBe('  heron: nothing new\n')
    expect((await tryCommand(['export', 'heron', '--store', there])).output).toBe(heron)
  })

  it('brings another design of the same name in beside the one here', async () => {
    await keep(heron, 'as drawn')
    const file = join(folder, `whole-${count}.sqlite`)
    await run(['export-store', file])
    store = join(folder, `other-${count}`)
    await keep(retitled, 'another title')
    expect((await run(['import-store', file])).output).toBe(
      '  heron-2: new, one revision; the heron here is another and is left as it is\n',
    )
    expect((await run(['export', 'heron'])).output).toBe(retitled)
  })

  it('is not written over a file, and nothing comes in from a file that is none', async () => {
    await keep(heron, 'as drawn')
    const file = join(folder, `taken-${count}.json`)
    writeFileSync(file, heron)
    for (const words of [
      ['export-store', file],
      ['import-store', file],
    ]) {
      const { status, errors } = await run(words)
      expect(status).toBe(64)
      expect(errors).toContain(file)
    }
    expect(readFileSync(file, 'utf8')).toBe(heron)
  })
})

it('a store that cannot be used is told with its place and a way out', async () => {
  mkdirSync(store)
  writeFileSync(join(store, 'store.sqlite'), 'a letter')
  for (const words of [['designs'], ['verdict', 'heron'], ['keep', examplePath, '--who', 'K1', '--why', 'x']]) {
    const { status, errors } = await run(words)
    expect(status).toBe(64)
    expect(errors).toContain(`${join(store, 'store.sqlite')}: a file that is no store`)
    expect(errors).toContain('--store')
  }
  expect(readFileSync(join(store, 'store.sqlite'), 'utf8')).toBe('a letter')
})
