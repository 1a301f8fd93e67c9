import type { Hono } from 'hono'
import * as z from 'zod'
import { documentWords, step, storeLimits } from '../records/index.ts'
import { readBody } from './request-body.ts'
import { overtaken, refused, unknownDesign } from './store-answers.ts'
import { type Kept, workOn } from './store-work.ts'

const count = z.int().min(0)
const draftChange = z.strictObject({
  version: count,
  keep: count,
  steps: z.array(step).max(storeLimits.stepsAtOnce),
  position: count,
  base: documentWords.optional(),
})

/** The draft of a design with its undo history, read and saved. */
export function addWorkRoutes(app: Hono, kept: Kept): void {
  app.get('/api/designs/:name/work', async (context) => {
    const known = await workOn(context.req.param('name'), kept)
    if (known === undefined) return unknownDesign(context)
    return 'problems' in known ? refused(context, known.problems) : context.json(known.work)
  })
  app.put('/api/designs/:name/work', async (context) => {
    const body = await readBody(context, draftChange)
    if (body.refusal !== undefined) return body.refusal
    const name = context.req.param('name')
    const known = await workOn(name, kept)
    if (known === undefined) return unknownDesign(context)
    if ('problems' in known) return refused(context, known.problems)
    const { work, given } = known
    const file = given === undefined ? {} : { given }
    const saved = kept.store.keepDraft(name, { ...body.value, base: body.value.base ?? work.base, ...file })
    if ('newer' in saved) return overtaken(context, saved.newer)
    return 'refused' in saved ? refused(context, [saved.refused]) : context.json(saved.kept)
  })
}
