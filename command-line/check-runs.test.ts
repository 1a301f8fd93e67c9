import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()

it('tells what runs show of a life, and refuses what is no table of runs and no life', async () => {
  const path = join(folder, 'runs.csv')
  writeFileSync(path, `serial,ran,outcome\n${'A,20000,did\n'.repeat(3)}`)
  const { output, status } = await tryCommand(['runs', path, '--life', '20000'])
  // SOURCE hand: 0.05^(1/3) = 0.36840
  expect(output.replaceAll('\n', ' ')).toContain('3 of 3 pieces passed 20000: at least 36.8 % of such pieces do so, 95 % sure')
  expect(status).toBe(0)
  expect(await tryCommand(['runs', path, '--life', '0'])).toMatchObject({ status: 64 })
  expect(await tryCommand(['runs', path, '--life', '1', '--confidence', '100'])).toMatchObject({ status: 64 })
  writeFileSync(path, 'serial,ran\nA,1\n')
  expect(await tryCommand(['runs', path, '--life', '1'])).toMatchObject({ status: 3, output: '' })
})
