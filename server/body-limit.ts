import type { MiddlewareHandler } from 'hono'
import { bodyLimit } from 'hono/body-limit'

/** Refuses a longer body with 413, whether its length was stated or it came in pieces. Nothing past the limit is kept. */
export function bodyAtMost(most_bytes: number): MiddlewareHandler {
  return bodyLimit({
    maxSize: most_bytes,
    onError: (context) => context.json({ error: `a body here has at most ${most_bytes} bytes` }, 413),
  })
}
