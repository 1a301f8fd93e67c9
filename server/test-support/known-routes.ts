import { emptyStoreBytes } from '../../records/test-support/empty-store-bytes.ts'
import type { RawRequest } from './raw-request.ts'

/** A route of the server with a request to it that is in order. Attacks on every route start from these. */
export interface KnownRoute {
  /** As the app names it, e.g. `/api/designs/:name`. */
  readonly route: string
  readonly request: RawRequest & { readonly method: string }
  /** Most bytes of its body; left out where it reads none. */
  readonly most_bytes?: number
  /** Whether it answers before anybody has signed in. */
  readonly isOpen?: true
}

const JSON_BODY = { 'content-type': 'application/json' }
const FORM = { 'content-type': 'application/x-www-form-urlencoded' }

const CARD = { title: 'Card', design: 'Heron', foot: '', caution: '', released: [], held: [], never: [] }
const LIMITS_CARD = JSON.stringify({ template: 'limits-card', data: CARD })

/**
 * Every route of the server but the files of the page. A test compares the list with the app: a route that is missing here fails it.
 *
 * @param design text of the design that the server was given as heron
 */
export function knownRoutes(design: string): readonly KnownRoute[] {
  return [
    { route: '/sign-in', request: { method: 'GET', path: '/sign-in' }, isOpen: true },
    {
      route: '/sign-in',
      request: { method: 'POST', path: '/sign-in', headers: FORM, body: 'passphrase=guess' },
      most_bytes: 4096,
      isOpen: true,
    },
    { route: '/api/session', request: { method: 'GET', path: '/api/session' } },
    { route: '/api/sign-out', request: { method: 'POST', path: '/api/sign-out' }, most_bytes: 0 },
    { route: '/api/designs', request: { method: 'GET', path: '/api/designs' } },
    { route: '/api/designs/:name', request: { method: 'GET', path: '/api/designs/heron' } },
    ...storeRoutes(design),
    {
      route: '/api/evaluate',
      request: { method: 'POST', path: '/api/evaluate?name=heron', headers: JSON_BODY, body: design },
      most_bytes: 2_000_000,
    },
    {
      route: '/api/shop-pack',
      request: { method: 'POST', path: '/api/shop-pack?name=heron', headers: JSON_BODY, body: design },
      most_bytes: 2_000_000,
    },
    {
      route: '/api/documents',
      request: { method: 'POST', path: '/api/documents', headers: JSON_BODY, body: LIMITS_CARD },
      most_bytes: 2_000_000,
    },
    { route: '/api/schema', request: { method: 'GET', path: '/api/schema' } },
  ]
}

const tested = { kind: 'test', serial: 'A-001', test: 'cycles', value: 1000, outcome: 'did', tested: '2031-04-04', rig: 'rig 1' }
const benchEntries = [
  { kind: 'lot', lot: 'L7', revision: 1 },
  { kind: 'article', lot: 'L7', serial: 'A-001' },
  { ...tested, photoFile: { type: 'image/png', base64: 'iVBORw0KGgo=' } },
]
const benchReadings = {
  who: 'K1',
  lot: 'L7',
  rows: [
    ['serial', 'characteristic', 'found'],
    ['A-001', '1', '3'],
  ],
}

/** Routes of the store, each in order after those before it. */
function storeRoutes(design: string): readonly KnownRoute[] {
  const heron = '/api/designs/:name'
  const get = (route: string) => ({
    route,
    request: {
      method: 'GET',
      path: route.replace(':name', 'heron').replace(':number', '1').replace(':serial', 'A-001').replace(':lot', 'L7'),
    },
  })
  const send = (method: string, route: string, body: object) => ({
    route,
    request: { method, path: route.replace(':name', 'heron'), headers: JSON_BODY, body: JSON.stringify(body) },
    most_bytes: 8_000_000,
  })
  const storeFile = { method: 'POST', path: '/api/store', headers: { 'content-type': 'application/vnd.sqlite3' } }
  return [
    send('POST', '/api/designs', { name: 'own', text: design }),
    get(`${heron}/work`),
    send('PUT', `${heron}/work`, { version: 0, keep: 0, steps: [], position: 0 }),
    get(`${heron}/file`),
    send('POST', `${heron}/revisions`, { version: 1, who: 'K1', why: 'to be tried' }),
    get(`${heron}/revisions`),
    get(`${heron}/revisions/:number`),
    send('POST', `${heron}/entries`, { who: 'K1', entries: benchEntries }),
    send('POST', `${heron}/readings`, benchReadings),
    get(`${heron}/bench`),
    get(`${heron}/proving`),
    get(`${heron}/lots/:lot/sets`),
    get(`${heron}/lots/:lot/readings`),
    get(`${heron}/plans/:number`),
    get(`${heron}/serials/:serial`),
    get(`${heron}/photos/:number`),
    get('/api/store'),
    { route: '/api/store', request: { ...storeFile, body: emptyStoreBytes() }, most_bytes: 100_000_000 },
  ]
}
