/**
 * Who may talk to the server. It listens on this machine only, but every page in the wearer's browser can reach this machine too.
 *
 * - A foreign name that is made to point at 127.0.0.1 (name rebinding) shows in the Host header: only names of this machine pass.
 * - A foreign page that sends here shows in Origin, and in Sec-Fetch-Site where the browser sends it: only our own page passes.
 *
 * Source: Fetch standard, Origin header and Sec-Fetch-Site (from memory).
 */
import type { MiddlewareHandler } from 'hono'

const OWN_NAMES: ReadonlySet<string> = new Set(['127.0.0.1', 'localhost'])
const HOST = /^([a-z0-9.-]+)(?::\d{1,5})?$/i

/** Refuses requests under a foreign name with 421 and requests from a foreign page with 403. */
export const gatekeeper: MiddlewareHandler = async (context, next) => {
  const host = context.req.header('host') ?? ''
  if (!isOwnHost(host)) return context.json({ error: 'this server answers to 127.0.0.1 and localhost only' }, 421)
  const sender = { host, origin: context.req.header('origin'), site: context.req.header('sec-fetch-site') }
  if (isForeign(sender, context.req.path)) return context.json({ error: 'this server answers its own page only' }, 403)
  return next()
}

/** Whether a Host header names this machine; the port is free, because it may have been forwarded. */
export function isOwnHost(host: string): boolean {
  const name = HOST.exec(host)?.[1]
  return name !== undefined && OWN_NAMES.has(name.toLowerCase())
}

interface Sender {
  readonly host: string
  readonly origin: string | undefined
  readonly site: string | undefined
}

function isForeign({ host, origin, site }: Sender, path: string): boolean {
  if (origin !== undefined && origin.toLowerCase() !== `http://${host.toLowerCase()}`) return true
  // Following a link to the page from elsewhere is fine; reaching for the data from elsewhere is not.
  return path.startsWith('/api/') && site !== undefined && site !== 'same-origin' && site !== 'none'
}
