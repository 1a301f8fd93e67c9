// SOURCE hand (exit statuses as `fingerwright --help` states them: 0 done, 3 refused, 64 wrong use; what each test itself enters)
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openStore } from '../records/index.ts'
import { examplePath, testFolder } from './test-support/example.ts'
import { type Around, tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()
const store = join(folder, 'store')
const run = (words: readonly string[], around: Around = {}) =>
  tryCommand(words, { ...around, environment: { FINGERWRIGHT_STORE: store } })

describe('field', () => {
  const told = ['--told', 'did not open once', '--came', '2031-05-01', '--risk', 'doesNotLetGo', '--who', 'K1']
  const from = ['--serial', 'A-001', '--contacts-in', 'green book']

  it('keeps what came back of a set, lists it, and it counts in what is left of the risk', async () => {
    const opened = await openStore({ folder: store, now: () => new Date('2031-04-06T00:00:00Z') })
    const entries = [
      { kind: 'lot', lot: 'L7', revision: 1 },
      { kind: 'article', lot: 'L7', serial: 'A-001' },
    ] as const
    const found = { figures: '{}', findings: '[]', problems: '[]' }
    opened.keepRevision('heron', { text: readFileSync(examplePath, 'utf8'), engine: 'e 1', ...found, who: 'K1', why: 'as drawn' })
    opened.bench.keepEntries('heron', { entries, who: 'K1', engine: 'e 1' })
    opened.close()
    expect((await run(['field', 'heron'])).output).toBe('Nothing has come back, as far as it was written down.\n')
    expect((await run(['field', 'heron', ...told, ...from, '--contact', 'C-014'])).status).toBe(0)
    const { output } = await run(['field', 'heron'])
    for (const words of [
      '1  A-001, complaint of 2031-05-01, lot L7, revision 1',
      'A closed finger that does not open',
      'C-014, in green book',
    ])
      expect(output).toContain(words)
    const out = join(folder, 'card.pdf')
    const report = await run(['report', 'heron', '--document', 'card', '--uncounted', '--out', out])
    // One set of one came back with it: that is more than is taken, whatever the sets that are not counted would say.
    expect([report.status, report.output]).toEqual([1, expect.stringContaining('1 is more than the workshop takes')])
  }, 60_000)

  it('keeps nothing with a name in the place of a key, of another design, or without what it needs', async () => {
    const tried = [
      [...told, ...from, '--contact', 'Somebody'],
      [...told, ...from],
    ]
    const answers = await Promise.all(tried.map((words) => run(['field', 'heron', ...words])))
    expect(answers.map(({ status }) => status)).toEqual([64, 64])
    expect(answers[0].errors).toContain('stays outside of the store')
    expect(answers[1].errors).toContain('--contact')
    expect((await run(['field', 'herron'])).errors).toContain('did you mean heron?')
  })
})

describe('starter', () => {
  it('writes the design with both sets, and nothing twice', async () => {
    const [first, again, risks] = ['first.json', 'again.json', 'risks.json'].map((name) => join(folder, name))
    const from = examplePath.replace('heron', 'kestrel')
    const written = await run(['starter', from, '--out', first])
    expect([written.status, written.output]).toEqual([
      0,
      expect.stringMatching(/demands, \d+ bench tests|bench tests, .*demands/),
    ])
    expect(written.output).toMatch(/risks, to be reviewed/)
    const text = readFileSync(first, 'utf8')
    expect(text).toContain('Starting point, to be reviewed.')
    expect((await run(['starter', first, '--out', again])).output).toContain('nothing was left to add')
    expect(readFileSync(again, 'utf8')).toBe(text)
    await run(['starter', from, '--out', risks, '--only', 'risks'])
    expect(Object.keys(JSON.parse(readFileSync(risks, 'utf8')))).not.toContain('demands')
  })

  it('leaves a file that is there as it is, and refuses a design with problems', async () => {
    writeFileSync(join(folder, 'there.json'), 'mine')
    expect((await run(['starter', examplePath, '--out', join(folder, 'there.json')])).status).toBe(64)
    expect(readFileSync(join(folder, 'there.json'), 'utf8')).toBe('mine')
    expect((await run(['starter', '-', '--out', join(folder, 'refused.json')], { input: '{}' })).status).toBe(3)
  })
})
