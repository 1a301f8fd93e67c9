import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { examplePath, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()

it('pairs what was measured piece by piece, says what that gains, and refuses a serial number of two pieces', async () => {
  const path = join(folder, 'pieces.csv')
  const rows = ['P1,pins.dip.diameter,3.016', 'P2,pins.dip.diameter,3.002']
  const holes = ['D1,parts.distal.holes.dip.diameter,3.008', 'D2,parts.distal.holes.dip.diameter,3.018']
  writeFileSync(path, ['serial,characteristic,found', ...rows, ...holes].join('\n'))
  const { output, status } = await tryCommand(['pair', examplePath, '--readings', path])
  // SOURCE hand: a pin of 3.016 does not go into a hole of 3.008, but into one of 3.018
  expect(output).toContain('2 of 2 sets meet every requirement; first come, first served it would be 1.')
  expect(output).toMatch(/D2.*P1|P1.*D2/)
  expect(status).toBe(0)
  writeFileSync(path, 'serial,characteristic,found\nP1,pins.dip.diameter,3\nP1,pins.mcp.diameter,3\n')
  expect(await tryCommand(['pair', examplePath, '--readings', path])).toMatchObject({ status: 3, output: '' })
})
