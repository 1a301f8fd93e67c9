import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { examplePath, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()

it('pairs what was measured piece by piece, and says what that gains', async () => {
  const path = join(folder, 'pieces.csv')
  const rows = ['P1,pins.dip.diameter,3.016', 'P2,pins.dip.diameter,3.002']
  const holes = ['D1,parts.distal.holes.dip.diameter,3.008', 'D2,parts.distal.holes.dip.diameter,3.018']
  writeFileSync(path, ['serial,characteristic,found', ...rows, ...holes].join('\n'))
  const { output, status } = await tryCommand(['pair', examplePath, '--readings', path])
  // SOURCE hand: a pin of 3.016 does not go into a hole of 3.008, but into one of 3.018
  expect(output).toContain('2 of 2 sets meet every requirement; first come, first served it would be 1.')
  expect(output).toMatch(/D2.*P1|P1.*D2/)
  expect(status).toBe(0)
})

it('takes sets apart that were measured as sets, from a table under other headings with decimal commas', async () => {
  const path = join(folder, 'sets.csv')
  const set = (serial: string, pin: string, hole: string) =>
    `${serial};pins.dip.diameter;${pin}\n${serial};parts.distal.holes.dip.diameter;${hole}`
  writeFileSync(path, `Teil;Merkmal;Wert\n${set('A', '3,016', '3,008')}\n${set('B', '3,002', '3,018')}\n`)
  const { output, errors } = await tryCommand(['pair', examplePath, '--readings', path, '--column', 'serial=Teil'])
  // SOURCE hand: the pin of A goes into the hole of B only
  expect(output).toContain('2 of 2 sets meet every requirement; first come, first served it would be 1.')
  expect(errors).toContain('the column Wert is taken for found')
  expect(errors).toContain('decimals are commas')
  expect((await tryCommand(['pair', examplePath])).status).toBe(64)
})
