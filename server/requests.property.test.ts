import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type ExampleServer, exampleServer } from './test-support/example-server.ts'
import { send } from './test-support/raw-request.ts'

const heron = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')

let server: ExampleServer
beforeAll(async () => {
  server = await exampleServer(heron)
})
afterAll(() => server.end())

// Characters that a client may put on the wire; Node refuses to send the others.
const visible = fc.string({ unit: fc.integer({ min: 0x21, max: 0x7e }).map((code) => String.fromCharCode(code)), maxLength: 40 })
const header = fc.string({ unit: fc.integer({ min: 0x20, max: 0x7e }).map((code) => String.fromCharCode(code)), maxLength: 40 })
const path = fc.oneof(
  visible.map((text) => `/${text}`),
  visible.map((text) => `/api/designs/${text}`),
  visible.map((text) => `/api/evaluate?name=${text}`),
  fc.constantFrom('/', '/api/designs', '/api/evaluate', '/api/schema', '/assets/page.js'),
)
const body = fc.oneof(
  fc.uint8Array({ maxLength: 200 }),
  fc.json().map((text) => Buffer.from(text)),
  fc.nat(heron.length).map((cut) => Buffer.from(heron.slice(0, cut))),
  fc.tuple(fc.nat(heron.length), visible).map(([cut, text]) => Buffer.from(heron.slice(0, cut) + text + heron.slice(cut))),
)
const headers = fc.record(
  {
    'content-type': fc.oneof(fc.constant('application/json'), header),
    origin: header,
    host: fc.oneof(fc.constant('localhost'), header),
    'sec-fetch-site': fc.constantFrom('same-origin', 'cross-site', 'none'),
    range: header,
    'if-none-match': header,
    accept: header,
  },
  { requiredKeys: [] },
)

it('answers any request without failing itself', async () => {
  // SOURCE property (a fault of the sender is a 4xx; a 5xx would be a fault of ours)
  await fc.assert(
    fc.asyncProperty(
      fc.record({ method: fc.constantFrom('GET', 'POST', 'PUT', 'DELETE', 'HEAD', 'OPTIONS', 'PATCH'), path, headers, body }),
      async (request) => {
        const bodiless = request.method === 'GET' || request.method === 'HEAD' ? { ...request, body: '' } : request
        const { status } = await send(server.address, bodiless)
        expect(status).toBeGreaterThanOrEqual(200)
        expect(status).toBeLessThan(500)
      },
    ),
    { seed: 20_117, numRuns: 1500 },
  )
})
