// SOURCE standard RFC 9110 and 6585 (status codes 200, 408, 431), from memory; the limits are stated in connection-limits.ts
import { connect, type Socket } from 'node:net'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ExampleServer, exampleServer } from './test-support/example-server.ts'
import { send } from './test-support/raw-request.ts'
import { overTheWire, statusesOf } from './test-support/wire.ts'

// Patience of a kind that a test can wait for; with the usual one these tests would not end before the runner ends them.
const patience = { headers_ms: 300, request_ms: 600, silence_ms: 1_200 }

let server: ExampleServer
beforeAll(async () => {
  server = await exampleServer('{}', { patience })
})
afterAll(() => server.end())

const HEAD = 'POST /api/evaluate HTTP/1.1\r\nhost: localhost\r\ncontent-type: application/json\r\n'

describe('a sender that stays and sends no more', () => {
  it.each([
    ['in the first line', 'GET / HT'],
    ['in the headers', 'GET / HTTP/1.1\r\nhost: localhost\r\nx: '],
    ['in a body of stated length', `${HEAD}content-length: 100\r\n\r\n{`],
    ['in a body of pieces', `${HEAD}transfer-encoding: chunked\r\n\r\n1\r\n{\r\n`],
  ])('%s is told so and cut off', async (_where, text) => {
    expect(statusesOf(await overTheWire(server.address, { pieces: [text], staysOpen: true }))).toEqual([408])
  })

  it('before anything was sent is cut off without a word', async () => {
    expect(await overTheWire(server.address, { pieces: [], staysOpen: true })).toMatch(/^(HTTP\/1\.1 408 .*)?/)
  })
})

describe('headers', () => {
  const asking = (lines: string) => overTheWire(server.address, { pieces: [`GET / HTTP/1.1\r\nhost: localhost\r\n${lines}\r\n`] })

  it('end at 8 kB, in one line or in many', async () => {
    expect(statusesOf(await asking(`x: ${'y'.repeat(8 * 1024)}\r\n`))).toEqual([431])
    expect(statusesOf(await asking('abcdef: 123456789\r\n'.repeat(600)))).toEqual([431])
    expect(statusesOf(await asking(`connection: close\r\nx: ${'y'.repeat(7 * 1024)}\r\n`))).toEqual([200])
  })

  it('that frame one body in two ways are refused: a proxy and we could read two requests', async () => {
    const twice =
      'content-length: 5\r\ntransfer-encoding: chunked\r\n\r\n0\r\n\r\nGET /api/designs HTTP/1.1\r\nhost: localhost\r\n'
    expect(statusesOf(await asking(twice))).toEqual([400])
    expect(statusesOf(await asking('content-length: 5\r\ncontent-length: 6\r\n'))).toEqual([400])
  })

  it('are all looked at, however many', async () => {
    const many = 'a: b\r\n'.repeat(1_000)
    expect(statusesOf(await asking(`${many}origin: http://evil.example\r\n`))).toEqual([403])
    expect(statusesOf(await asking('host: evil.example\r\n'))).toEqual([421])
  })
})

it('more connections than a workshop opens are turned away, and the server goes on after them', async () => {
  // Long enough that the last one comes before the first is cut off, on a busy machine too.
  const patient = await exampleServer('{}', { patience: { headers_ms: 3_000, request_ms: 3_000, silence_ms: 6_000 } })
  const { hostname, port } = new URL(patient.address)
  const sockets = Array.from({ length: 300 }, () => connect({ host: hostname, port: Number(port) }))
  const received = await Promise.all(sockets.map(receivedBy))
  // Those within the limit are told that they are too slow; the others hear nothing.
  expect(received.filter((text) => text.includes(' 408 '))).toHaveLength(256)
  expect(received.filter((text) => text === '')).toHaveLength(44)
  expect((await send(patient.address, { path: '/' })).status).toBe(200)
  await patient.end()
})

function receivedBy(socket: Socket): Promise<string> {
  return new Promise((resolve) => {
    let received = ''
    socket.on('data', (bytes) => {
      received += bytes
    })
    socket.on('error', () => socket.destroy())
    socket.on('close', () => resolve(received))
  })
}
