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

const notebook = headersWith({ ...POLICY, ...NOTEBOOK })
const signIn = headersWith({ ...POLICY, ...SIGN_IN })

/** Tells the browser what an answer of this server may do. */
export const securityHeaders: MiddlewareHandler = (context, next) =>
  (context.req.path === '/sign-in' ? signIn : notebook)(context, next)

function headersWith(contentSecurityPolicy: Record<string, string[]>): MiddlewareHandler {
  return secureHeaders({
    contentSecurityPolicy,
    xFrameOptions: 'DENY',
    // The server itself speaks plain HTTP; a promise of HTTPS would lock other servers of this machine out of the browser.
    strictTransportSecurity: false,
  })
}
