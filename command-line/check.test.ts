// SOURCE hand (exit statuses as `fingerwright --help` states them; sizes of the example design)
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { caution } from '../report/index.ts'
import { examplePath, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()

function readings(text: string): string {
  const path = join(folder, 'readings.csv')
  writeFileSync(path, text)
  return path
}

/** A toggle with one hole that has a tolerance and a zone: its evaluation takes a moment only. */
const lightPath = join(folder, 'toggle.json')
const toggle = JSON.parse(readFileSync(join(import.meta.dirname, '../cases/documents/plain-toggle.json'), 'utf8'))
const { holes } = toggle.parts.near
holes.a.datum = true
Object.assign(holes.b, { position: '0.02 mm', tolerance: { plus: '0.02 mm', minus: '0 mm' } })
const kneeMargin = { figure: 'closed.toggle.knee.deadCentreMargin', atLeast: '11 deg', reason: 'a test', source: 'invented' }
writeFileSync(lightPath, JSON.stringify({ ...toggle, requirements: { ...toggle.requirements, kneeMargin } }))
const lightFound = '5.05'

describe('check', () => {
  it('prints the plan, with its gauges and what feels each size, and writes its drawings', async () => {
    const out = join(folder, 'plan')
    const { status, output, errors } = await tryCommand(['check', lightPath, '--out', out])
    expect(status).toBe(0)
    expect(output).toMatch(/parts\..*position/)
    expect(output).toContain('x and y from the datum hole')
    expect(output.replaceAll('\n', ' ')).toContain(caution)
    expect(errors).toContain('files are written')
    expect(readdirSync(out).every((name) => /^numbered-.*\.svg$/.test(name))).toBe(true)
  })

  it('writes a first-article sheet of each set, with the yield and what each decision comes to', async () => {
    const out = join(folder, 'sheets')
    const path = readings(`serial,characteristic,found,uncertainty\nA/1,1,${lightFound},0.001\n`)
    const { output } = await tryCommand(['check', lightPath, '--readings', path, '--out', out, '--samples', '16'])
    const sheet = readFileSync(join(out, 'first-article-A_1.html'), 'utf8')
    expect(output).toContain('The yield for this set is')
    expect(output).toContain('use as is')
    for (const words of ['First article, set A/1', '▼ outside', 'not measured', 'Decided by, date', '<svg', caution])
      expect(sheet).toContain(words)
    expect(output).toContain('Set A/1')
    await expect(tryCommand(['check', lightPath, '--readings', path, '--samples', 'x'])).resolves.toMatchObject({ status: 64 })
  })

  it('judges a lot of the bench book, and its sheets carry what was decided and signed off, as it was corrected', async () => {
    const [out, store] = [join(folder, 'kept'), join(folder, 'store')]
    const run = (...words: readonly string[]) => tryCommand([...words, '--store', store])
    const K1 = ['--who', 'K1']
    await run('keep', lightPath, '--why', 'as drawn', ...K1)
    await run('begin-lot', 'toggle', 'L1', '--revision', '1', ...K1)
    await run('import-readings', 'toggle', 'L1', readings(`Teil;Merkmal;Wert\nA-1;1;5,05\n`), '--column', 'serial=Teil', ...K1)
    expect((await run('decide', 'toggle', 'A-1', '1', ...K1)).output).toMatch(/^use as is: .*rework: .*scrap: /s)
    const decide = (...more: readonly string[]) => run('decide', 'toggle', 'A-1', '1', '--why', 'it fits', ...K1, ...more)
    await decide('--decision', 'scrap')
    await decide('--decision', 'use as is', '--corrects', '1', '--reason', 'tried on the bench')
    expect(await run('decide', 'toggle', 'A-1', '2', '--decision', 'scrap', ...K1)).toMatchObject({ status: 3 })
    expect((await run('sign-off', 'toggle', 'A-1', '--statement', 'looked through', ...K1)).output).toContain('signed off')
    expect((await run('check', 'toggle', '--lot', 'L1', '--out', out)).output).toContain('Set A-1: 1 reading is outside')
    const sheet = readFileSync(join(out, 'first-article-A-1.html'), 'utf8')
    expect(sheet).toContain('Decided: use as is, because it fits (K1,')
    expect(sheet).toContain('First article: looked through. As judged then: Set A-1')
    expect(sheet).not.toContain('Decided: scrap')
    expect(sheet).toContain('<td>☒</td><td>use as is</td>')
  })

  it('judges each set as it was measured: one that is out of tolerance may do, one that is within may not', async () => {
    // The top link of A is 3 µm too long and does no harm; that of B is 0.1 mm too long, and the play may run it through dead centre.
    const path = readings(
      '\ufeffserial;characteristic;found;note\r\nA;dimensions.topLinkLength;24.520;x\r\nB;dimensions.topLinkLength;24.62;"a; b"\r\n',
    )
    const { status, output, errors } = await tryCommand(['check', examplePath, '--readings', path])
    const [a, b] = output.split(/^(?=Set )/m)
    expect(a.replaceAll('\n', ' ')).toMatch(/Set A: 1 reading is outside of them.*it lets go/)
    expect(b.replaceAll('\n', ' ')).toMatch(/Set B: .*do not settle under this load/)
    expect(errors).toContain('nothing is taken from the column note')
    expect(status).not.toBe(0)
  })

  it('says that nothing can be built of a pin that does not go in', async () => {
    const path = readings('serial,characteristic,found\nC,pins.dip.diameter,3.02\n')
    const { status, output } = await tryCommand(['check', examplePath, '--readings', path, '--json'])
    expect(status).toBe(1)
    expect(JSON.parse(output)[0].problems[0].found).toContain('a pin of 3.02 mm in a hole of 3.012 mm')
  })

  it('refuses what it cannot read, and judges nothing then', async () => {
    const bad = await tryCommand(['check', examplePath, '--readings', readings('serial,characteristic,found\nA,1,3\nA,99,3\n')])
    expect(bad).toMatchObject({ status: 3, output: '' })
    expect(bad.errors).toContain('row 3, characteristic')
    const quoted = await tryCommand(['check', examplePath, '--readings', readings('serial,characteristic,found\nA,1,"3\n')])
    expect(quoted.status).toBe(64)
    expect((await tryCommand(['check', examplePath, '--readings', join(folder, 'none.csv')])).status).toBe(64)
    expect((await tryCommand(['check', '-'], { input: '{}' })).status).toBe(3)
  })
})
