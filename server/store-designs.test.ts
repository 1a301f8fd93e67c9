// SOURCE standard RFC 9110 (status codes 201, 404, 409, 413, 415, 422), from memory
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { askJson } from './test-support/asked-json.ts'
import { type ExampleServer, exampleServer } from './test-support/example-server.ts'
import { send } from './test-support/raw-request.ts'

const heron = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
const kestrel = readFileSync(join(import.meta.dirname, '../designs/kestrel.json'), 'utf8')

let server: ExampleServer
beforeEach(async () => {
  server = await exampleServer(heron)
})
afterEach(() => server.end())

const ask = (method: string, path: string, body?: unknown) => askJson(server.address, [method, path, body])
const step = (removed: string, inserted: string) => ({
  splice: { at: heron.indexOf(removed), removed, inserted },
  said: 'another title',
})
const change = { version: 0, keep: 0, steps: [step('"title"', '\n"title"')], position: 1 }
const changed = heron.replace('"title"', '\n"title"')

describe('the list', () => {
  it('has the given files first, then what else is in the store', async () => {
    await ask('POST', '/api/designs', { name: 'finger of W3', text: kestrel })
    await ask('PUT', '/api/designs/heron/work', change)
    await ask('POST', '/api/designs/heron/revisions', { version: 1, who: 'K1', why: 'first try' })
    const draft = { version: 1, saved: '2031-04-05T06:07:08.009Z' }
    expect((await ask('GET', '/api/designs')).json).toEqual({
      designs: [
        { name: 'heron', given: true, revisions: 1, draft },
        { name: 'finger of W3', given: false, revisions: 0, draft },
      ],
    })
  })
})

describe('a design file that comes in', () => {
  it('is found under its name, letter for letter', async () => {
    expect((await ask('POST', '/api/designs', { name: 'Zeige-Finger 2.1', text: kestrel })).status).toBe(201)
    const path = `/api/designs/${encodeURIComponent('Zeige-Finger 2.1')}`
    expect((await ask('GET', path)).text).toBe(kestrel)
    expect((await ask('GET', `${path}/work`)).json).toMatchObject({ version: 1, text: kestrel, givenChanged: false })
  })

  it('goes out again as a file, the newest text or that of a revision', async () => {
    await ask('PUT', '/api/designs/heron/work', { ...change, steps: [], position: 0 })
    await ask('POST', '/api/designs/heron/revisions', { version: 1, who: 'K1', why: 'first try' })
    await ask('PUT', '/api/designs/heron/work', { ...change, version: 1 })
    const newest = await ask('GET', '/api/designs/heron/file')
    expect(newest.text).toBe(changed)
    expect(newest.headers['content-disposition']).toBe("attachment; filename*=UTF-8''heron.json")
    expect((await ask('GET', '/api/designs/heron/file?revision=1')).text).toBe(heron)
    expect((await ask('GET', '/api/designs/heron')).text).toBe(heron)
    for (const number of ['2', '0', '-1', '1e0', 'x', ''])
      expect((await ask('GET', `/api/designs/heron/file?revision=${number}`)).status).toBe(404)
  })

  it.each(['heron', 'in the store'])('does not take the place of %s, and a free name is told', async (name) => {
    await ask('POST', '/api/designs', { name: 'in the store', text: kestrel })
    const answer = await ask('POST', '/api/designs', { name, text: kestrel })
    expect(answer.status).toBe(409)
    expect(answer.json).toMatchObject({ free: `${name}-2` })
  })

  it.each([
    ['no name', { text: kestrel }],
    ['a name that is a path', { name: '../heron', text: kestrel }],
    ['a name of nothing', { name: '', text: kestrel }],
    ['a name of the language', { name: '__proto__', text: kestrel }],
    ['a name over the limit', { name: 'a'.repeat(101), text: kestrel }],
    ['a key too many', { name: 'own', text: kestrel, force: true }],
    ['a text that is no design', { name: 'own', text: '{}' }],
    ['a text with half a character', { name: 'own', text: `${kestrel}\ud83d` }],
    ['a list', [1]],
    ['nothing', null],
  ])('with %s is refused, and nothing is kept', async (_what, body) => {
    const answer = await ask('POST', '/api/designs', body)
    expect(answer.status).toBe(422)
    expect(answer.json.error).not.toBe('')
    expect(server.store.designs()).toEqual([])
  })

  it('must come as JSON of bounded length', async () => {
    const post = (type: string, body: string, chunked = false) =>
      send(server.address, { method: 'POST', path: '/api/designs', headers: { 'content-type': type }, body, chunked })
    expect((await post('text/plain', '{}')).status).toBe(415)
    expect((await post('application/json', '{')).status).toBe(400)
    expect((await post('application/json', '['.repeat(100_000))).status).toBe(400)
    expect((await post('application/json', ' '.repeat(8_000_001))).status).toBe(413)
    expect((await post('application/json', ' '.repeat(8_000_001), true)).status).toBe(413)
  })
})

describe('the work on a design', () => {
  it('begins with the given file, and nothing is kept by looking at it', async () => {
    const { json } = await ask('GET', '/api/designs/heron/work')
    expect(json).toEqual({ name: 'heron', version: 0, base: heron, steps: [], position: 0, text: heron, givenChanged: false })
    expect(server.store.designs()).toEqual([])
  })

  it('begins with the newest revision where there is one, and says that the file is another', async () => {
    const results = { figures: '{}', findings: '[]', problems: '[]' }
    server.store.keepRevision('heron', { text: changed, engine: 'fingerwright', ...results, who: 'K1', why: 'first try' })
    const { json } = await ask('GET', '/api/designs/heron/work')
    expect(json).toMatchObject({ version: 0, base: changed, text: changed, givenChanged: true })
  })

  it('is there again with every step after it was saved', async () => {
    expect((await ask('PUT', '/api/designs/heron/work', change)).json).toEqual({ version: 1 })
    const { json } = await ask('GET', '/api/designs/heron/work')
    expect(json).toEqual({
      name: 'heron',
      version: 1,
      base: heron,
      steps: change.steps,
      position: 1,
      text: changed,
      givenChanged: false,
    })
  })

  it('says when the file was changed meanwhile, until the draft agrees with it', async () => {
    await ask('PUT', '/api/designs/heron/work', change)
    writeFileSync(join(server.folder, 'heron.json'), kestrel)
    expect((await ask('GET', '/api/designs/heron/work')).json).toMatchObject({ text: changed, givenChanged: true })
    const taken = { splice: { at: 0, removed: changed, inserted: kestrel }, said: 'the file taken over' }
    await ask('PUT', '/api/designs/heron/work', { version: 1, keep: 1, steps: [taken], position: 2 })
    await ask('PUT', '/api/designs/heron/work', { version: 2, keep: 2, steps: [], position: 1 })
    expect((await ask('GET', '/api/designs/heron/work')).json).toMatchObject({ text: changed, givenChanged: false })
  })

  it('in two tabs is never overwritten: the slower one gets the newer text', async () => {
    await ask('PUT', '/api/designs/heron/work', change)
    const slower = await ask('PUT', '/api/designs/heron/work', { ...change, steps: [step('"note"', ' "note"')] })
    expect(slower.status).toBe(409)
    expect(slower.json).toMatchObject({ version: 1, text: changed })
    const revision = await ask('POST', '/api/designs/heron/revisions', { version: 0, who: 'K1', why: 'slower' })
    expect(revision.status).toBe(409)
    expect(revision.json).toMatchObject({ version: 1, text: changed })
    expect((await ask('GET', '/api/designs/heron/work')).json).toMatchObject({ version: 1, text: changed })
  })

  it.each([
    ['a step that does not fit', { steps: [{ splice: { at: 0, removed: 'x', inserted: 'y' }, said: 'no' }] }],
    ['a position past the steps', { position: 2 }],
    ['more kept than stored', { keep: 1 }],
    ['a version below nothing', { version: -1 }],
    ['half a version', { version: 0.5 }],
    ['a step without words', { steps: [{ ...change.steps[0], said: ' ' }] }],
    ['a step with a key too many', { steps: [{ ...change.steps[0], more: 1 }] }],
    ['too many steps', { steps: Array(10_001).fill(change.steps[0]) }],
    ['no steps', { steps: undefined }],
  ])('is not saved with %s', async (_what, wrong) => {
    expect((await ask('PUT', '/api/designs/heron/work', { ...change, ...wrong })).status).toBe(422)
    expect(server.store.designs()).toEqual([])
  })

  it.each(['nobody', '__proto__', 'constructor', '..%2Fheron'])('is not found under the name %s', async (name) => {
    for (const [method, path, body] of [
      ['GET', 'work'],
      ['PUT', 'work', change],
      ['GET', 'file'],
      ['GET', 'revisions'],
      ['POST', 'revisions', { version: 0, who: 'K1', why: 'x' }],
      ['GET', 'revisions/1'],
    ] as const)
      expect((await ask(method, `/api/designs/${name}/${path}`, body)).status).toBe(404)
    expect(server.store.designs()).toEqual([])
  })
})
