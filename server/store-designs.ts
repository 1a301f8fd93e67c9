import type { Context, Hono } from 'hono'
import * as z from 'zod'
import { readDesign } from '../engine/index.ts'
import { type DesignEntry, documentWords, freeName, newName, revisionNumber, type Store, StoreFault } from '../records/index.ts'
import { attachment } from './attachment.ts'
import { readBody } from './request-body.ts'
import { overtaken, refused, unknownDesign } from './store-answers.ts'
import { type Kept, workOn } from './store-work.ts'

const DOCUMENT = { 'Content-Type': 'application/json; charset=utf-8' }
const newDesign = z.strictObject({ name: newName, text: documentWords })

/** The list of designs, one design's text, and a design file that comes in. */
export function addDesignRoutes(app: Hono, kept: Kept): void {
  app.get('/api/designs', (context) => context.json(listed(kept)))
  app.post('/api/designs', (context) => comeIn(context, kept))
  app.get('/api/designs/:name', async (context) => {
    const name = context.req.param('name')
    const bytes = await kept.shelf.read(name)
    if (bytes !== undefined) return context.body(new Uint8Array(bytes), 200, DOCUMENT)
    const known = await workOn(name, kept)
    return known === undefined || 'problems' in known ? unknownDesign(context) : context.body(known.work.text, 200, DOCUMENT)
  })
  app.get('/api/designs/:name/file', (context) => asFile(context, kept))
}

/** Files that the server was given first, in their order; then what else is in the store. */
function listed({ shelf, store }: Kept) {
  const { kept, notKept } = keptIn(store)
  const entries = new Map(kept.map((entry) => [entry.name, entry]))
  const names = new Set([...shelf.names, ...entries.keys()])
  const designs = [...names].map((name) => {
    const entry = entries.get(name)
    const draft = entry?.draft === undefined ? {} : { draft: entry.draft }
    return { name, given: shelf.names.includes(name), revisions: entry?.revisions ?? 0, ...draft }
  })
  return { designs, ...(notKept === undefined ? {} : { notKept }) }
}

/** A store that cannot be read keeps nobody from the files. */
function keptIn(store: Store): { readonly kept: readonly DesignEntry[]; readonly notKept: string | undefined } {
  try {
    return { kept: store.designs(), notKept: store.notKept }
  } catch (error) {
    if (!(error instanceof StoreFault)) throw error
    return { kept: [], notKept: error.message }
  }
}

async function comeIn(context: Context, { shelf, store }: Kept): Promise<Response> {
  const body = await readBody(context, newDesign)
  if (body.refusal !== undefined) return body.refusal
  const { name, text } = body.value
  const taken = new Set([...shelf.names, ...store.designs().map((entry) => entry.name)])
  const nameTaken = () => {
    const free = freeName(name, (tried) => taken.has(tried))
    return context.json({ error: `there is a design called ${name} already; ${free} is free`, free }, 409)
  }
  if (taken.has(name)) return nameTaken()
  const design = readDesign(text, name)
  if (design.problems !== undefined) return refused(context, design.problems)
  const saved = store.keepDraft(name, { version: 0, keep: 0, steps: [], position: 0, base: text })
  if ('refused' in saved) return refused(context, [saved.refused])
  return 'newer' in saved ? overtaken(context, saved.newer) : context.json({ name }, 201)
}

async function asFile(context: Context, kept: Kept): Promise<Response> {
  const name = context.req.param('name') ?? ''
  const asked = context.req.query('revision')
  if (asked === undefined) {
    const known = await workOn(name, kept)
    if (known === undefined) return unknownDesign(context)
    return 'problems' in known ? refused(context, known.problems) : download(context, { name, text: known.work.text })
  }
  const number = revisionNumber.safeParse(asked)
  const revision = number.success ? kept.store.revision(name, number.data) : undefined
  if (revision === undefined) return context.json({ error: 'no such revision of this design' }, 404)
  return download(context, { name: `${name}-revision-${revision.number}`, text: revision.text })
}

function download(context: Context, { name, text }: { readonly name: string; readonly text: string }): Response {
  return context.body(text, 200, { ...DOCUMENT, ...attachment(`${name}.json`) })
}
