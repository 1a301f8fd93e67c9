import type { MiddlewareHandler } from 'hono'
import { secureHeaders } from 'hono/secure-headers'

const NOTHING = ["'none'"]
const OURS = ["'self'"]

/** What every answer may use: nothing but what comes from this server, nothing inline, in nobody's frame. */
const POLICY = {
  defaultSrc: NOTHING,
  styleSrc: OURS,
  fontSrc: OURS,
  baseUri: NOTHING,
  frameAncestors: NOTHING,
}

const NOTEBOOK = { scriptSrc: OURS, workerSrc: OURS, imgSrc: ["'self'", 'data:'], connectSrc: OURS, formAction: NOTHING }

/** The page for signing in sends one form and runs no script at all. */
const SIGN_IN = { scriptSrc: NOTHING, imgSrc: OURS, formAction: OURS }

const notebook = headersWith({ contentSecurityPolicy: { ...POLICY, ...NOTEBOOK }, referrerPolicy: 'no-referrer' })
// A page without any referrer sends its form with the origin "null" (Fetch standard, from memory), and the gatekeeper would refuse it.
const signIn = headersWith({ contentSecurityPolicy: { ...POLICY, ...SIGN_IN }, referrerPolicy: 'same-origin' })

/** Tells the browser what an answer of this server may do. */
export const securityHeaders: MiddlewareHandler = (context, next) =>
  (context.req.path === '/sign-in' ? signIn : notebook)(context, next)

interface Ours {
  readonly contentSecurityPolicy: Record<string, string[]>
  readonly referrerPolicy: string
}

function headersWith(ours: Ours): MiddlewareHandler {
  return secureHeaders({
    ...ours,
    xFrameOptions: 'DENY',
    // The server itself speaks plain HTTP; a promise of HTTPS would lock other servers of this machine out of the browser.
    strictTransportSecurity: false,
  })
}
