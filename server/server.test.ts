// SOURCE standard RFC 9110 (status codes 403, 404, 413, 415, 421, 422), from memory; their choice is written in docs/decisions/loopback-server.md
import { readFileSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { documentLimit_bytes, startServer } from './index.ts'
import { type ExampleServer, exampleServer } from './test-support/example-server.ts'
import { type RawRequest, send } from './test-support/raw-request.ts'

const heron = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
const JSON_BODY = { 'content-type': 'application/json' }

let server: ExampleServer
beforeAll(async () => {
  server = await exampleServer(heron)
})
afterAll(() => server.end())

const ask = (request: RawRequest) => send(server.address, request)

describe('the page', () => {
  it('is handed out under a policy that lets nothing foreign or inline run', async () => {
    const answer = await ask({ path: '/' })
    expect(answer.status).toBe(200)
    expect(answer.headers['content-type']).toContain('text/html')
    const policy = String(answer.headers['content-security-policy'])
    expect(policy).toContain("default-src 'none'")
    expect(policy).toContain("script-src 'self'")
    expect(policy).not.toContain('unsafe')
    expect(answer.headers['x-content-type-options']).toBe('nosniff')
    expect(answer.headers['x-frame-options']).toBe('DENY')
  })

  it('may be kept by the browser where its name carries a hash, and must be asked for otherwise', async () => {
    expect((await ask({ path: '/assets/page.js' })).headers['cache-control']).toContain('immutable')
    expect((await ask({ path: '/' })).headers['cache-control']).toBe('no-cache')
  })
})

describe('designs', () => {
  it('are listed and handed out as they stand on disk', async () => {
    expect(JSON.parse((await ask({ path: '/api/designs' })).text)).toEqual({
      designs: [{ name: 'heron', given: true, revisions: 0 }],
    })
    expect((await ask({ path: '/api/designs/heron' })).text).toBe(heron)
  })

  it('are read again after a change', async () => {
    const changed = heron.replace('"title"', '\n"title"')
    writeFileSync(join(server.folder, 'heron.json'), changed)
    const answer = await ask({ path: '/api/designs/heron' })
    writeFileSync(join(server.folder, 'heron.json'), heron)
    expect(answer.text).toBe(changed)
  })

  it.each(['secret', '__proto__', 'constructor', 'heron.json', ''])('are not found under the name "%s"', async (name) => {
    expect((await ask({ path: `/api/designs/${name}` })).status).toBe(404)
  })
})

describe('evaluate', () => {
  const evaluate = (body: string | Uint8Array, headers: Readonly<Record<string, string>> = JSON_BODY) =>
    ask({ method: 'POST', path: '/api/evaluate?name=heron', headers, body })

  it('answers a design with its figures', async () => {
    const answer = await evaluate(heron)
    expect(answer.status).toBe(200)
    const document = JSON.parse(answer.text)
    expect(document.design.name).toBe('heron')
    expect(document.problems).toEqual([])
    expect(Object.keys(document.figures).length).toBeGreaterThan(0)
  })

  it.each([
    ['malformed JSON', '{ "format": '],
    ['an empty body', ''],
    ['a list', '[]'],
    ['prototype keys', '{ "__proto__": { "title": "x" }, "constructor": 1, "format": "fingerwright-design/1" }'],
    ['deep nesting', '['.repeat(100_000)],
    ['bytes that are not UTF-8', new Uint8Array([0x7b, 0xff, 0xfe, 0x7d])],
  ])('refuses %s with every problem', async (_what, body) => {
    const answer = await evaluate(body)
    expect(answer.status).toBe(422)
    expect(JSON.parse(answer.text).problems.length).toBeGreaterThan(0)
  })

  it('refuses a body over the limit, with its length stated or not', async () => {
    const body = ' '.repeat(documentLimit_bytes + 1)
    expect((await evaluate(body)).status).toBe(413)
    expect((await ask({ method: 'POST', path: '/api/evaluate', headers: JSON_BODY, body, chunked: true })).status).toBe(413)
  })

  it('takes a body just inside of the limit', async () => {
    expect((await evaluate(heron + ' '.repeat(documentLimit_bytes - Buffer.byteLength(heron)))).status).toBe(200)
  })

  it.each(['text/plain', 'application/x-www-form-urlencoded', 'application/jsonp', ''])('refuses the type "%s"', async (type) => {
    expect((await evaluate(heron, { 'content-type': type })).status).toBe(415)
  })

  it.each(['..%2Fheron', '%00', 'a'.repeat(101), ''])('refuses the name "%s"', async (name) => {
    const answer = await ask({ method: 'POST', path: `/api/evaluate?name=${name}`, headers: JSON_BODY, body: heron })
    expect(answer.status).toBe(400)
  })
})

it('hands out the schema', async () => {
  const answer = await ask({ path: '/api/schema' })
  expect(answer.headers['content-type']).toContain('application/schema+json')
  expect(JSON.parse(answer.text).$schema).toBe('https://json-schema.org/draft/2020-12/schema')
})

describe('a foreign name that points here', () => {
  it.each([
    'evil.example',
    'evil.example:4117',
    '127.0.0.1.evil.example',
    'localhost.evil.example',
    '0.0.0.0',
    '127.0.0.2',
    '[::1]',
  ])('%s is refused', async (host) => {
    for (const path of ['/', '/api/designs', '/nothing']) expect((await ask({ path, headers: { host } })).status).toBe(421)
  })

  it.each(['evil.example@127.0.0.1', 'localhost:123456'])('%s is no name at all', async (host) => {
    expect([400, 421]).toContain((await ask({ path: '/api/designs', headers: { host } })).status)
  })

  it.each(['localhost', 'LOCALHOST:9000', '127.0.0.1:1'])('%s is our own', async (host) => {
    expect((await ask({ path: '/api/designs', headers: { host } })).status).toBe(200)
  })
})

describe('a foreign page', () => {
  it.each(['http://evil.example', 'null', 'http://127.0.0.1:1', 'https://localhost', 'http://localhost.evil.example'])(
    'of origin %s can neither send nor read',
    async (origin) => {
      const headers = { ...JSON_BODY, origin }
      expect((await ask({ method: 'POST', path: '/api/evaluate', headers, body: heron })).status).toBe(403)
      expect((await ask({ path: '/api/designs', headers })).status).toBe(403)
      expect((await ask({ method: 'OPTIONS', path: '/api/evaluate', headers })).status).toBe(403)
    },
  )

  it('may link to the page but not reach for the data', async () => {
    const headers = { 'sec-fetch-site': 'cross-site' }
    expect((await ask({ path: '/', headers })).status).toBe(200)
    expect((await ask({ path: '/api/designs/heron', headers })).status).toBe(403)
  })

  it('is told apart from our own', async () => {
    const origin = server.address.slice(0, -1)
    const headers = { ...JSON_BODY, origin, 'sec-fetch-site': 'same-origin' }
    expect((await ask({ method: 'POST', path: '/api/evaluate', headers, body: heron })).status).toBe(200)
  })
})

describe('no address reaches a file that was not given', () => {
  it.each([
    '/../secret.json',
    '/page/../../secret.json',
    '/%2e%2e/secret.json',
    '/..%2fsecret.json',
    '/assets/..%2f..%2fsecret.json',
    '/assets/%2e%2e%5c..%5csecret.json',
    '//secret.json',
    '/api/designs/..%2fsecret',
    '/api/designs/%2e%2e%2fsecret.json',
    '/api/designs/..%2fsecret/work',
    '/api/designs/..%2fsecret/file',
    '/api/designs/..%2f..%2fsecret/revisions/1',
    '/api/designs/heron/file?revision=../../secret.json',
    '/..\\secret.json',
    '/%5c..%5csecret.json',
    '/%252e%252e%252fsecret.json',
    '/%c0%ae%c0%ae%c0%afsecret.json',
    '/%uff0e%uff0e%u2215secret.json',
    '/....//secret.json',
    '/.%00./secret.json',
    '/assets/page.js/../../../secret.json',
    '/assets/..;/..;/secret.json',
    '/file:///secret.json',
    '/sign-in/../secret.json',
    '/api/designs/heron%00',
    '/etc/passwd',
    '/%',
    '/api/designs/%E0%A4%A',
  ])('%s', async (path) => {
    const answer = await ask({ path })
    expect([400, 404]).toContain(answer.status)
    expect(answer.text).not.toContain('"secret"')
  })
})

describe('the port', () => {
  const nothing = { shelf: { names: [], read: async () => undefined }, page: new Map() }

  it('is open on 127.0.0.1 only', async () => {
    const elsewhere = server.address.replace('127.0.0.1', '127.0.0.2')
    await expect(send(elsewhere, { path: '/' })).rejects.toThrow()
  })

  it('is the next free one when the usual one is taken, unless it was asked for', async () => {
    const taken = createServer()
    await new Promise<void>((resolve) => taken.listen(0, '127.0.0.1', resolve))
    const { port } = taken.address() as AddressInfo
    await expect(startServer(nothing, { port, orNext: false })).rejects.toMatchObject({ code: 'EADDRINUSE' })
    const running = await startServer(nothing, { port, orNext: true })
    expect(Number(new URL(running.address).port)).toBeGreaterThan(port)
    await running.close()
    await new Promise((resolve) => taken.close(resolve))
  })
})
