/**
 * Under which names and for which pages the server answers. Every page in a browser that can reach the server may try to.
 *
 * - A foreign name that is made to point here (name rebinding) shows in the Host header: only names that the server was told pass.
 * - A foreign page that sends here shows in Origin, and in Sec-Fetch-Site where the browser sends it: only our own page passes.
 *
 * Source: Fetch standard, Origin header and Sec-Fetch-Site (from memory).
 */
import type { MiddlewareHandler } from 'hono'
import { type OwnName, ownNameOf } from './gatekeeper-names.ts'

/** Methods that only read. */
const READING: ReadonlySet<string> = new Set(['GET', 'HEAD'])

/** Refuses requests under a foreign name with 421 and requests from a foreign page with 403. */
export function gatekeeper(names: readonly OwnName[]): MiddlewareHandler {
  return async (context, next) => {
    const host = context.req.header('host') ?? ''
    const name = ownNameOf(host, names)
    if (name === undefined) {
      const said = names.map((own) => own.host).join(', ')
      return context.json({ error: `this server answers under its own names only: ${said}; serve --name tells it another` }, 421)
    }
    const { method, path } = context.req
    const sender = { ownOrigin: `${name.scheme}://${host}`, origin: context.req.header('origin') }
    const reach = { site: context.req.header('sec-fetch-site'), followsLink: READING.has(method) && !path.startsWith('/api/') }
    if (isForeignOrigin(sender) || isForeignSite(reach)) {
      return context.json({ error: 'this server answers its own page only' }, 403)
    }
    return next()
  }
}

function isForeignOrigin({ ownOrigin, origin }: { readonly ownOrigin: string; readonly origin: string | undefined }): boolean {
  return origin !== undefined && origin.toLowerCase() !== ownOrigin.toLowerCase()
}

/** Following a link to the page from elsewhere is fine; reaching for the data, or sending anything, from elsewhere is not. */
function isForeignSite({ site, followsLink }: { readonly site: string | undefined; readonly followsLink: boolean }): boolean {
  return !followsLink && site !== undefined && site !== 'same-origin' && site !== 'none'
}
