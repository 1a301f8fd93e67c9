import AxeBuilder from '@axe-core/playwright'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { inspectionPlan, readVariation } from '../../engine/index.ts'
import { type Bench, exampleText, startBench } from './opened-page.ts'

const plan = inspectionPlan(readVariation(exampleText).value!).filter(({ kind }) => kind !== 'film')
/** Readings that are typed: everything that the plan has of pieces. */
const READINGS = plan.length

let bench: Bench
beforeAll(async () => {
  bench = await startBench()
})
afterAll(() => bench.end())

it('a set is measured by keyboard alone, from the lot to what it will do', async () => {
  const page = await bench.open('hold')
  const type = (text: string) => page.keyboard.type(text)
  const press = (key: string) => page.keyboard.press(key)
  await page.goto(`${page.url().split('#')[0]}#revisions`)
  await page.getByRole('textbox', { name: 'Who', exact: true }).focus()
  await type('K1')
  await press('Tab')
  await type('as drawn')
  await press('Tab')
  await press('Enter')
  await page.getByText('Kept as revision 1').waitFor()
  await page.goto(`${page.url().split('#')[0]}#check`)
  await page.getByLabel('Who measures').focus()
  await type('K1')
  await press('Tab')
  await type('L7')
  await press('Enter')
  await page.getByLabel('Serial number').focus()
  await type('A-001')
  await press('Enter')
  // SOURCE property: a set of sizes as drawn meets what the drawing meets, and lies within every limit
  for (const { number, kind, nominal, place, unit } of plan) {
    await page.getByText(`No. ${number} `).first().waitFor()
    await page.waitForFunction(() => document.activeElement?.id === 'found')
    if (kind === 'position') {
      await type(String(place?.x_mm))
      await press('Enter')
      await type(String(place?.y_mm))
    } else if (number === 2) {
      // A slip of the comma is asked about once; then it is typed rightly.
      await type('30')
      await press('Enter')
      await page.getByText('far outside of what the drawing allows').waitFor()
      await press('Control+A')
      await type(`${nominal}`)
    } else await type(`${nominal}${unit === 'rad' ? ' rad' : ''}`)
    await press('Enter')
  }
  await page.getByText('Everything of the plan is measured').waitFor()
  expect(READINGS).toBeGreaterThanOrEqual(30)
  const said = page.getByTestId('as-measured')
  await page.waitForFunction(
    (count) => document.querySelector('[data-testid=as-measured]')?.textContent?.includes(`${count} readings are within`),
    READINGS,
  )
  expect(await said.textContent()).toMatch(/Built of what was measured.*lets go/s)
  const sheet = page.getByRole('region', { name: 'Serial A-001' })
  expect(await sheet.locator('tbody tr').count()).toBe(READINGS)
  await sheet.getByRole('button', { name: 'Correct it' }).first().focus()
  await press('Enter')
  await page
    .getByRole('form', { name: 'Correction' })
    .getByLabel(/Instead of/)
    .focus()
  await type(String(plan[0].least))
  await press('Tab')
  await type('read again')
  await press('Enter')
  await sheet.getByText('corrects reading 1: read again').waitFor()
  // A table from a spreadsheet is looked at before it is kept: columns are guessed, and one is said otherwise.
  await page.getByText('Readings as a table: bring in, save').click()
  await page.getByLabel('Or rows from a spreadsheet').fill(`Set;No.;Wert;Wer;Note\nA-002;1;${plan[0].nominal};K2;=1+1\n`)
  await page.getByText('One reading of one set can be kept. Nothing is taken from: Wer, Note.').waitFor()
  await page.getByLabel('Wer', { exact: true }).selectOption('who measured')
  await page.getByRole('button', { name: 'Keep this reading' }).click()
  await page.getByText('One reading is kept.').waitFor()
  // A table that came in wrongly is taken back as a whole.
  await page.getByText('One table was brought in').click()
  await page.getByRole('button', { name: 'Take it back' }).click()
  await page.getByRole('form', { name: 'Take back pasted rows' }).getByLabel('Why').fill('the wrong set')
  await press('Enter')
  await page.getByText('no: the wrong set').waitFor()
  // A photo goes to the store and comes back as it was; what only has its name is refused.
  await sheet.getByText('Enter a bench test of A-001').click()
  const test = page.getByRole('form', { name: 'Bench test' })
  await test.getByLabel('Load or cycles').fill('60 N')
  await test.getByLabel('Rig', { exact: true }).fill('rig 1')
  const picture = await page.screenshot({ clip: { x: 0, y: 0, width: 40, height: 30 } })
  await test.getByLabel('Photo').setInputFiles({ name: 'no.png', mimeType: 'image/png', buffer: Buffer.from('<svg/>') })
  await test.getByRole('button', { name: 'Keep the test' }).click()
  await page.getByText('no.png is no picture').waitFor()
  await test.getByLabel('Photo').setInputFiles({ name: 'rig.png', mimeType: 'image/png', buffer: picture })
  await test.getByRole('button', { name: 'Keep the test' }).click()
  const photo = sheet.locator('img')
  await photo.scrollIntoViewIfNeeded()
  await page.waitForFunction((shown) => (shown as HTMLImageElement).naturalWidth > 0, await photo.elementHandle())
  const back = await page.request.get(new URL((await photo.getAttribute('src')) ?? '', page.url()).href)
  expect((await back.body()).equals(picture)).toBe(true)
  // The set is signed off with how it is judged now, and the bench is judged as a file would be.
  await sheet.getByText('Sign off the first article A-001').click()
  await sheet.getByLabel('You stand for').fill('looked through')
  await press('Enter')
  await sheet.getByText('Signed off. First article: looked through. As judged then: Set A-001').waitFor()
  await page.getByRole('button', { name: /^Judge A-001 in full/ }).click()
  await page.getByRole('heading', { name: 'As measured: serial A-001' }).waitFor()
  const { violations } = await new AxeBuilder({ page }).include('#bench').analyze()
  expect(violations.map(({ id }) => id)).toEqual([])
  expect(bench.complaints).toEqual([])
})
