import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ExampleServer, exampleServer } from './test-support/example-server.ts'
import { cookieOf, exampleSignIn, passphrase, tryToSignIn } from './test-support/example-sign-in.ts'
import { knownRoutes } from './test-support/known-routes.ts'
import { send } from './test-support/raw-request.ts'
import { anything, onTheWire, type SpoiltRequest, spoiltRequests } from './test-support/spoilt-requests.ts'
import { overTheWire, statusesOf } from './test-support/wire.ts'

const heron = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
const routes = knownRoutes(heron)
const SEED = 40_423

const clock = { ms: 0 }
let server: ExampleServer
beforeAll(async () => {
  const patience = { headers_ms: 5_000, request_ms: 5_000, silence_ms: 5_000 }
  server = await exampleServer(heron, { signIn: await exampleSignIn(clock), patience })
})
afterAll(() => server.end())

/** Signs in for one request: one before it may have signed out. The clock moves on, so that no try is one too many. */
async function freshCookie(): Promise<string> {
  clock.ms += 600_000
  return cookieOf(await tryToSignIn(server.address, passphrase))
}

/** Sends a text in two pieces, cut anywhere. */
async function answersTo(text: string, cut_ratio: number): Promise<readonly number[]> {
  const all = Buffer.from(text, 'latin1')
  const cut = Math.floor(cut_ratio * all.byteLength)
  return statusesOf(await overTheWire(server.address, { pieces: [all.subarray(0, cut), all.subarray(cut)] }))
}

describe('a thousand requests that nobody would send in good faith', () => {
  it.each([
    { what: 'bytes of any kind', requests: anything, reached: [303, 400, 431] },
    {
      what: 'requests to every route, spoilt in some part',
      requests: spoiltRequests(routes),
      reached: [200, 400, 401, 403, 404, 422],
    },
  ])('$what are answered below 500 or cut off, and the connection ends', async ({ requests, reached }) => {
    const seen = new Set<number>()
    // SOURCE property (a fault of the sender is a 4xx; a 5xx would be a fault of ours)
    await fc.assert(
      fc.asyncProperty<[string | SpoiltRequest, number]>(
        requests,
        fc.double({ min: 0, max: 1, noNaN: true }),
        async (request, cut_ratio) => {
          const text = typeof request === 'string' ? request : onTheWire(request, await freshCookie())
          for (const status of await answersTo(text, cut_ratio)) {
            seen.add(status)
            expect(status).toBeLessThan(500)
          }
        },
      ),
      { seed: SEED, numRuns: 500 },
    )
    // The requests get as far as what they aim at: each of these answers was given.
    expect([...seen]).toEqual(expect.arrayContaining(reached))
  })

  it('leave the server as it was', async () => {
    const headers = { cookie: await freshCookie(), 'content-type': 'application/json' }
    expect((await send(server.address, { method: 'POST', path: '/api/evaluate', headers, body: heron })).status).toBe(200)
    expect((await send(server.address, { path: '/api/designs/heron', headers })).text).toBe(heron)
    expect(Object.keys(Object.prototype)).toEqual([])
  })
})
