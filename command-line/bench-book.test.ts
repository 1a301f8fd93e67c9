// SOURCE hand (what each test itself enters)
import { cpSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { limits } from '../engine/index.ts'
import { examplePath, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()
const LINK = 'dimensions.topLinkLength'

const benchIn =
  (name: string) =>
  (...words: readonly string[]) =>
    tryCommand([...words, '--store', join(folder, name)])

function table(name: string, ...rows: readonly string[]): string {
  const path = join(folder, name)
  writeFileSync(path, rows.join('\n'))
  return path
}

const run = benchIn('one')
// Two stores with the example kept as revision 1 and lot L7 begun to it.
beforeAll(async () => {
  await run('keep', examplePath, '--who', 'K1', '--why', 'as drawn')
  await run('begin-lot', 'heron', 'L7', '--revision', '1', '--who', 'K1')
  cpSync(join(folder, 'one'), join(folder, 'two'), { recursive: true })
})
const bring = (path: string, ...more: readonly string[]) => run('import-readings', 'heron', 'L7', path, '--who', 'K1', ...more)
const exported = async (on = run) => (await on('export-readings', 'heron', 'L7')).output

it('enter-gauge adds what its certificate leaves open to a reading', async () => {
  const gauge = ['--resolution', '0.01', '--calibrated', '2031-01-02', '--who', 'K1']
  expect((await run('enter-gauge', 'heron', 'caliper 1', '--uncertainty', '0.02 mm', ...gauge)).output).toContain('2031-01-02')
  expect((await run('enter-gauge', 'heron', 'caliper 2', '--uncertainty', '0.02 N', ...gauge)).status).toBe(3)
  const path = table('gauged.csv', 'serial,characteristic,found,gauge', `A-007,${LINK},24.5,caliper 1`)
  expect((await bring(path)).status).toBe(0)
  // SOURCE hand: 24.5 ± 0.02
  expect(await exported()).toContain('24.48,24.52')
})

describe('import-readings', () => {
  it('looks first, tells which column it takes for what, and keeps all rows once', async () => {
    const path = table('box.csv', 'Teil;Merkmal;Wert;Wer;Note', `A-001;${LINK};24,507;K2;=1+1`, `A-002;${LINK};24,51;K2;`)
    const columns = ['--column', 'serial=Teil', '--column', 'by=Wer']
    const looked = await bring(path, ...columns, '--look')
    expect(looked.output).toContain('2 readings')
    expect(looked.output).toContain('nothing was kept')
    expect(looked.errors).toContain('the column Wert is taken for found')
    expect(looked.errors).toContain('nothing is taken from the column Note')
    expect(looked.errors).toContain('decimals are commas')
    expect((await bring(path, ...columns)).output).toContain('2 readings')
    expect(await bring(path, ...columns)).toMatchObject({ status: 3, errors: expect.stringContaining('in before') })
    expect((await run('lots', 'heron')).output).toMatch(/L7 +1 +3 +3 +2031-04-05/)
  })

  it('refuses by row and column, asks about what is far outside, and keeps nothing of either', async () => {
    const before = await exported()
    const wrong = table('wrong.csv', 'serial,characteristic,found', `A-003,${LINK},24.5`, `A-003,${LINK},=2+2`)
    expect(await bring(wrong)).toMatchObject({ status: 3, errors: expect.stringContaining('row 3, found') })
    const far = table('far.csv', 'serial,characteristic,found', `A-004,${LINK},42.507`)
    expect(await bring(far)).toMatchObject({ status: 64, errors: expect.stringContaining('row 2, A-004') })
    expect(await exported()).toBe(before)
    expect((await bring(far, '--as-read')).status).toBe(0)
  })

  it.each([
    ['a lot that is not there', ['import-readings', 'heron', 'L9', 'box.csv', '--who', 'K1'], 'L9'],
    ['a column that is none', ['import-readings', 'heron', 'L7', 'box.csv', '--who', 'K1', '--column', 'size=Wert'], 'size=Wert'],
    [
      'a file that is too long',
      ['import-readings', 'heron', 'L7', 'long.csv', '--who', 'K1'],
      `at most ${limits.tableBytes} bytes`,
    ],
    ['a serial number that is not there', ['serial', 'heron', 'Z'], 'no such serial'],
    ['the readings of another lot', ['export-readings', 'heron', 'L9'], 'L9'],
  ])('refuses %s with 64', async (_what, words, said) => {
    table('long.csv', 'x'.repeat(limits.tableBytes + 1))
    const { status, errors } = await run(...words.map((word) => (word.endsWith('.csv') ? join(folder, word) : word)))
    expect(status).toBe(64)
    expect(errors).toContain(said)
  })
})

it('what is exported and imported elsewhere gives equal records, and into the same lot nothing', async () => {
  const rows = [`A-009,${LINK},24.506 to 24.508,,K2,2031-04-01,1,,`, `A-009,${LINK},24.507,,=K3,,2,1,"read, ""again"""`]
  const path = table('more.csv', 'serial,characteristic,found,uncertainty,by,date,reading,corrects,reason', ...rows)
  expect((await bring(path)).status).toBe(0)
  const first = await exported()
  expect(first).toContain("'=K3")
  const other = benchIn('two')
  await other(
    'enter-gauge',
    'heron',
    'caliper 1',
    '--resolution',
    '0.01',
    '--uncertainty',
    '0.02',
    '--calibrated',
    '2031-01-02',
    '--who',
    'K1',
  )
  const file = table('L7.csv', first)
  expect((await other('import-readings', 'heron', 'L7', file, '--who', 'K1', '--as-read')).errors).not.toContain('refused')
  // SOURCE property: numbers of readings begin at 1 in both stores; only the file that they came from is another
  const without = (text: string) => text.replaceAll(/,[\w.-]+\.csv\r\n/g, '\r\n')
  expect(without(await exported(other))).toBe(without(first))
  expect(await bring(file, '--as-read')).toMatchObject({ status: 3, errors: expect.stringContaining('in the same words') })
})

it('serial tells what the set will do as measured, and every reading with who and when', async () => {
  const { output } = await run('serial', 'heron', 'A-001')
  expect(output).toMatch(/^A-001, lot L7, revision 1/)
  expect(output.replaceAll(/\s+/g, ' ')).toContain('Built of what was measured')
  expect(output).toMatch(/24,507 +● within +measured by K2; entered 2031-04-05 06:07 UTC by K1 from box\.csv/)
})

describe('what is entered at the bench beside readings', () => {
  const K1 = ['--who', 'K1']
  // A set of which one link is too long for its drawing.
  beforeAll(async () => {
    const path = table('long-link.csv', 'serial,characteristic,found', `B-001,${LINK},24.55`)
    await bring(path)
  })

  it('a test that was measured is held against the prediction, and its correction stands in its place', async () => {
    const about = ['--test', 'load to hold', '--outcome', 'measured', '--rig', 'rig 1', '--tested', '2031-04-04', ...K1]
    const figure = ['--figure', 'loadCase.carry.sustainingLoad', '--uncertainty', '0.5 N']
    const enter = (...more: readonly string[]) => run('enter-test', 'heron', 'B-001', ...about, ...figure, ...more)
    expect((await enter('--value', '75 N')).output).toContain('load to hold of B-001 is kept')
    expect(await enter('--value', '17.5', '--corrects', '1')).toMatchObject({
      status: 3,
      errors: expect.stringContaining('reason'),
    })
    expect(await enter('--value', '17.5', '--reason', 'x')).toMatchObject({ status: 64 })
    expect((await enter('--value', '17.5', '--corrects', '1', '--reason', 'digits')).status).toBe(0)
    const compared = JSON.parse((await run('bench', 'heron', '--json')).output).compared
    expect(compared).toMatchObject([{ test: { serial: 'B-001', found: 17.5, uncertainty: 0.5 } }])
    expect(await run('enter-test', 'heron', 'B-001', ...about, '--value', '1', '--figure', 'loadCase.x')).toMatchObject({
      status: 3,
    })
  })

  it('runs that were kept show what they show', async () => {
    const about = ['--test', 'cycles', '--rig', 'rig 1', '--tested', '2031-04-04', '--value', '20000', ...K1]
    await run('enter-test', 'heron', 'B-001', ...about, '--outcome', 'did')
    const shown = (await run('runs', 'heron', '--life', '20000')).output.replaceAll(/\s+/g, ' ')
    // SOURCE hand: one passed piece shows 1 − 0.95 = 5 %
    expect(shown).toContain('1 of 1 pieces passed 20000: at least 5 % of such pieces do so, 95 % sure')
    expect((await run('runs', 'heron', '--test', 'pinch force', '--life', '9')).errors).toContain('no pinch force is kept')
  })

  it('what was measured of a lot is studied without a table', async () => {
    expect((await run('lot', 'heron', '--lot', 'L7')).output).toContain('topLinkLength')
    expect((await run('lot', 'heron', '--lot', 'L9')).errors).toContain('no such lot')
  })

  it('a certificate and a calibration are corrected, and both stay in the book', async () => {
    const certificate = ['enter-certificate', 'heron', 'L7', '--coating', 'film on the pins', '--issued', '2031-04-01', ...K1]
    expect((await run(...certificate, '--coupons', '120 125')).output).toContain('judged with its coupons')
    expect((await run(...certificate, '--coupons', '12 12.5', '--corrects', '1', '--reason', 'comma')).status).toBe(0)
    const told = (await run('serial', 'heron', 'B-001')).output.replaceAll(/\s+/g, ' ')
    expect(told).toMatch(/coupons of 120, 125 µm.*corrected by certificate 2.*coupons of 12, 12.5 µm/)
    const gauge = ['enter-gauge', 'heron', 'caliper 1', '--resolution', '0.01', '--calibrated', '2031-01-02', ...K1]
    expect((await run(...gauge, '--uncertainty', '0.03', '--corrects', '1', '--reason', 'misread')).status).toBe(0)
    const gauges = (await run('gauges', 'heron')).output
    expect(gauges).toMatch(/0\.02 .*corrected by calibration 2\n.*0\.03 .*corrects calibration 1: misread/)
    // SOURCE hand: 24.5 ± 0.03 where it was ± 0.02
    expect(await exported()).toContain('24.47,24.53')
  })

  it('a table under a wrong mapping is taken back, and comes in again under the right one', async () => {
    const path = table('mapped.csv', 'serial,characteristic,drawn,found', `C-001,${LINK},24.5,24.51`)
    await bring(path, '--column', 'found=drawn')
    const [number] = /^ *(\d+) +L7 +mapped\.csv/m.exec((await run('lots', 'heron')).output)?.slice(1) ?? []
    expect(await bring(path)).toMatchObject({ status: 3, errors: expect.stringContaining('take that import back first') })
    expect((await run('withdraw-import', 'heron', number, '--reason', 'nominals', ...K1)).output).toContain('count no longer')
    expect((await run('lots', 'heron')).output).toContain('taken back: nominals')
    expect((await bring(path)).status).toBe(0)
    const told = (await run('serial', 'heron', 'C-001')).output.replaceAll(/\s+/g, ' ')
    expect(told).toMatch(/24\.5 withdrawn with its import: nominals .* 24\.51 ● within/)
  })
})
