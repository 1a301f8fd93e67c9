import { Hono } from 'hono'
import { designSchema } from '../engine/index.ts'
import { newName, type Store } from '../records/index.ts'
import type { Typesetter } from '../typesetting/index.ts'
import { addDocuments } from './add-documents.ts'
import { addShopPack } from './add-shop-pack.ts'
import { answerDesign } from './answer.ts'
import { bodyAtMost } from './body-limit.ts'
import type { DesignShelf } from './design-shelf.ts'
import { documentLimit_bytes } from './document-text.ts'
import { faultAnswer } from './fault-answer.ts'
import { gatekeeper } from './gatekeeper.ts'
import { loopbackNames, type OwnName } from './gatekeeper-names.ts'
import type { PageFiles } from './page-files.ts'
import { securityHeaders } from './security-headers.ts'
import { addSignIn, type SignIn } from './sign-in.ts'
import { addStoreRoutes, noStore } from './store-routes.ts'

/** What a server is given; it reads nothing else. */
export interface Given {
  readonly shelf: DesignShelf
  readonly page: PageFiles
  /** Where designs are kept; without one every save is refused and says so. */
  readonly store?: Store
  /** Names under which the server answers; those of this machine for itself when they are left out. */
  readonly names?: readonly OwnName[]
  /** Left out where only this machine can reach the server: then everybody on it is let in. */
  readonly signIn?: SignIn
  /** Sets drawings as PDF; a pack goes without one where it is left out. */
  readonly typeset?: Typesetter
}

/**
 * The server's routes.
 *
 * - `POST /api/evaluate?name=…` with a design file as `application/json` → the result document; status 422 when the design is refused
 * - `POST /api/shop-pack?name=…`: see `addShopPack`
 * - `POST /api/documents`: see `addDocuments`
 * - `GET /api/schema` → the JSON Schema of design files
 * - designs and the store: see `addStoreRoutes`
 * - everything else under `/` → the built page
 * - where a person has to sign in, those of `addSignIn`
 *
 * Faults of the sender get a 4xx with `{ error }` in words.
 */
export function createApp({ shelf, page, store = noStore, names = loopbackNames, signIn, typeset }: Given): Hono {
  const app = new Hono()
  app.onError(faultAnswer)
  app.use(securityHeaders)
  app.use(gatekeeper(names))
  app.use('/api/*', async (context, next) => {
    await next()
    context.header('Cache-Control', 'no-store')
  })
  if (signIn === undefined) app.get('/api/session', (context) => context.json({ canSignOut: false }))
  else addSignIn(app, { ...signIn, names, page })
  addStoreRoutes(app, { shelf, store })
  addEvaluate(app)
  addShopPack(app, typeset)
  addDocuments(app, typeset)
  app.get('/api/schema', (context) => context.json(designSchema(), 200, { 'Content-Type': 'application/schema+json' }))
  app.all('/api/*', (context) => context.json({ error: 'there is nothing at this address' }, 404))
  addPage(app, page)
  app.notFound((context) => context.json({ error: 'there is nothing at this address' }, 404))
  return app
}

function addEvaluate(app: Hono): void {
  app.post('/api/evaluate', bodyAtMost(documentLimit_bytes), async (context) => {
    const type = context.req.header('content-type') ?? ''
    if (!/^application\/json\s*(;|$)/i.test(type)) return context.json({ error: 'send a design file as application/json' }, 415)
    const name = newName.safeParse(context.req.query('name') ?? 'design')
    if (!name.success)
      return context.json({ error: 'name: letters, digits, space, point, dash and underscore, at most 100' }, 400)
    const answer = answerDesign(new Uint8Array(await context.req.arrayBuffer()), name.data)
    return context.json(answer.document, answer.evaluation === undefined ? 422 : 200)
  })
}

function addPage(app: Hono, page: PageFiles): void {
  app.get('*', async (context, next) => {
    const file = page.get(context.req.path)
    if (file === undefined) return next()
    // Files under /assets/ carry a hash of their content in their name; the start page must always be asked for.
    const keep = context.req.path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache'
    return context.body(file.bytes, 200, { 'Content-Type': file.type, 'Cache-Control': keep })
  })
}
