// SOURCE standard RFC 9110 and 6585 (status codes 303, 401, 403, 415, 429), from memory; numbers of tries as sign-in-limit.ts states them
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeEach, describe, expect, it } from 'vitest'
import { loopbackNames } from './index.ts'
import { type ExampleServer, exampleServer } from './test-support/example-server.ts'
import { cookieOf, exampleSignIn, passphrase, setCookieOf, tryToSignIn } from './test-support/example-sign-in.ts'
import { send } from './test-support/raw-request.ts'

const heron = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
const PROXIED = { host: 'bench.example', scheme: 'https' } as const

let server: ExampleServer
const running: ExampleServer[] = []
const clock = { ms: 0 }
beforeEach(async () => {
  // A server of its own for each test: tries that one test used up would be missing in the next.
  server = await exampleServer(heron, { signIn: await exampleSignIn(clock), names: [...loopbackNames, PROXIED] })
  running.push(server)
})
afterAll(() => Promise.all(running.map((one) => one.end())))

const tried = (text: string, headers = {}) => tryToSignIn(server.address, text, headers)
const get = (path: string, headers = {}) => send(server.address, { path, headers })
const read = async (cookie: string) => (await get('/api/designs', { cookie })).status
const signedIn = async () => cookieOf(await tried(passphrase))

describe('before signing in', () => {
  it.each(['/', '/index.html', '/assets/page.js', '/sign-in.html', '/nothing', '/nothing.css', '/assets/..%2f..%2fsecret.css'])(
    '%s leads to the page for signing in',
    async (path) => {
      const answer = await get(path)
      expect(answer.status).toBe(303)
      expect(answer.headers.location).toBe('/sign-in')
    },
  )

  it.each(['/api/designs', '/api/nothing', '/api/%73ession', '/api', '/API/designs', '//api/designs', '/api/../api/designs'])(
    '%s gives nothing away',
    async (path) => {
      const answer = await get(path)
      expect([401, 303]).toContain(answer.status)
      expect(answer.text).not.toContain('heron')
    },
  )

  it('the looks of that page are there for everybody', async () => {
    expect((await get('/assets/sign-in.css')).status).toBe(200)
  })

  it('that page runs no script, sends its form here only, and is not kept', async () => {
    const { status, headers, text } = await get('/sign-in')
    expect(status).toBe(200)
    expect(text).not.toContain('<!--')
    const policy = String(headers['content-security-policy'])
    expect(policy).toContain("form-action 'self'")
    expect(policy).toContain("script-src 'none'")
    expect(policy).not.toContain('unsafe')
    expect(headers['cache-control']).toBe('no-store')
    expect((await get('/', { cookie: await signedIn() })).headers['content-security-policy']).toContain("form-action 'none'")
  })
})

describe('signing in', () => {
  it('opens the notebook and the data', async () => {
    const answer = await tried(passphrase)
    expect(answer.status).toBe(303)
    expect(answer.headers.location).toBe('/')
    const cookie = cookieOf(answer)
    expect(await read(cookie)).toBe(200)
    expect((await get('/', { cookie })).text).toContain('<title>page</title>')
    expect((await get('/sign-in', { cookie })).headers.location).toBe('/')
  })

  it('gives a cookie that no script reads, no other site sends, and that ends with the session', async () => {
    const line = setCookieOf(await tried(passphrase))
    expect(line).toMatch(/^fingerwright-session=[\w-]{43}; /)
    for (const part of ['HttpOnly', 'SameSite=Strict', 'Path=/', 'Max-Age=43200']) expect(line.split('; ')).toContain(part)
    expect(line).not.toMatch(/Domain|Secure/)
  })

  it('gives a Secure cookie of this very host where a proxy speaks TLS, and takes no other there', async () => {
    const headers = { host: PROXIED.host, origin: `https://${PROXIED.host}` }
    const answer = await tried(passphrase, headers)
    expect(setCookieOf(answer)).toMatch(/^__Host-fingerwright-session=[\w-]{43}; .*Secure/)
    const cookie = cookieOf(answer)
    expect((await get('/api/designs', { ...headers, cookie })).status).toBe(200)
    expect((await get('/api/designs', { ...headers, cookie: cookie.replace('__Host-', '') })).status).toBe(401)
  })

  it.each([`${passphrase} `, passphrase.toUpperCase(), '', '__proto__', '\u0000', 'x'.repeat(3000)])(
    'is refused with "%s"',
    async (wrong) => {
      const answer = await tried(wrong)
      expect(answer.status).toBe(401)
      expect(answer.text).toContain('not the passphrase')
      expect(setCookieOf(answer)).toBe('')
    },
  )

  it('does not repeat what was tried', async () => {
    expect((await tried('<script>steal()</script>')).text).not.toContain('steal')
  })

  it.each(['text/plain', 'application/json', 'multipart/form-data; boundary=x', ''])('is a form and no "%s"', async (type) => {
    expect((await tried(passphrase, { 'content-type': type })).status).toBe(415)
  })

  it.each([
    { origin: 'http://evil.example' },
    { origin: 'null' },
    { 'sec-fetch-site': 'cross-site' },
    { 'sec-fetch-site': 'same-site' },
  ])('cannot be done by a foreign page: %j', async (headers) => {
    const answer = await tried(passphrase, headers)
    expect(answer.status).toBe(403)
    expect(setCookieOf(answer)).toBe('')
  })

  it('cannot be done over plain HTTP under a name that is served by TLS', async () => {
    const headers = { host: PROXIED.host, origin: `http://${PROXIED.host}` }
    expect((await tried(passphrase, headers)).status).toBe(403)
  })
})

describe('a session', () => {
  it('never takes a token that came from outside: what a foreigner planted stays worthless', async () => {
    const planted = `fingerwright-session=${'A'.repeat(43)}`
    const given = cookieOf(await tried(passphrase, { cookie: planted }))
    expect(given).not.toBe(planted)
    expect(await read(planted)).toBe(401)
  })

  it('is replaced by signing in again', async () => {
    const first = await signedIn()
    const second = cookieOf(await tried(passphrase, { cookie: first }))
    expect(await read(first)).toBe(401)
    expect(await read(second)).toBe(200)
  })

  it('ends on the server when its owner signs out, and others go on', async () => {
    const [mine, other] = [await signedIn(), await signedIn()]
    const answer = await send(server.address, { method: 'POST', path: '/api/sign-out', headers: { cookie: mine } })
    expect(answer.status).toBe(204)
    expect(setCookieOf(answer)).toContain('Max-Age=0')
    expect(await read(mine)).toBe(401)
    expect(await read(other)).toBe(200)
  })

  it('cannot be ended by a foreign page', async () => {
    const cookie = await signedIn()
    const headers = { cookie, 'sec-fetch-site': 'cross-site' }
    expect((await send(server.address, { method: 'POST', path: '/api/sign-out', headers })).status).toBe(403)
    expect(await read(cookie)).toBe(200)
  })

  it('ends after twelve hours', async () => {
    const cookie = await signedIn()
    clock.ms += 12 * 3_600_000 - 1
    expect(await read(cookie)).toBe(200)
    clock.ms += 1
    expect(await read(cookie)).toBe(401)
  })

  it('does not open another server', async () => {
    const cookie = await signedIn()
    const other = await exampleServer(heron, { signIn: await exampleSignIn(clock) })
    running.push(other)
    expect((await send(other.address, { path: '/api/designs', headers: { cookie } })).status).toBe(401)
  })

  it.each([
    '',
    'fingerwright-session',
    'fingerwright-session=',
    'fingerwright-session=%',
    'other=1',
    '=; ;;',
    'constructor=1',
    '__proto__=1',
  ])('is not begun by the cookie "%s"', async (cookie) => {
    expect(await read(cookie)).toBe(401)
  })

  it('says whether it can be ended, so that the page shows its button', async () => {
    const cookie = await signedIn()
    expect(JSON.parse((await get('/api/session', { cookie })).text)).toEqual({ canSignOut: true })
    const open = await exampleServer(heron)
    running.push(open)
    expect(JSON.parse((await send(open.address, { path: '/api/session' })).text)).toEqual({ canSignOut: false })
  })
})

describe('a guesser', () => {
  it('is slowed after five tries, told for how long, and let go on after that', async () => {
    for (let guess = 0; guess < 5; guess++) expect((await tried(`guess number ${guess}`)).status).toBe(401)
    const refused = await tried('one guess more')
    expect(refused.status).toBe(429)
    expect(refused.headers['retry-after']).toBe('60')
    expect(refused.text).toContain('Wait 60 seconds')
    clock.ms += 60_000
    expect((await tried('one guess more')).status).toBe(401)
  })

  it('gets no answer from the right passphrase either while waiting', async () => {
    for (let guess = 0; guess < 5; guess++) await tried(`guess number ${guess}`)
    const refused = await tried(passphrase)
    expect(refused.status).toBe(429)
    expect(setCookieOf(refused)).toBe('')
  })

  it('is not taken at its word about where it comes from', async () => {
    const statuses: number[] = []
    for (let guess = 0; guess < 6; guess++) {
      statuses.push((await tried('guess', { 'x-forwarded-for': `192.0.2.${guess}`, forwarded: `for=192.0.2.${guess}` })).status)
    }
    expect(statuses).toEqual([401, 401, 401, 401, 401, 429])
  })

  it('that guesses many at once is slowed as well', async () => {
    const answers = await Promise.all(Array.from({ length: 30 }, (_, guess) => tried(`guess number ${guess}`)))
    expect(answers.filter(({ status }) => status === 401)).toHaveLength(5)
    expect(answers.filter(({ status }) => status === 429)).toHaveLength(25)
  })

  it('locks nobody out who is signed in', async () => {
    const cookie = await signedIn()
    for (let guess = 0; guess < 30; guess++) await tried(`guess number ${guess}`)
    expect(await read(cookie)).toBe(200)
  })
})
