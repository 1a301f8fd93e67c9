import type { Context } from 'hono'
import { deleteCookie, getCookie, setCookie } from 'hono/cookie'
import type { CookieOptions } from 'hono/utils/cookie'
import { type OwnName, ownNameOf } from './gatekeeper-names.ts'
import { sessionLife_s } from './sessions.ts'

const NAME = 'fingerwright-session'

/**
 * The cookie that carries a session's token: out of reach of scripts, never sent on the way from another site.
 *
 * Under a name that a proxy serves by TLS it is also Secure, and its name begins with `__Host-`, so that neither a listener sees it
 * nor another server of the same domain can set it. Over plain HTTP a browser would not keep a Secure cookie at all.
 *
 * Source: RFC 6265bis, Set-Cookie and cookie name prefixes (from memory).
 */
export class SessionCookie {
  readonly #names: readonly OwnName[]

  constructor(names: readonly OwnName[]) {
    this.#names = names
  }

  /** The token that a request carries. */
  read(context: Context): string | undefined {
    return getCookie(context, NAME, this.#options(context).prefix)
  }

  /** Gives the browser a token to keep for the life of a session. */
  write(context: Context, token: string): void {
    setCookie(context, NAME, token, { ...this.#options(context), maxAge: sessionLife_s })
  }

  /** Has the browser forget its token. */
  clear(context: Context): void {
    deleteCookie(context, NAME, this.#options(context))
  }

  #options(context: Context): CookieOptions {
    const bare = { httpOnly: true, sameSite: 'Strict', path: '/' } as const
    const name = ownNameOf(context.req.header('host') ?? '', this.#names)
    return name?.scheme === 'https' ? { ...bare, secure: true, prefix: 'host' } : bare
  }
}
