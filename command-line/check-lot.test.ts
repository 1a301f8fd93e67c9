import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { examplePath, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()

function table(name: string, text: string): string {
  const path = join(folder, name)
  writeFileSync(path, text)
  return path
}

describe('gauge', () => {
  // SOURCE paper: Houf and Burman, IEEE Trans. CHMT 11 (1988) 516-520 (data read in a reprint): 10 parts, 3 operators, 3 repeats
  const read = [
    '37 38 37|41 41 40|41 42 41',
    '42 41 43|42 42 42|43 42 43',
    '30 31 31|31 31 31|29 30 28',
    '42 43 42|43 43 43|42 42 42',
    '28 30 29|29 30 29|31 29 29',
    '42 42 43|45 45 45|44 46 45',
    '25 26 27|28 28 30|29 27 27',
    '40 40 40|43 42 42|43 43 41',
    '25 25 25|27 29 28|26 26 26',
    '35 34 34|35 35 34|35 34 35',
  ]
  const lines = read.flatMap((part, number) =>
    part.split('|').flatMap((own, who) => own.split(' ').map((found) => `${number + 1},${'abc'[who]},${found}`)),
  )

  it('reads a crossed study from a table and tells what of the spread is the gauge', async () => {
    const path = table('study.csv', ['part,appraiser,found', ...lines].join('\n'))
    const { output, status } = await tryCommand(['gauge', path, '--tolerance', '40'])
    // SOURCE other-method (recomputed): gauge 1.3430, six of them over 40 are 0.2015, 7.3 told apart; repeat 0.5111 of 50.0963
    expect(output.replaceAll('\n', ' ')).toContain('a deviation of 1.34 mm; six of its deviations take 20.1 % of the tolerance')
    expect(output).toContain('7 steps')
    expect(output).toMatch(/the same person again +0\.715 mm +1\.02 %/)
    expect(status).toBe(0)
  })

  it('refuses a study that is not crossed, and a tolerance that is none', async () => {
    const uneven = table('uneven.csv', ['part,appraiser,found', ...lines.slice(1)].join('\n'))
    // SOURCE property
    expect(await tryCommand(['gauge', uneven])).toMatchObject({ status: 3, output: '' })
    expect((await tryCommand(['gauge', table('none.csv', 'a,b\n1,2\n')])).errors).toContain('part, appraiser and found')
    expect((await tryCommand(['gauge', uneven, '--tolerance', '0'])).status).toBe(64)
  })
})

describe('lot', () => {
  it('tells how much of its tolerance a process uses, and how little few readings say', async () => {
    const sizes = [24.505, 24.509, 24.506, 24.508, 24.507]
    const rows = sizes.map((size, index) => `A${index},dimensions.topLinkLength,${size}`)
    const path = table('lot.csv', ['serial,characteristic,found', ...rows].join('\n'))
    const { output } = await tryCommand(['lot', examplePath, '--readings', path, '--json'])
    const [{ study }] = JSON.parse(output)
    // SOURCE hand: mean 24.507, squares 4 + 4 + 1 + 1 µm² over 4; steps 4, 3, 2, 1 µm, mean 2.5 over 2/√π; room 10 µm over three of each
    expect(study.sample.mean).toBeCloseTo(24.507, 9)
    expect(study.capability.ppk.value).toBeCloseTo(10 / 3 / Math.sqrt(2.5), 3)
    expect(study.capability.cpk.value).toBeCloseTo(10 / 3 / (2.5 / (2 / Math.sqrt(Math.PI))), 3)
    // SOURCE other-method (exact integral): factor 5.0769 of five readings
    expect((study.interval.most - study.sample.mean) / study.sample.deviation).toBeCloseTo(5.0769, 3)
    const text = await tryCommand(['lot', examplePath, '--readings', path])
    expect(text.output.replaceAll(/\s+/g, ' ')).toContain('5 readings say little')
    const one = table('one.csv', 'serial,characteristic,found\nA,dimensions.topLinkLength,24.5\n')
    expect((await tryCommand(['lot', examplePath, '--readings', one])).output).toContain('cannot be told from one piece')
  })
})
