import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()
const design = join(import.meta.dirname, '../cases/documents/plain-toggle.json')

function table(text: string): string {
  const path = join(folder, 'tests.csv')
  writeFileSync(path, text)
  return path
}

it('compares bench tests with the prediction and writes the coefficient that they give into the design', async () => {
  // SOURCE hand: at 0.3 the levers of the three pins make the toggle jam from 4.4877° on; with 0.15 it is 2.3162°
  const tests = table('serial,figure,found,uncertainty\nA,closed.toggle.knee.jamAngle,4.4877 deg,0.01 deg\n')
  const adopt = join(folder, 'adopted.json')
  const { output, status, errors } = await tryCommand(['bench', design, '--tests', tests, '--fit', 'pins', '--adopt', adopt])
  expect(errors).toBe('')
  expect(status).toBe(1)
  expect(output).toContain('1.94 (1.93 to 1.94)')
  expect(output).toContain('outside of what the model claims')
  const { friction } = JSON.parse(readFileSync(adopt, 'utf8'))
  expect(friction.pins.rest.likely).toBeCloseTo(0.3, 2)
  expect(friction.pins.source).toContain('fitted from 1 bench test')
})

it('refuses figures that do not exist, values without their unit, and pairs that the design has not', async () => {
  const refused = async (row: string) =>
    (await tryCommand(['bench', design, '--tests', table(`serial,figure,found\n${row}\n`)])).errors
  // SOURCE property
  expect(await refused('A,closed.toggle.knee.jamAngel,4 deg')).toContain('closed.toggle.knee.jamAngle')
  expect(await refused('A,closed.toggle.knee.jamAngle,4 N')).toContain('row 2, found')
  const tests = table('serial,figure,found\nA,closed.toggle.knee.jamAngle,4 deg\n')
  expect(await tryCommand(['bench', design, '--tests', tests, '--fit', 'grease'])).toMatchObject({ status: 64 })
})
