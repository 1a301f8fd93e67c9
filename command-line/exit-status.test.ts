// SOURCE hand (exit statuses: 0 all met, 1 one short, 2 undecided, 3 refused, 64 wrong use, as `fingerwright --help` states them)
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { example, examplePath, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()

/** Writes the example with other requirements and gives its path. */
function withRequirements(name: string, requirements: object): string {
  const path = join(folder, `${name}.json`)
  writeFileSync(path, JSON.stringify({ ...example, requirements, risks: undefined }))
  return path
}

const margin = (bound: object) => ({
  figure: 'closed.toggle.distal.deadCentreMargin',
  ...bound,
  reason: 'to be tried',
  source: 'invented',
})

describe('the exit status', () => {
  it('is 0 when every requirement is met', async () => {
    const path = withRequirements('met', { margin: margin({ atLeast: '1 deg' }) })
    expect((await tryCommand(['verdict', path])).status).toBe(0)
  })

  it('is 0 for a design without requirements, and the text says that nothing was judged', async () => {
    const { status, output } = await tryCommand(['verdict', withRequirements('none', {})])
    expect(status).toBe(0)
    expect(output).toContain('nothing was judged')
  })

  it('is 1 when one of them falls short', async () => {
    const path = withRequirements('short', { one: margin({ atLeast: '1 deg' }), two: margin({ atLeast: '80 deg' }) })
    const { status, output } = await tryCommand(['verdict', path])
    expect(status).toBe(1)
    expect(output).toContain('▼ short')
  })

  it('is 3 when strength is asked of parts that do not say how thick they are, although they move', async () => {
    const path = join(import.meta.dirname, '../cases/documents/plain-toggle.json')
    const [hold, strength] = [await tryCommand(['hold', path]), await tryCommand(['strength', path])]
    expect([hold.status, hold.errors]).toEqual([0, ''])
    expect(strength.status).toBe(3)
    expect(strength.output).toContain('Nothing is said about strength before parts.mount.thickness')
    expect(strength.errors.match(/parts\.\w+\.thickness: nothing/g)).toHaveLength(4)
    const { problems } = JSON.parse((await tryCommand(['strength', path, '--json'])).output)
    expect(problems).toHaveLength(4)
  })

  it('is 2 when none falls short and one is undecided, and the text says why', async () => {
    const cases: [string, { keeper?: object }][] = Object.entries(example.loadCases)
    const keeperless = cases.find(([, loadCase]) => loadCase.keeper === undefined)?.[0]
    const figure = `loadCase.${keeperless}.slipAngle`
    const undecided = { figure, atLeast: '1 deg', reason: 'to be tried', source: 'invented' }
    const { status, output } = await tryCommand(['verdict', withRequirements('undecided', { undecided })])
    expect(status).toBe(2)
    expect(output).toContain('◐ undecided')
    expect(output).toContain('no keeper')
  })

  it('belongs to the question that is asked', async () => {
    const path = withRequirements('motionShort', { two: margin({ atLeast: '80 deg' }) })
    expect((await tryCommand(['motion', path])).status).toBe(1)
    expect((await tryCommand(['hold', path])).status).toBe(0)
  })

  it.each(['verdict', 'motion', 'hold'])('of %s is 3 for a refused design, with every problem listed', async (question) => {
    const path = join(folder, 'refused.json')
    writeFileSync(path, JSON.stringify({ ...example, shape: 1, colour: 2 }))
    const { status, output, errors } = await tryCommand([question, path])
    expect(status).toBe(3)
    expect(output).toBe('')
    expect(errors).toContain('shape')
    expect(errors).toContain('colour')
  })

  it.each([
    ['no command', []],
    ['an unknown command', ['verdct', examplePath]],
    ['an unknown option', ['verdict', examplePath, '--jsn']],
    ['no design', ['hold']],
    ['two designs', ['hold', examplePath, examplePath]],
    ['--at without a drawing', ['hold', examplePath, '--at', '1']],
    ['a host', ['serve', '--host', '0.0.0.0']],
    ['a port that is none', ['serve', '--port', '70000']],
    ['a server over the standard input', ['serve', '-']],
  ])('is 64 for %s, with an explanation', async (_what, words) => {
    const { status, output, errors } = await tryCommand(words)
    expect(status).toBe(64)
    expect(output).toBe('')
    expect(errors).not.toBe('')
  })
})
