import type { Context, Hono } from 'hono'
import * as z from 'zod'
import { type RevisionEntry, revisionNumber, who, why } from '../records/index.ts'
import { judgedRevision } from './judged-revision.ts'
import { readBody } from './request-body.ts'
import { overtaken, refused, unknownDesign } from './store-answers.ts'
import { type Kept, workOn } from './store-work.ts'

const said = z.strictObject({ version: z.int().min(0), who, why })

/** The revisions of a design: kept, listed and read. */
export function addRevisionRoutes(app: Hono, kept: Kept): void {
  app.get('/api/designs/:name/revisions', async (context) => {
    const name = context.req.param('name')
    if ((await workOn(name, kept)) === undefined) return unknownDesign(context)
    return context.json({ revisions: kept.store.revisions(name).map(counted) })
  })
  app.post('/api/designs/:name/revisions', (context) => keep(context, kept))
  app.get('/api/designs/:name/revisions/:number', (context) => {
    const name = context.req.param('name')
    const number = revisionNumber.safeParse(context.req.param('number'))
    const revision = number.success ? kept.store.revision(name, number.data) : undefined
    if (revision === undefined) return context.json({ error: 'no such revision of this design' }, 404)
    const { figures, findings, problems, ...rest } = revision
    const results = { figures: JSON.parse(figures), findings: JSON.parse(findings), problems: JSON.parse(problems) }
    return context.json({ name, ...rest, ...results })
  })
}

function counted({ verdicts, ...entry }: RevisionEntry) {
  const count = (verdict: string) => verdicts.filter((one) => one === verdict).length
  return { ...entry, findings: { met: count('met'), short: count('short'), undecided: count('undecided') } }
}

async function keep(context: Context, kept: Kept): Promise<Response> {
  const body = await readBody(context, said)
  if (body.refusal !== undefined) return body.refusal
  const name = context.req.param('name') ?? ''
  const known = await workOn(name, kept)
  if (known === undefined) return unknownDesign(context)
  if ('problems' in known) return refused(context, known.problems)
  const { version, text } = known.work
  if (version !== body.value.version) return overtaken(context, { version, text })
  const revision = judgedRevision({ name, text, ...body.value })
  if (revision.problems !== undefined) return refused(context, revision.problems)
  const saved = kept.store.keepRevision(name, revision.value, version)
  if ('newer' in saved) return overtaken(context, saved.newer)
  return 'refused' in saved ? refused(context, [saved.refused]) : context.json(saved.kept, 201)
}
