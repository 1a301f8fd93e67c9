/**
 * Requests that nobody would send in good faith, as the bytes that go over the wire (Latin-1 text): anything at all, and requests to
 * every route that are in order but for what was done to some of their parts.
 */
import fc from 'fast-check'
import type { KnownRoute } from './known-routes.ts'

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
  ...['content-length', 'transfer-encoding', 'content-type', 'content-encoding', 'expect', 'upgrade', 'connection', 'origin'],
  ...['sec-fetch-site', 'host', 'range', 'if-none-match', 'cookie', 'x-forwarded-for', 'accept-encoding', '__proto__'],
]

const bytes = (maxLength: number) => fc.uint8Array({ maxLength }).map((found) => Buffer.from(found).toString('latin1'))
/** Bytes that keep a line a line. */
const word = (maxLength: number) => bytes(maxLength).map((text) => text.replaceAll(/[\r\n]/g, '~'))
const visible = fc.string({ unit: fc.integer({ min: 0x20, max: 0x7e }).map((code) => String.fromCharCode(code)), maxLength: 60 })
const climb = fc.array(fc.constantFrom(...CLIMBS), { minLength: 1, maxLength: 6 }).map((steps) => steps.join(''))

/** Mostly left as it is: a request that is spoilt in every part is refused at its first. */
const rarely = <T>(change: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 3, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: change })

const headerLine = fc
  .tuple(
    fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...HEADERS) }, { weight: 1, arbitrary: word(10) }),
    fc.oneof(fc.constantFrom(...VALUES), { weight: 3, arbitrary: visible }, { weight: 1, arbitrary: word(60) }),
  )
  .map(([name, value]) => `${name}: ${value}`)

/** Anything at all, and lines that look like a request for as long as it lasts. */
export const anything: fc.Arbitrary<string> = fc.oneof(
  bytes(400),
  fc
    .tuple(word(40), fc.array(word(80), { maxLength: 20 }), bytes(200))
    .map(([first, lines, rest]) => `GET /${first} HTTP/1.1\r\nhost: localhost\r\n${lines.join('\r\n')}\r\n\r\n${rest}`),
  fc
    .tuple(fc.constantFrom(...METHODS), word(200))
    .map(([method, target]) => `${method} ${target} HTTP/1.1\r\nhost: localhost\r\n\r\n`),
  fc.nat(20_000).map((length) => `GET / HTTP/1.1\r\nhost: localhost\r\nx: ${'y'.repeat(length)}\r\n\r\n`),
  fc.nat(3000).map((count) => `GET / HTTP/1.1\r\nhost: localhost\r\n${'a: b\r\n'.repeat(count)}\r\n`),
)

/** A request to a route of ours, and what was done to it; a part that is undefined is left as it was. */
export interface SpoiltRequest {
  readonly known: KnownRoute
  readonly method?: string | undefined
  /** Stands after the path. */
  readonly tail?: string | undefined
  readonly lines: readonly string[]
  readonly body: string
  readonly isSignedIn: boolean
  readonly framing: Framing
}

/** How a body's end is told: by its length, by a length that is too long, in pieces, or not at all. */
type Framing = 'length' | 'short' | 'chunked' | 'none'

/** Requests to each of the routes in turn of the dice. */
export function spoiltRequests(routes: readonly KnownRoute[]): fc.Arbitrary<SpoiltRequest> {
  return fc.constantFrom(...routes).chain((known) =>
    fc.record({
      known: fc.constant(known),
      method: rarely(fc.constantFrom(...METHODS)),
      tail: rarely(fc.oneof(climb, fc.constantFrom(...NAMES), word(30))),
      lines: fc.array(headerLine, { maxLength: 2 }),
      body: bodyFor(known),
      isSignedIn: fc.constantFrom(true, true, false),
      framing: fc.constantFrom<Framing>('length', 'length', 'length', 'chunked', 'chunked', 'short', 'none'),
    }),
  )
}

/** The route's own body, the same with some bytes exchanged, with one value exchanged where it is an object, or another one. */
function bodyFor({ request }: KnownRoute): fc.Arbitrary<string> {
  const own = Buffer.from(request.body ?? '').toString('latin1')
  const exchanged = fc
    .tuple(fc.nat(own.length), bytes(20))
    .map(([cut, text]) => own.slice(0, cut) + text + own.slice(cut + text.length))
  const another = fc.oneof(bytes(300), fc.json(), fc.constant('['.repeat(60_000)), fc.constant('{"a":'.repeat(20_000)))
  return fc.oneof(fc.constant(own), exchanged, own.startsWith('{') ? otherValue(own) : exchanged, another)
}

function otherValue(own: string): fc.Arbitrary<string> {
  const value: Readonly<Record<string, unknown>> = JSON.parse(own)
  return fc
    .tuple(fc.constantFrom(...Object.keys(value), '__proto__', 'constructor'), fc.jsonValue())
    .map(([key, other]) => JSON.stringify({ ...value, [key]: other }))
}

/**
 * A spoilt request as it goes over the wire.
 *
 * @param cookie sent where the sender is signed in
 */
export function onTheWire({ known: { request }, ...spoilt }: SpoiltRequest, cookie: string): string {
  const { method = request.method, tail = '', lines, isSignedIn } = spoilt
  const [framed, payload] = inFrame(spoilt)
  const own = Object.entries(request.headers ?? {}).map(([name, value]) => `${name}: ${value}`)
  const head = [`${method} ${request.path}${tail} HTTP/1.1`, 'host: localhost', 'connection: close']
  return `${[...head, ...own, ...framed, ...(isSignedIn ? [`cookie: ${cookie}`] : []), ...lines].join('\r\n')}\r\n\r\n${payload}`
}

function inFrame({ framing, body }: Pick<SpoiltRequest, 'framing' | 'body'>): readonly [readonly string[], string] {
  if (framing === 'none') return [[], body]
  if (framing === 'chunked') {
    const pieces = body === '' ? '' : `${body.length.toString(16)}\r\n${body}\r\n`
    return [['transfer-encoding: chunked'], `${pieces}0\r\n\r\n`]
  }
  return [[`content-length: ${body.length + (framing === 'short' ? 7 : 0)}`], body]
}
