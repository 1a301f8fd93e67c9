import type { Context, Hono } from 'hono'
import * as z from 'zod'
import type { JsonValue } from '../engine/index.ts'
import { proofTemplates } from '../report/index.ts'
import { TemplateFault, TypesetFault, type Typesetter } from '../typesetting/index.ts'
import { bodyAtMost } from './body-limit.ts'
import { documentLimit_bytes } from './document-text.ts'
import { readBody } from './request-body.ts'

// The page works out what a document says, in the background and with a way to stop; the server only sets it. What is in `data` is text to
// the templates, never a part of them.
const jobAsked = z.strictObject({ template: z.enum(proofTemplates), data: z.record(z.string(), z.unknown()) })

/**
 * `POST /api/documents` with `{ template, data }`, a document as the report makes it → the PDF, the same bytes as at the command line; who leaves stops the work. Status 422 when the
 * template does not take the data, 404 at a server without typesetter, 503 where its typesetter does not answer.
 */
export function addDocuments(app: Hono, typeset: Typesetter | undefined): void {
  app.post('/api/documents', bodyAtMost(documentLimit_bytes), async (context) => {
    const body = await readBody(context, jobAsked)
    if (body.refusal !== undefined) return body.refusal
    if (typeset === undefined) return context.json({ error: 'no PDF can be made here: this server has no typesetter' }, 404)
    const { signal } = context.req.raw
    try {
      const [pdf] = await typeset([body.value as { readonly template: string; readonly data: JsonValue }], { signal })
      return context.body(pdf, 200, { 'Content-Type': 'application/pdf' })
    } catch (error) {
      // Nobody reads the answer to who has left.
      return signal.aborted ? context.body(null) : failed(error, context)
    }
  })
}

/** @throws what is neither the sender's fault nor the machine's */
function failed(error: unknown, context: Context): Response {
  if (error instanceof TemplateFault) return context.json({ error: error.message }, 422)
  if (error instanceof TypesetFault) return context.json({ error: error.message }, 503)
  throw error
}
