import type { Context, Hono } from 'hono'
import * as z from 'zod'
import { limits } from '../engine/index.ts'
import { benchRules, entryWho, revisionNumber, type Store, storeLimits, typedEntry } from '../records/index.ts'
import { benchColumns, serialSheet } from '../report/index.ts'
import { attachment } from './attachment.ts'
import { engineName } from './engine-name.ts'
import { judgedSerial } from './judged-serial.ts'
import { keepReadings } from './keep-readings.ts'
import { keptBook } from './kept-book.ts'
import { lotFile } from './lot-file.ts'
import { readBody } from './request-body.ts'
import { askedFirst, refused } from './store-answers.ts'

const entries = z.strictObject({ who: entryWho, entries: z.array(typedEntry).min(1).max(storeLimits.couponsAtOnce) })
const cell = z.string().max(limits.tableCell)
const readings = z.strictObject({
  who: entryWho,
  lot: benchRules.name,
  rows: z
    .array(z.array(cell).max(limits.tableColumns))
    .min(1)
    .max(limits.tableRows + 1),
  named: z.partialRecord(z.enum(benchColumns), cell).optional(),
  decimal: z.enum(['point', 'comma']).optional(),
  file: z.string().max(storeLimits.givenNameLength).optional(),
  asRead: z.boolean().optional(),
})

const path = '/api/designs/:name'

/** The bench book of a design: lots and gauges, one serial number, entries and readings that come in. */
export function addBenchRoutes(app: Hono, store: Store): void {
  app.get(`${path}/bench`, (context) => {
    const name = context.req.param('name')
    const { notKept } = store
    const { bench } = store
    const book = { lots: bench.lots(name), gauges: bench.gauges(), calibrations: bench.calibrations() }
    return context.json({ ...book, ...(notKept !== undefined && { notKept }) })
  })
  app.get(`${path}/plans/:number`, (context) => {
    const number = revisionNumber.safeParse(context.req.param('number'))
    const plan = number.success ? store.bench.plan(context.req.param('name'), number.data) : undefined
    return plan === undefined ? nothingHere(context, 'no lot was begun to such a revision') : context.json({ plan })
  })
  app.get(`${path}/serials/:serial`, (context) => {
    const { name: design, serial } = context.req.param()
    const found = judgedSerial(store, { design, serial })
    if (found === undefined) return nothingHere(context, 'no such serial number of this design')
    const { history, set, problems } = found
    const { plan: _, ...rest } = history
    return context.json({ ...rest, problems, ...(set && { sheet: serialSheet(set) }) })
  })
  app.get(`${path}/proving`, (context) => context.json(keptBook(store, context.req.param('name'))))
  app.get(`${path}/photos/:number`, (context) => {
    const id = revisionNumber.safeParse(context.req.param('number'))
    const photo = id.success ? store.bench.photo(context.req.param('name'), id.data) : undefined
    if (photo === undefined) return nothingHere(context, 'no such photo of this design')
    return context.body(new Uint8Array(photo.bytes), 200, { 'Content-Type': photo.type, 'Content-Disposition': 'attachment' })
  })
  addLotRoutes(app, store)
  app.post(`${path}/entries`, (context) => comeIn(context, store))
  app.post(`${path}/readings`, (context) => readIn(context, store))
}

/** A lot as a whole: what it is judged by, and its readings as a file. */
function addLotRoutes(app: Hono, store: Store): void {
  app.get(`${path}/lots/:lot/sets`, (context) => {
    const { name: design, lot } = context.req.param()
    const sets = store.bench.sets(design, lot)
    return sets === undefined ? nothingHere(context, 'no such lot of this design') : context.json({ sets })
  })
  app.get(`${path}/lots/:lot/readings`, (context) => {
    const { name: design, lot } = context.req.param()
    const text = lotFile(store, { design, lot })
    if (text === undefined) return nothingHere(context, 'no such lot of this design')
    return context.body(text, 200, { 'Content-Type': 'text/csv; charset=utf-8', ...attachment(`${design}, ${lot}.csv`) })
  })
}

function nothingHere(context: Context, error: string): Response {
  return context.json({ error }, 404)
}

async function comeIn(context: Context, store: Store): Promise<Response> {
  const body = await readBody(context, entries)
  if (body.refusal !== undefined) return body.refusal
  const answer = store.bench.keepEntries(context.req.param('name') ?? '', { ...body.value, engine: engineName })
  return 'refused' in answer ? refused(context, answer.refused) : context.json({ entries: body.value.entries.length }, 201)
}

async function readIn(context: Context, store: Store): Promise<Response> {
  const body = await readBody(context, readings)
  if (body.refusal !== undefined) return body.refusal
  const { who, lot, rows, named, decimal, file, asRead } = body.value
  const table = { rows, ...(named && { named }), ...(decimal && { decimal }) }
  const answer = keepReadings(store, { design: context.req.param('name') ?? '', lot, who, table, file, asRead })
  if (answer.asks !== undefined) return askedFirst(context, answer.asks)
  return answer.problems === undefined ? context.json(answer, 201) : refused(context, answer.problems)
}
