import { Hono } from 'hono'
import { emptyStore, StoreFault } from '../records/index.ts'
import { bodyAtMost } from './body-limit.ts'
import { bodyLimit_bytes } from './request-body.ts'
import { storeFailed } from './store-answers.ts'
import { addBenchRoutes } from './store-bench.ts'
import { addDesignRoutes } from './store-designs.ts'
import { addWorkRoutes } from './store-drafts.ts'
import { addStoreFileRoutes } from './store-file.ts'
import { addRevisionRoutes } from './store-revisions.ts'
import type { Kept } from './store-work.ts'

/** What a server has that was given no store: every save says so. */
export const noStore = emptyStore(
  'the server',
  new StoreFault('the server', {
    code: 'without store',
    place: '',
    found: 'no store',
    needed: 'a store that it was started with',
  }),
)

/**
 * The routes of designs and of the store. Faults of the sender get a 4xx with `{ error }` in words, a store that cannot be written
 * a 503 or 507: what was saved before is kept.
 *
 * - `GET /api/designs` → `{ designs: [{ name, given, revisions, draft?: { version, saved } }], notKept? }`
 * - `POST /api/designs` with `{ name, text }` → 201 `{ name }`: a design file comes in; 409 `{ error, free }` when the name is taken
 * - `GET /api/designs/:name` → the file that the server was given, as it is on disk, else the newest text of the store
 * - `GET /api/designs/:name/file` → the text that is worked on, to be saved as a file; `?revision=N` that of a revision
 * - `GET /api/designs/:name/work` → `{ name, version, base, steps: [{ splice, said }], position, text, givenChanged }`
 * - `PUT /api/designs/:name/work` with `{ version, keep, steps, position, base? }` → `{ version }`; 409 `{ error, version, text }`
 * - `GET /api/designs/:name/revisions` → `{ revisions: [{ number, saved, who, why, engine, findings: { met, short, undecided }, problems }] }`
 * - `POST /api/designs/:name/revisions` with `{ version, who, why }` → 201 `{ number }`; 409 as above; 422 when the design is refused
 * - `GET /api/designs/:name/revisions/:number` → the same with `text`, `figures`, `findings` and `problems` as in result documents
 * - `GET /api/designs/:name/bench` → `{ lots: [{ lot, revision, note?, who, made, serials: [{ serial, readings }], imports }], gauges, calibrations, notKept? }`
 * - `GET /api/designs/:name/plans/:number` → `{ plan }`: the frozen plan of a revision
 * - `GET /api/designs/:name/serials/:serial` → the history of a serial number with `sheet`, the set as it was measured, in words
 * - `GET /api/designs/:name/proving` → `{ sets, tests, field, revisions: [{ number, text }] }`: what its proof takes from the bench book
 * - `GET /api/designs/:name/lots/:lot/sets` → `{ sets: [{ serial, readings, certificates, decisions, signOffs }] }`: all that a lot is judged by
 * - `GET /api/designs/:name/lots/:lot/readings` → every reading of a lot as comma-separated values
 * - `GET /api/designs/:name/photos/:number` → the photo of a bench test
 * - `POST /api/designs/:name/entries` with `{ who, entries }` → 201: all of them are kept, or none and 422 `{ error, problems }`
 * - `POST /api/designs/:name/readings` with `{ who, lot, rows, named?, decimal?, file?, asRead? }` → 201 `{ kept, passedOver }`, 422 as above, or
 *   409 `{ error, asks }` where readings lie far outside: they are kept with `asRead: true`
 * - `GET /api/store` → the whole store as one file
 * - `POST /api/store` with such a file → `{ designs: [{ name, came: 'new' | 'further' | 'there', as, revisions }] }`
 */
export function addStoreRoutes(app: Hono, kept: Kept): void {
  const routes = new Hono()
  routes.onError(storeFailed)
  routes.use('/api/designs/*', bodyAtMost(bodyLimit_bytes))
  addDesignRoutes(routes, kept)
  addWorkRoutes(routes, kept)
  addRevisionRoutes(routes, kept)
  addBenchRoutes(routes, kept.store)
  addStoreFileRoutes(routes, kept.store)
  app.route('/', routes)
}
