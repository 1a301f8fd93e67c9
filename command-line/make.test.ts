// SOURCE hand (exit statuses as `fingerwright --help` states them; the example design for what stands in it)
import { createHash } from 'node:crypto'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { unzipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { caution } from '../report/index.ts'
import { example, examplePath, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

describe('make', () => {
  it('says what a finger is put together from and what a set costs, and ends with the caution', async () => {
    const { status, output } = await tryCommand(['make', examplePath, '--sets', '1,7'])
    expect(status).toBe(0)
    expect(output).toContain('Parts list')
    expect(output).toMatch(/1 set +7 sets/)
    expect(output.replaceAll('\n', ' ')).toContain(caution)
  })

  it('prints a document whose sources sum to its total, and writes what goes to the shop, twice the same', async () => {
    const folder = join(testFolder(), 'shop')
    const { output, errors } = await tryCommand(['make', examplePath, '--sets', '3', '--json', '--out', folder])
    const { partsList, costs } = JSON.parse(output)
    const things = ['parts', 'pins', 'springs', 'screws', 'bought'].flatMap((section) => Object.keys(example[section]))
    expect(partsList.items.map(({ id }: { readonly id: string }) => id)).toEqual(things)
    const [{ sources, total }] = costs.batches
    expect(sources.reduce((sum: number, { amount }: { readonly amount: number }) => sum + amount, 0)).toBeCloseTo(total, 6)
    expect(readFileSync(join(folder, 'parts-list.csv'), 'utf8').split('\r\n')).toHaveLength(things.length + 2)
    const shapes = Object.keys(example.parts).length + Object.keys(example.pins).length
    // Two solids of each shape, a drawing of each part, a sheet of each coated one, and eight that are of the whole design.
    const coated = Object.values<{ readonly coating?: string }>(example.parts).filter(({ coating }) => coating !== undefined)
    const count = 2 * shapes + Object.keys(example.parts).length + coated.length + 8
    expect(errors).toContain(`${count} files are written to ${folder}, and all of them in one as heron-shop-pack.zip.\n`)
    expect(readFileSync(join(folder, 'part-topLink.step'), 'utf8')).toMatch(/^ISO-10303-21;/)
    const zip = readFileSync(join(folder, 'heron-shop-pack.zip'))
    const packed = unzipSync(zip)
    for (const [name, bytes] of Object.entries(packed)) expect(readFileSync(join(folder, name)).equals(bytes), name).toBe(true)
    const sums = readFileSync(join(folder, 'checksums.sha256'), 'utf8').trimEnd().split('\n')
    // SOURCE other-method: Node's own digest of each file as it was written
    for (const [sum, name] of sums.map((line) => line.split('  '))) {
      expect(
        createHash('sha256')
          .update(readFileSync(join(folder, name)))
          .digest('hex'),
        name,
      ).toBe(sum)
    }
    expect(sums).toHaveLength(count - 1)
    const again = join(testFolder(), 'again')
    await tryCommand(['make', examplePath, '--out', again])
    expect(readFileSync(join(again, 'heron-shop-pack.zip')).equals(zip)).toBe(true)
  })

  it('says how many pieces more or fewer than another design it has', async () => {
    const other = join(testFolder(), 'before.json')
    const fewer = { ...example, bought: { ...example.bought, washer: { ...example.bought.washer, quantity: 4 } } }
    writeFileSync(other, JSON.stringify(fewer))
    const { output } = await tryCommand(['make', examplePath, '--against', other])
    // SOURCE hand: 6 parts, 7 pins, a spring, 4 screws, 6 washers and a dab of grease; six washers of the example instead of four
    expect(output.replaceAll(/\s+/g, ' ')).toMatch(
      /before\.json: A finger has 25 pieces, 23 before.*: Thrust washer 3 mm 6, 4 before\./,
    )
    // SOURCE hand: two washers of 0.15 more on each of 3 fingers are 0.90 a set, and on each of the 2 fingers of 32 that cannot be sold 0.06
    expect(output.replaceAll(/\s+/g, ' ')).toMatch(
      /Of one set in a batch of 10: Thrust washer 3 mm, 0\.90 more; fingers that cannot be sold, 0\.06 more\./,
    )
    const { status, errors } = await tryCommand(['make', '-', '--against', examplePath], { input: '{}' })
    expect([status, errors.includes('format')]).toEqual([3, true])
  })

  it.each([['0'], ['1,two'], ['1.5'], ['10001']])('refuses --sets %s', async (sets) => {
    const { status, errors } = await tryCommand(['make', examplePath, '--sets', sets])
    expect(status).toBe(64)
    expect(errors).toContain('whole numbers from 1 to 10000')
  })

  it('lists the problems of a refused design', async () => {
    const { status, output, errors } = await tryCommand(['make', '-'], { input: '{}' })
    expect(status).toBe(3)
    expect(output).toBe('')
    expect(errors).toContain('format')
  })
})
