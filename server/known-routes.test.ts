// SOURCE standard RFC 9110 (status codes 401, 403, 413, 421), from memory; their choice is written in docs/decisions/
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { TypesetFault, type Typesetter, typesetterAt } from '../typesetting/index.ts'
import { createApp } from './app.ts'
import { type ExampleServer, exampleServer } from './test-support/example-server.ts'
import { cookieOf, exampleSignIn, passphrase, tryToSignIn } from './test-support/example-sign-in.ts'
import { knownRoutes } from './test-support/known-routes.ts'
import { type RawRequest, send } from './test-support/raw-request.ts'

const heron = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
const routes = knownRoutes(heron).map((known) => ({ ...known, title: `${known.request.method} ${known.route}` }))

const small = typesetterAt(join(import.meta.dirname, '..'))
/** Drawings take a second and are set in tests of their own; a pack goes without them here. */
const typeset: Typesetter = (jobs, options) =>
  jobs.some(({ template }) => template === 'sheets') ? Promise.reject(new TypesetFault('no drawings here')) : small(jobs, options)

const clock = { ms: 0 }
let server: ExampleServer
let cookie: string
beforeAll(async () => {
  server = await exampleServer(heron, { signIn: await exampleSignIn(clock), typeset })
})
afterAll(() => server.end())

/** Sends as somebody who has just signed in; the clock moves on, so that no try is one too many. */
async function ask(request: RawRequest) {
  clock.ms += 3_600_000
  cookie = cookieOf(await tryToSignIn(server.address, passphrase))
  return send(server.address, { ...request, headers: { cookie, ...request.headers } })
}

it('every route of the app is in the list', () => {
  const inApp = createApp(server.given).routes.filter(({ method, path }) => method !== 'ALL' && !path.includes('*'))
  const named = new Set(inApp.map(({ method, path }) => `${method} ${path}`))
  expect([...named].sort()).toEqual(routes.map(({ title }) => title).sort())
})

describe.each(routes)('$title', ({ request, most_bytes, isOpen }) => {
  it('answers a request in order', async () => {
    const { status } = await ask(request)
    // The one wrong passphrase among the requests is no fault of the route.
    expect(status === 401 ? request.path : status).toSatisfy((found) => found === '/sign-in' || (found >= 200 && found < 400))
  })

  it(isOpen ? 'answers before anybody has signed in' : 'is closed to who has not signed in', async () => {
    const { status, headers } = await send(server.address, request)
    if (isOpen) expect(headers['content-type']).toContain('text/html')
    else expect(status).toBe(401)
  })

  it('is closed to a foreign name that points here', async () => {
    expect((await ask({ ...request, headers: { ...request.headers, host: 'evil.example' } })).status).toBe(421)
  })

  it.each(['http://evil.example', 'null', 'https://127.0.0.1', 'http://127.0.0.1:1'])(
    'is closed to a page of origin %s',
    async (origin) => {
      expect((await ask({ ...request, headers: { ...request.headers, origin } })).status).toBe(403)
    },
  )

  it.each(['cross-site', 'same-site'])('is closed to a %s page that sends no origin, links to the form apart', async (site) => {
    const { status } = await ask({ ...request, headers: { ...request.headers, 'sec-fetch-site': site } })
    const isLink = request.method === 'GET' && !request.path.startsWith('/api/')
    expect(status === 403).toBe(!isLink)
  })

  it('refuses a body past its limit, with its length stated or not', async () => {
    const body = Buffer.alloc((most_bytes ?? 0) + 1, 0x20)
    for (const chunked of [false, true]) {
      const { status } = await ask({ ...request, body, chunked })
      if (request.method === 'GET') expect(status).toBeLessThan(500)
      else expect(status).toBe(413)
    }
  })

  it.each([
    ['malformed JSON', '{ "version": '],
    ['nothing', ''],
    ['a list', '[]'],
    ['prototype keys', '{ "__proto__": { "version": 0 }, "constructor": { "prototype": { "x": 1 } }, "name": "__proto__" }'],
    ['deep nesting', '['.repeat(900_000)],
    ['deep nesting of objects', '{"a":'.repeat(300_000)],
    ['bytes that are not UTF-8', new Uint8Array([0x7b, 0xff, 0xfe, 0x7d])],
  ])('refuses %s as a body without failing itself, where it reads one', async (_what, body) => {
    const { status } = await ask({ ...request, body })
    if (most_bytes === undefined || most_bytes === 0) expect(status).toBeLessThan(500)
    else expect(status).toSatisfy((found) => found >= 400 && found < 500)
    expect(({} as { x?: number }).x).toBeUndefined()
  })

  it.each(['PUT', 'PATCH', 'DELETE', 'POST', 'GET', 'OPTIONS', 'TRACE', 'PROPFIND'])(
    'takes %s only if it is its own',
    async (method) => {
      const isKnown = routes.some((other) => other.request.method === method && other.request.path === request.path)
      const { status } = await ask({ ...request, method, ...(method === 'GET' ? { body: '' } : {}) })
      expect(status).toBeLessThan(500)
      if (!isKnown) expect(status).toBeGreaterThanOrEqual(400)
    },
  )
})
