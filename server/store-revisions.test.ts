// SOURCE standard RFC 9110 (status codes 201, 404, 409, 422), from memory
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { answerDesign, engineName } from './index.ts'
import { askJson } from './test-support/asked-json.ts'
import { type ExampleServer, exampleServer } from './test-support/example-server.ts'

const heron = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
const answered = answerDesign(Buffer.from(heron), 'heron').document

let server: ExampleServer
beforeEach(async () => {
  server = await exampleServer(heron)
})
afterEach(() => server.end())

const ask = (method: string, path: string, body?: unknown) => askJson(server.address, [method, `/api/designs/${path}`, body])
const first = { version: 0, who: ' K1 ', why: 'as drawn,\nbefore the link' }
const replace = (text: string) => ({ splice: { at: 0, removed: heron, inserted: text }, said: 'all of it' })
const change = (text: string) => ({ version: 0, keep: 0, steps: [replace(text)], position: 1 })

describe('a revision', () => {
  it('is judged by the server itself and read back with text, figures and findings', async () => {
    expect(await ask('POST', 'heron/revisions', first)).toMatchObject({ status: 201, json: { number: 1 } })
    const { json } = await ask('GET', 'heron/revisions/1')
    const { figures, findings, problems } = JSON.parse(JSON.stringify(answered))
    const said = { who: 'K1', why: 'as drawn,\nbefore the link', engine: engineName, saved: '2031-04-05T06:07:08.009Z' }
    expect(json).toEqual({ name: 'heron', number: 1, ...said, text: heron, figures, findings, problems })
  })

  it('is listed with how many findings are met, short and undecided', async () => {
    await ask('POST', 'heron/revisions', first)
    const count = (verdict: string) => answered.findings.filter((finding) => finding.verdict === verdict).length
    expect((await ask('GET', 'heron/revisions')).json).toMatchObject({
      revisions: [
        {
          number: 1,
          who: 'K1',
          findings: { met: count('met'), short: count('short'), undecided: count('undecided') },
          problems: 0,
        },
      ],
    })
  })

  it('is made of the draft as it stands, and the draft stays with its history', async () => {
    const longer = heron.replace('"title"', '\n"title"')
    await ask('PUT', 'heron/work', change(longer))
    expect(await ask('POST', 'heron/revisions', { ...first, version: 1 })).toMatchObject({ status: 201 })
    expect((await ask('GET', 'heron/revisions/1')).json).toMatchObject({ text: longer })
    expect((await ask('GET', 'heron/work')).json).toMatchObject({ version: 1, steps: [replace(longer)], text: longer })
  })

  it('of a refused design is not kept; every problem is told and the draft stays', async () => {
    await ask('PUT', 'heron/work', change('{ "format": "fingerwright-design/1" }'))
    const answer = await ask('POST', 'heron/revisions', { ...first, version: 1 })
    expect(answer.status).toBe(422)
    expect((answer.json as unknown as { problems: readonly unknown[] }).problems.length).toBeGreaterThan(1)
    expect(server.store.revisions('heron')).toEqual([])
    expect((await ask('GET', 'heron/work')).json).toMatchObject({ version: 1 })
  })

  it.each([
    ['nobody who says it', { ...first, who: '' }],
    ['no reason', { ...first, why: '  \n ' }],
    ['a reason that is not there', { version: 0, who: 'K1' }],
    ['a name with a control character', { ...first, who: 'K\u001b[31m1' }],
    ['a name that turns the writing round', { ...first, who: 'K\u202e1' }],
    ['a name over the limit', { ...first, who: 'K'.repeat(121) }],
    ['a reason over the limit', { ...first, why: 'w'.repeat(4001) }],
    ['figures of its own', { ...first, figures: {} }],
  ])('with %s is refused', async (_what, body) => {
    expect((await ask('POST', 'heron/revisions', body)).status).toBe(422)
    expect(server.store.designs()).toEqual([])
  })

  it.each(['2', '0', '01', '-1', '1.0', '1e0', 'newest', '99999999999999999999', '%00'])('%s is not there', async (number) => {
    await ask('POST', 'heron/revisions', first)
    expect((await ask('GET', `heron/revisions/${number}`)).status).toBe(404)
  })

  it.each(['PUT', 'DELETE', 'PATCH', 'POST'])('cannot be changed by %s', async (method) => {
    await ask('POST', 'heron/revisions', first)
    const before = (await ask('GET', 'heron/revisions/1')).text
    expect((await ask(method, 'heron/revisions/1', first)).status).toBe(404)
    expect((await ask('GET', 'heron/revisions/1')).text).toBe(before)
  })
})
