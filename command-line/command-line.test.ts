// SOURCE hand (exit statuses: 0 all met, 1 one short, 2 undecided, 3 refused, 64 wrong use, as `fingerwright --help` states them)
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { designSchema, readDesign } from '../engine/index.ts'
import { caution } from '../report/index.ts'
import { documentLimit_bytes, version } from '../server/index.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const HERON = join(import.meta.dirname, '../designs/heron.json')
const heron = JSON.parse(readFileSync(HERON, 'utf8'))

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fingerwright-command-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Writes the example with other requirements and gives its path. */
function withRequirements(name: string, requirements: object): string {
  const path = join(folder, `${name}.json`)
  writeFileSync(path, JSON.stringify({ ...heron, requirements }))
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

  it('is 2 when none falls short and one is undecided, and the text says why', async () => {
    const cases: [string, { keeper?: object }][] = Object.entries(heron.loadCases)
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
    writeFileSync(path, JSON.stringify({ ...heron, shape: 1, colour: 2 }))
    const { status, output, errors } = await tryCommand([question, path])
    expect(status).toBe(3)
    expect(output).toBe('')
    expect(errors).toContain('shape')
    expect(errors).toContain('colour')
  })

  it.each([
    ['no command', []],
    ['an unknown command', ['verdct', HERON]],
    ['an unknown option', ['verdict', HERON, '--jsn']],
    ['no design', ['hold']],
    ['two designs', ['hold', HERON, HERON]],
    ['--at without a drawing', ['hold', HERON, '--at', '1']],
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
    const named = await tryCommand(['verdict', HERON])
    const piped = await tryCommand(['verdict', '-'], { input: readFileSync(HERON) })
    expect(piped.output).toBe(named.output)
    expect(piped.status).toBe(named.status)
  })
})

describe('--json', () => {
  it('prints one document with the design, the engine, figures, findings and no problems', async () => {
    const { output } = await tryCommand(['verdict', HERON, '--json'])
    const document = JSON.parse(output)
    expect(Object.keys(document)).toEqual(['design', 'engine', 'figures', 'findings', 'problems'])
    expect(document.design.name).toBe('heron')
    expect(document.engine).toBe(`fingerwright ${version}`)
    expect(document.findings).toHaveLength(Object.keys(heron.requirements).length)
    expect(document.problems).toEqual([])
    for (const figure of Object.values<{ unit: string }>(document.figures)) expect(figure.unit).not.toBe('rad')
  })

  it('carries the problems of a refused design', async () => {
    const { status, output, errors } = await tryCommand(['verdict', '-', '--json'], { input: '{}' })
    expect(status).toBe(3)
    expect(JSON.parse(output).problems.length).toBeGreaterThan(1)
    expect(errors).toBe('')
  })

  it('of motion and hold together has every figure of the verdict once', async () => {
    const figuresOf = async (question: string) =>
      Object.keys(JSON.parse((await tryCommand([question, HERON, '--json'])).output).figures)
    const parts = [...(await figuresOf('motion')), ...(await figuresOf('hold'))]
    expect(parts.sort()).toEqual((await figuresOf('verdict')).sort())
  })
})

describe('the text', () => {
  it.each(['verdict', 'motion', 'hold'])(
    'of %s opens with the title and a sentence and ends with the caution',
    async (question) => {
      const { output } = await tryCommand([question, HERON])
      const [title, sentence] = output.split('\n\n')
      expect(title).toBe(heron.title)
      expect(sentence).toMatch(/\.$/)
      expect(output.replace(/\s+/g, ' ').trim().endsWith(caution)).toBe(true)
    },
  )

  it('shows the working of every figure when it is asked for', async () => {
    const { output } = await tryCommand(['verdict', HERON, '--working'])
    const { figures } = JSON.parse((await tryCommand(['verdict', HERON, '--json'])).output)
    expect(output.split('source: ').length - 1).toBe(Object.keys(figures).length)
  })

  it('is coloured only for a terminal that wants colour', async () => {
    const colourCode = String.fromCharCode(27)
    expect((await tryCommand(['verdict', HERON])).output).not.toContain(colourCode)
    expect((await tryCommand(['verdict', HERON], { colour: true })).output).toContain(colourCode)
  })

  it('says nothing on the error stream when there is nothing wrong', async () => {
    expect((await tryCommand(['verdict', HERON])).errors).toBe('')
  })
})

describe('--drawing', () => {
  const draw = async (at: string) => {
    const file = join(folder, 'finger.svg')
    const { status, errors } = await tryCommand(['hold', HERON, '--drawing', file, '--at', at])
    const svg = status === 64 ? '' : readFileSync(file, 'utf8')
    return { status, errors, svg, label: /aria-label="([^"]*)"/.exec(svg)?.[1] }
  }

  it('writes an SVG that carries its style', async () => {
    const { svg } = await draw('1')
    expect(svg.slice(0, svg.indexOf('<style>'))).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"[^>]*>$/)
    expect(svg.slice(-7)).toBe('</svg>\n')
  })

  it('takes a share of the travel or a drive position', async () => {
    expect((await draw('30 deg')).label).toMatch(/drive at 30(\.0+)?°$/)
    expect((await draw('0')).label).toMatch(/drive at 0(\.0+)?°$/)
    expect((await draw('0.5')).label).not.toBe((await draw('0')).label)
  })

  it.each(['1.2', '-0.1', '200 deg', '5 mm', 'closed', ''])('refuses the posture "%s"', async (at) => {
    const { status, errors } = await draw(at)
    expect(status).toBe(64)
    expect(errors).toContain('--at')
  })

  it('names the file that cannot be written', async () => {
    const file = join(folder, 'nowhere/finger.svg')
    const { status, errors } = await tryCommand(['hold', HERON, '--drawing', file])
    expect(status).toBe(64)
    expect(errors).toContain(file)
  })
})

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

describe('help and version', () => {
  it('prints the version', async () => {
    expect(await tryCommand(['--version'])).toEqual({ status: 0, output: `${version}\n`, errors: '' })
  })

  it.each([[], ['verdict'], ['motion'], ['hold'], ['new'], ['serve'], ['schema']].map((words) => [words]))(
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

describe('serve', () => {
  /** A program with a page and one example of its own. */
  function installed(): string {
    const home = join(folder, 'home')
    mkdirSync(join(home, 'build/page'), { recursive: true })
    mkdirSync(join(home, 'designs'), { recursive: true })
    writeFileSync(join(home, 'build/page/index.html'), '<!doctype html><title>page</title>')
    writeFileSync(join(home, 'designs/heron.json'), JSON.stringify(heron))
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
    writeFileSync(path, JSON.stringify(heron))
    expect(await servedNames([])).toEqual(['heron'])
    expect(await servedNames([path])).toEqual(['own', 'heron'])
  })

  it('lists an example that it was given only once, and another file of its name apart', async () => {
    mkdirSync(join(folder, 'own'), { recursive: true })
    writeFileSync(join(folder, 'own/heron.json'), JSON.stringify(heron))
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
