import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ExampleServer, exampleServer } from './test-support/example-server.ts'
import { cookieOf, exampleSignIn, passphrase, tryToSignIn } from './test-support/example-sign-in.ts'
import { type KnownRoute, knownRoutes } from './test-support/known-routes.ts'
import { send } from './test-support/raw-request.ts'
import { overTheWire, statusesOf } from './test-support/wire.ts'

const heron = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
const routes = knownRoutes(heron)
const CALLS = 1000
const SEED = 40_423

const clock = { ms: 0 }
let server: ExampleServer
let cookie = ''
beforeAll(async () => {
  const patience = { headers_ms: 5_000, request_ms: 5_000, silence_ms: 5_000 }
  server = await exampleServer(heron, { signIn: await exampleSignIn(clock), patience })
})
afterAll(() => server.end())

const bytes = (maxLength: number) => fc.uint8Array({ maxLength }).map((found) => Buffer.from(found).toString('latin1'))
/** Bytes that keep a line a line. */
const word = (maxLength: number) => bytes(maxLength).map((text) => text.replaceAll(/[\r\n]/g, '~'))
const METHODS = [
  'GET',
  'HEAD',
  'POST',
  'PUT',
  'PATCH',
  'DELETE',
  'OPTIONS',
  'TRACE',
  'CONNECT',
  'PROPFIND',
  'get',
  'M-SEARCH',
  'PRI',
]
const CLIMBS = [
  '../',
  '..%2f',
  '%2e%2e/',
  '%2e%2e%5c',
  '..\\',
  '%252e%252e/',
  '%c0%ae%c0%ae/',
  '....//',
  '%00',
  '/etc/passwd',
  '//',
]
const climb = fc.array(fc.constantFrom(...CLIMBS), { minLength: 1, maxLength: 6 }).map((steps) => steps.join(''))
const NAMES = ['__proto__', 'constructor', 'toString', '.', '..', 'heron', 'x'.repeat(7000), '%E0%A4%A', '%', '?', '#', '*']
const VALUES = [
  '',
  'null',
  '-1',
  '0',
  '18446744073709551616',
  '__proto__',
  'chunked',
  'chunked, chunked',
  '100-continue',
  'websocket',
]
const HEADERS = [
  'content-length',
  'transfer-encoding',
  'content-type',
  'content-encoding',
  'expect',
  'upgrade',
  'connection',
  'origin',
  'sec-fetch-site',
  'host',
  'range',
  'if-none-match',
  'cookie',
  'x-forwarded-for',
  'accept-encoding',
  '__proto__',
]
const visible = fc.string({ unit: fc.integer({ min: 0x20, max: 0x7e }).map((code) => String.fromCharCode(code)), maxLength: 60 })
/** Mostly left as it is: a request that is spoilt in every part is refused at its first. */
const rarely = <T>(change: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 3, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: change })
const headerLine = fc
  .tuple(
    fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...HEADERS) }, { weight: 1, arbitrary: word(10) }),
    fc.oneof(fc.constantFrom(...VALUES), { weight: 3, arbitrary: visible }, { weight: 1, arbitrary: word(60) }),
  )
  .map(([name, value]) => `${name}: ${value}`)

/** A request to a route of ours, in order but for what was done to some of its parts. */
const nearlyRight = fc
  .record({
    known: fc.constantFrom(...routes),
    method: rarely(fc.constantFrom(...METHODS)),
    tail: rarely(fc.oneof(climb, fc.constantFrom(...NAMES), word(30))),
    lines: fc.array(headerLine, { maxLength: 2 }),
    body: rarely(fc.oneof(bytes(300), fc.json(), fc.constant('['.repeat(60_000)), cutDocument())),
    isSignedIn: fc.boolean(),
    framing: fc.constantFrom('length', 'length', 'length', 'chunked', 'chunked', 'short', 'none'),
  })
  .map((parts) => asText(parts))

function cutDocument() {
  return fc
    .tuple(fc.nat(heron.length), bytes(20))
    .map(([cut, text]) => heron.slice(0, cut) + text + heron.slice(cut + text.length))
}

interface Parts {
  readonly known: KnownRoute
  readonly method: string | null
  readonly tail: string | null
  readonly lines: readonly string[]
  readonly body: string | null
  readonly isSignedIn: boolean
  readonly framing: string
}

function asText({ known: { request }, method, tail, lines, body, isSignedIn, framing }: Parts): string {
  const sent = body ?? (typeof request.body === 'string' ? request.body : '')
  const length = Buffer.byteLength(sent, 'latin1')
  const chunk = `${length.toString(16)}\r\n${sent}\r\n${length === 0 ? '' : '0\r\n\r\n'}`
  const frames: Readonly<Record<string, readonly [string[], string]>> = {
    length: [[`content-length: ${length}`], sent],
    short: [[`content-length: ${length + 7}`], sent],
    chunked: [['transfer-encoding: chunked'], chunk],
    none: [[], sent],
  }
  const [framed, payload] = frames[framing] ?? [[], '']
  const own = Object.entries(request.headers ?? {}).map(([name, value]) => `${name}: ${value}`)
  const head = [`${method ?? request.method} ${request.path}${tail ?? ''} HTTP/1.1`, 'host: localhost', 'connection: close']
  return `${[...head, ...own, ...framed, ...(isSignedIn ? [`cookie: ${cookie}`] : []), ...lines].join('\r\n')}\r\n\r\n${payload}`
}

/** Anything at all, and lines that look like a request for as long as it lasts. */
const anything = fc.oneof(
  bytes(400),
  fc.tuple(word(40), fc.array(word(80), { maxLength: 20 }), bytes(200)).map(([first, lines, rest]) => {
    return `${[`GET /${first} HTTP/1.1`, 'host: localhost', ...lines].join('\r\n')}\r\n\r\n${rest}`
  }),
  fc
    .tuple(fc.constantFrom(...METHODS), word(200))
    .map(([method, target]) => `${method} ${target} HTTP/1.1\r\nhost: localhost\r\n\r\n`),
  fc.nat(20_000).map((length) => `GET / HTTP/1.1\r\nhost: localhost\r\nx: ${'y'.repeat(length)}\r\n\r\n`),
  fc.nat(3000).map((count) => `GET / HTTP/1.1\r\nhost: localhost\r\n${'a: b\r\n'.repeat(count)}\r\n`),
)

/** Sends a text in two pieces, cut anywhere. */
async function answersTo(text: string, cut_ratio: number): Promise<readonly number[]> {
  const all = Buffer.from(text, 'latin1')
  const cut = Math.floor(cut_ratio * all.byteLength)
  return statusesOf(await overTheWire(server.address, { pieces: [all.subarray(0, cut), all.subarray(cut)] }))
}

/** Signs in before each request: one of those before may have signed out. The clock moves on, so that no try is one too many. */
async function signIn(): Promise<void> {
  clock.ms += 600_000
  cookie = cookieOf(await tryToSignIn(server.address, passphrase))
}

describe(`${CALLS} requests that nobody would send in good faith`, () => {
  it.each([
    { what: 'bytes of any kind', requests: anything, reached: [303, 400, 431] },
    {
      what: 'requests to every route, spoilt in some part',
      requests: nearlyRight,
      reached: [200, 204, 400, 401, 403, 404, 413, 415, 422],
    },
  ])('$what are answered below 500 or cut off, and the connection ends', async ({ requests, reached }) => {
    const seen = new Set<number>()
    // SOURCE property (a fault of the sender is a 4xx; a 5xx would be a fault of ours)
    await fc.assert(
      fc.asyncProperty(requests, fc.double({ min: 0, max: 1, noNaN: true }), async (text, cut_ratio) => {
        await signIn()
        for (const status of await answersTo(text, cut_ratio)) {
          seen.add(status)
          expect(status).toBeLessThan(500)
        }
      }),
      { seed: SEED, numRuns: CALLS / 2 },
    )
    // The requests get as far as what they aim at: each of these answers was given.
    expect([...seen]).toEqual(expect.arrayContaining(reached))
  })

  it('leave the server as it was', async () => {
    await signIn()
    const headers = { cookie, 'content-type': 'application/json' }
    expect((await send(server.address, { method: 'POST', path: '/api/evaluate', headers, body: heron })).status).toBe(200)
    expect((await send(server.address, { path: '/api/designs/heron', headers })).text).toBe(heron)
    expect(Object.keys(Object.prototype)).toEqual([])
  })
})
