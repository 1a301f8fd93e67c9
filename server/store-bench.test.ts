// SOURCE standard RFC 9110 (status codes 201, 404, 422), from memory
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { askJson } from './test-support/asked-json.ts'
import { type ExampleServer, exampleServer } from './test-support/example-server.ts'

const heron = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
const LINK = 'dimensions.topLinkLength'

let server: ExampleServer
const ask = (method: string, path: string, body?: unknown) =>
  askJson(server.address, [method, `/api/designs/heron/${path}`, body])
const read = (rows: readonly (readonly string[])[], more: object = {}) =>
  ask('POST', 'readings', { who: 'K1', lot: 'L7', rows, ...more })
const enter = (...entries: readonly object[]) => ask('POST', 'entries', { who: 'K1', entries })
const problemsOf = ({ json }: { readonly json: object }) =>
  (json as { readonly problems: readonly { readonly place: string }[] }).problems

beforeAll(async () => {
  server = await exampleServer(heron)
  await ask('POST', 'revisions', { version: 0, who: 'K1', why: 'as drawn' })
  await enter(
    { kind: 'lot', lot: 'L7', revision: 1 },
    { kind: 'gauge', gauge: 'caliper 1', resolution_mm: 0.01, uncertainty_mm: 0.02, calibrated: '2031-01-02' },
  )
})
afterAll(() => server.end())

describe('the bench', () => {
  it('takes readings of a set, and tells what the set will do as it was measured', async () => {
    expect(
      (
        await read([
          ['serial', 'characteristic', 'found', 'gauge'],
          ['A', LINK, '24.62', 'caliper 1'],
        ])
      ).status,
    ).toBe(201)
    const { json } = await ask('GET', 'serials/A')
    // SOURCE hand: 24.62 ± 0.02 of the gauge
    expect(json).toMatchObject({
      lot: 'L7',
      readings: [{ found: '24.62', gauge: 'caliper 1', value: { least: 24.6, most: 24.64 } }],
    })
    expect(json).toMatchObject({ sheet: { rows: [{ id: LINK, conformity: 'outside' }] } })
    expect(String((json as { sheet?: { sentence: string } }).sheet?.sentence)).toMatch(
      /^Set A: 1 reading is outside.*Built of what was measured/,
    )
  })

  it('asks once about what lies far outside, in the same words as every door, and takes it where it was read so', async () => {
    const rows = [
      ['serial', 'characteristic', 'found'],
      ['B', LINK, '42.507'],
    ]
    const asked = await read(rows)
    expect(asked).toMatchObject({ status: 409, json: { asks: [expect.stringMatching(/^row 2, B, no\. 23 .*far outside/)] } })
    expect(asked.json.error).toContain('were these read so?')
    expect(server.store.bench.serial('heron', 'B')).toBeUndefined()
    expect((await read(rows, { asRead: true })).status).toBe(201)
  })

  it('takes a correction, after which the new reading counts', async () => {
    const [wrong] = server.store.bench.serial('heron', 'B')?.readings ?? []
    const heading = ['serial', 'characteristic', 'found', 'corrects', 'reason']
    expect((await read([heading, ['B', LINK, '24.507', String(wrong.id), 'digits turned round']])).status).toBe(201)
    expect((await ask('GET', 'serials/B')).json).toMatchObject({
      readings: [{ found: '42.507' }, { found: '24.507', corrects: wrong.id, reason: 'digits turned round' }],
      sheet: { rows: [{ conformity: 'within' }] },
    })
  })

  it('reads columns of other names and decimal commas where it is told so', async () => {
    const rows = [
      ['Teil', 'Maß', 'Wert', 'note'],
      ['C', LINK, '24,507', '=1+1'],
    ]
    expect((await read(rows)).status).toBe(422)
    const named = { serial: 'Teil', characteristic: 'Maß', found: 'Wert' }
    expect(problemsOf(await read(rows, { named }))).toMatchObject([{ place: 'row 2, found' }])
    expect((await read(rows, { named, decimal: 'comma' })).json).toMatchObject({ passedOver: ['note'] })
  })

  it.each([
    [
      'a size that is none',
      [
        ['D', LINK, '24.5'],
        ['D', LINK, '=2+2'],
      ],
      ['row 3, found'],
    ],
    [
      'several things',
      [
        ['', LINK, '1'],
        ['D', '999', '1'],
        ['D', LINK, 'x'],
      ],
      ['row 2, serial', 'row 3, characteristic', 'row 4, found'],
    ],
    ['a serial that cannot be seen', [['D\u202e', LINK, '24.5']], ['row 2']],
  ])('refuses %s by row and column, and keeps nothing', async (_what, rows, places) => {
    const answer = await read([['serial', 'characteristic', 'found'], ...rows])
    expect(answer.status).toBe(422)
    expect(problemsOf(answer).map(({ place }) => place)).toEqual(places)
    expect(server.store.bench.serial('heron', 'D')).toBeUndefined()
  })

  it('tells what a proof takes from it: sets, tests, what came back, and the revisions that were tested', async () => {
    const came = { kind: 'field', serial: 'B', sort: 'return', came: '2031-06-01', told: 'slips', harm: 'not known' }
    const test = { kind: 'test', serial: 'A', test: 'cycles', value: 9000, outcome: 'did', tested: '2031-04-04', rig: 'rig 1' }
    const from = { contact: 'C-3', contactsIn: 'green book' }
    expect((await enter(test, { ...came, ...from, risks: ['slips'] })).status).toBe(201)
    const misnamed = await enter({ ...came, ...from, contact: 'Somebody', risks: [] })
    expect(misnamed.json.error).toContain('stays outside of the store')
    const { json } = await ask('GET', 'proving')
    expect(json).toMatchObject({
      sets: server.store.bench.lots('heron')[0]?.serials.length,
      tests: [{ serial: 'A', test: 'cycles', outcome: 'did' }],
      field: [{ serial: 'B', risks: ['slips'], contact: 'C-3', who: 'K1' }],
      revisions: [{ number: 1, text: heron }],
    })
  })

  it('takes no reading beside a table, nothing of a lot or serial that is not there, and no file twice', async () => {
    const entry = {
      kind: 'reading',
      serial: 'A',
      characteristic: LINK,
      visit: 'finished',
      found: '1',
      value: { least: 2, most: 2 },
    }
    expect((await enter(entry)).status).toBe(422)
    expect((await read([['serial', 'characteristic', 'found']], { lot: 'L9' })).json.error).toContain('lot L9')
    expect((await enter({ kind: 'article', lot: 'L9', serial: 'A' })).status).toBe(422)
    expect((await ask('GET', 'lots/L9/sets')).status).toBe(404)
    expect((await ask('GET', 'serials/none')).status).toBe(404)
    const file = [
      ['serial', 'characteristic', 'found'],
      ['E', LINK, '24.5'],
    ]
    expect((await read(file, { file: 'box.csv' })).status).toBe(201)
    expect((await read(file, { file: 'box again.csv' })).json.error).toContain('box.csv')
  })

  it('takes an import back with a reason, and tells everything of a lot at once', async () => {
    expect((await enter({ kind: 'withdrawal', import: 1, reason: 'the wrong column' })).status).toBe(201)
    expect((await enter({ kind: 'withdrawal', import: 1, reason: 'again' })).json.error).toContain('took back')
    const { json } = await ask('GET', 'lots/L7/sets')
    const sets: readonly { readonly serial: string; readonly readings: readonly object[] }[] = json.sets
    expect(sets.map(({ serial }) => serial)).toEqual(server.store.bench.lots('heron')[0]?.serials.map(({ serial }) => serial))
    expect(sets.find(({ serial }) => serial === 'E')?.readings).toMatchObject([{ withdrawn: { reason: 'the wrong column' } }])
  })
})
