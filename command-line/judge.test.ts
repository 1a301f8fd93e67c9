// SOURCE hand (exit statuses: 0 all met, 1 one short, 2 undecided, 3 refused, 64 wrong use, as `fingerwright --help` states them)
import { describe, expect, it } from 'vitest'
import { caution, questions } from '../report/index.ts'
import { version } from '../server/index.ts'
import { example, examplePath } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

describe('--json', () => {
  it('prints one document with the design, the engine, figures, findings and no problems', async () => {
    const { output } = await tryCommand(['verdict', examplePath, '--json'])
    const document = JSON.parse(output)
    expect(Object.keys(document)).toEqual(['design', 'engine', 'figures', 'findings', 'problems'])
    expect(document.design.name).toBe('heron')
    expect(document.engine).toBe(`fingerwright ${version}`)
    expect(document.findings).toHaveLength(Object.keys(example.requirements).length)
    expect(document.problems).toEqual([])
    for (const figure of Object.values<{ unit: string }>(document.figures)) expect(figure.unit).not.toBe('rad')
  })

  it('carries the problems of a refused design', async () => {
    const { status, output, errors } = await tryCommand(['verdict', '-', '--json'], { input: '{}' })
    expect(status).toBe(3)
    expect(JSON.parse(output).problems.length).toBeGreaterThan(1)
    expect(errors).toBe('')
  })

  it('of every question together has every figure of the verdict once', async () => {
    const figuresOf = async (question: string) =>
      Object.keys(JSON.parse((await tryCommand([question, examplePath, '--json'])).output).figures)
    const parts = await Promise.all(questions.map(({ name }) => figuresOf(name)))
    expect(parts.flat().sort()).toEqual((await figuresOf('verdict')).sort())
  })
})

describe('the text', () => {
  it.each(['verdict', 'motion', 'hold'])(
    'of %s opens with the title and a sentence and ends with the caution',
    async (question) => {
      const { output } = await tryCommand([question, examplePath])
      const [title, sentence] = output.split('\n\n')
      expect(title).toBe(example.title)
      expect(sentence).toMatch(/\.$/)
      expect(output.replace(/\s+/g, ' ').trim().endsWith(caution)).toBe(true)
    },
  )

  it('shows the working of every figure when it is asked for', async () => {
    const { output } = await tryCommand(['verdict', examplePath, '--working'])
    const { figures } = JSON.parse((await tryCommand(['verdict', examplePath, '--json'])).output)
    expect(output.split('source: ').length - 1).toBe(Object.keys(figures).length)
  })

  it('is coloured only for a terminal that wants colour', async () => {
    const colourCode = String.fromCharCode(27)
    expect((await tryCommand(['verdict', examplePath])).output).not.toContain(colourCode)
    expect((await tryCommand(['verdict', examplePath], { colour: true })).output).toContain(colourCode)
  })

  it('says nothing on the error stream when there is nothing wrong', async () => {
    expect((await tryCommand(['verdict', examplePath])).errors).toBe('')
  })
})
