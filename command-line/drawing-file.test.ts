// SOURCE hand (exit statuses: 0 all met, 1 one short, 2 undecided, 3 refused, 64 wrong use, as `fingerwright --help` states them)
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { caution } from '../report/index.ts'
import { examplePath, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()

describe('--drawing', () => {
  const draw = async (at: string) => {
    const file = join(folder, 'finger.svg')
    const { status, errors } = await tryCommand(['hold', examplePath, '--drawing', file, '--at', at])
    const svg = status === 64 ? '' : readFileSync(file, 'utf8')
    return { status, errors, svg, label: /aria-label="([^"]*)"/.exec(svg)?.[1] }
  }

  it('writes an SVG that carries its style', async () => {
    const { svg } = await draw('1')
    expect(svg.slice(0, svg.indexOf('<style>'))).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"[^>]*>$/)
    expect(svg.slice(-7)).toBe('</svg>\n')
    expect(svg.replaceAll(/<\/text><text[^>]*>/g, ' ')).toContain(caution)
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
    const { status, errors } = await tryCommand(['hold', examplePath, '--drawing', file])
    expect(status).toBe(64)
    expect(errors).toContain(file)
  })
})
