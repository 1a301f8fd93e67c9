// SOURCE standard RFC 9110 (status codes 200, 413, 415, 422), from memory
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { askJson } from './test-support/asked-json.ts'
import { type ExampleServer, exampleServer } from './test-support/example-server.ts'

const heron = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
const STORE = 'application/vnd.sqlite3'

let here: ExampleServer
let there: ExampleServer
beforeEach(async () => {
  here = await exampleServer(heron)
  there = await exampleServer(heron)
})
afterEach(() => Promise.all([here.end(), there.end()]))

const keep = (server: ExampleServer, why: string) =>
  askJson(server.address, ['POST', '/api/designs/heron/revisions', { version: 0, who: 'K1', why }])
const take = async () => Buffer.from(await (await fetch(`${here.address}api/store`)).arrayBuffer())
const bring = async (bytes: Uint8Array, type = STORE) => {
  const answer = await fetch(`${there.address}api/store`, {
    method: 'POST',
    headers: { 'content-type': type },
    body: new Uint8Array(bytes),
  })
  return { status: answer.status, json: await answer.json() }
}

describe('the whole store', () => {
  it('goes out as one file and comes in on another machine', async () => {
    await keep(here, 'first try')
    await askJson(here.address, ['POST', '/api/designs', { name: 'own', text: heron }])
    expect(await bring(await take())).toEqual({
      status: 200,
      json: {
        designs: [
          { name: 'heron', came: 'new', as: 'heron', revisions: 1 },
          { name: 'own', came: 'new', as: 'own', revisions: 0 },
        ],
      },
    })
    const path = '/api/designs/heron/revisions/1'
    expect((await askJson(there.address, ['GET', path])).text).toBe((await askJson(here.address, ['GET', path])).text)
  })

  it('that parted from the one here comes in beside it', async () => {
    await keep(here, 'one way')
    await keep(there, 'another way')
    expect((await bring(await take())).json).toEqual({
      designs: [{ name: 'heron', came: 'new', as: 'heron-2', revisions: 1 }],
    })
    expect(there.store.revision('heron', 1)?.why).toBe('another way')
    expect(there.store.revision('heron-2', 1)?.why).toBe('one way')
  })

  it.each([
    ['nothing', Buffer.alloc(0), 422],
    ['a design', Buffer.from(heron), 422],
    ['random bytes', Buffer.from('SQLite format 3\0 and nothing more'), 422],
  ])('is not made of %s', async (_what, bytes, status) => {
    const answer = await bring(bytes)
    expect(answer.status).toBe(status)
    expect(answer.json.error).toContain('Nothing was brought in. The file')
    expect(there.store.designs()).toEqual([])
  })

  it('comes under its own media type only', async () => {
    for (const type of ['application/json', 'text/plain', '']) expect((await bring(await take(), type)).status).toBe(415)
  })
})
