import { getConnInfo } from '@hono/node-server/conninfo'
import type { Context, Hono } from 'hono'
import { bodyAtMost } from './body-limit.ts'
import type { OwnName } from './gatekeeper-names.ts'
import type { PageFiles } from './page-files.ts'
import type { KeptPassphrase } from './passphrase.ts'
import { passphraseCheck } from './passphrase-check.ts'
import { SessionCookie } from './session-cookie.ts'
import { type Clock, Sessions } from './sessions.ts'
import { SignInLimit } from './sign-in-limit.ts'
import { isForEverybody, signInAddress, signInPage } from './sign-in-page.ts'

/** A form with the longest passphrase, every character of it written out as four escaped bytes. */
const FORM_bytes = 4096

/** What a person must know to be let in, and the clock by which sessions end. */
export interface SignIn {
  readonly kept: KeptPassphrase
  readonly now: Clock
}

/** What the routes for signing in stand on. */
export interface Threshold extends SignIn {
  readonly names: readonly OwnName[]
  readonly page: PageFiles
}

/**
 * Lets nobody past who is not signed in. Routes added to the app before are open to all, routes added after are not.
 *
 * - `GET /sign-in` → the page with the form; to the notebook for who is signed in
 * - `POST /sign-in` with `passphrase` as a form → a session and on to the notebook; 401 when it is another, 429 after too many tries
 * - `GET /api/session` → `{ canSignOut }`
 * - `POST /api/sign-out` → 204; the session has ended
 */
export function addSignIn(app: Hono, threshold: Threshold): void {
  const cookie = new SessionCookie(threshold.names)
  const sessions = new Sessions(threshold.now)
  addForm(app, { ...threshold, cookie, sessions })
  app.use(async (context, next) => {
    if (sessions.knows(cookie.read(context))) return next()
    const { method, path } = context.req
    const reads = method === 'GET' || method === 'HEAD'
    if (reads && isForEverybody(path) && threshold.page.has(path)) return next()
    if (reads && !path.startsWith('/api/')) return context.redirect(signInAddress, 303)
    return context.json(
      { error: 'you are not signed in: sign in at /sign-in, in another tab to lose nothing here' },
      401,
      UNKNOWN,
    )
  })
  app.get('/api/session', (context) => context.json({ canSignOut: true }))
  app.post('/api/sign-out', bodyAtMost(0), (context) => {
    sessions.end(cookie.read(context))
    cookie.clear(context)
    return context.body(null, 204)
  })
}

/** Goes with every 401, as RFC 9110 asks; the scheme is our own, so that no browser asks for a name in a window of its own. */
const UNKNOWN = { 'WWW-Authenticate': 'Passphrase realm="fingerwright"' }

interface Form extends Threshold {
  readonly cookie: SessionCookie
  readonly sessions: Sessions
}

function addForm(app: Hono, { page, kept, now, cookie, sessions }: Form): void {
  const saying = signInPage(page)
  const isRight = passphraseCheck(kept)
  const limit = new SignInLimit(now)
  app.use(signInAddress, async (context, next) => {
    await next()
    context.header('Cache-Control', 'no-store')
  })
  app.get(signInAddress, (context) =>
    sessions.knows(cookie.read(context)) ? context.redirect('/', 303) : context.html(saying('')),
  )
  app.post(signInAddress, bodyAtMost(FORM_bytes), async (context) => {
    if (!isForm(context)) return context.json({ error: 'send the passphrase as application/x-www-form-urlencoded' }, 415)
    const address = getConnInfo(context).remote.address ?? ''
    const wait_s = limit.take(address)
    if (wait_s > 0) return context.html(saying(waitSentence(wait_s)), 429, { 'Retry-After': String(wait_s) })
    const form = new URLSearchParams(await context.req.text())
    if (!(await isRight(form.get('passphrase') ?? ''))) return context.html(saying(WRONG), 401, UNKNOWN)
    limit.forgive(address)
    // A token that came with the request may be known to somebody else: it ends, and a fresh one begins.
    sessions.end(cookie.read(context))
    cookie.write(context, sessions.begin())
    return context.redirect('/', 303)
  })
}

const WRONG = 'This is not the passphrase. Try again.'

function waitSentence(wait_s: number): string {
  return `Too many tries. Wait ${wait_s === 1 ? 'a second' : `${wait_s} seconds`}, then try again.`
}

function isForm(context: Context): boolean {
  return /^application\/x-www-form-urlencoded\s*(;|$)/i.test(context.req.header('content-type') ?? '')
}
