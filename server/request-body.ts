import type { Context } from 'hono'
import type * as z from 'zod'
import { documentLimit_bytes } from './document-text.ts'

/** Longest JSON body: a draft with its base and a step that replaces all of it, each character escaped. */
export const bodyLimit_bytes = 4 * documentLimit_bytes

/** What came with a request, or the answer that refuses it. */
export type Body<Value> = { readonly value: Value; readonly refusal?: never } | { readonly refusal: Response }

/** Reads the JSON body of a request and checks it: 415 for another type, 400 for what is no JSON, 422 for what does not fit. */
export async function readBody<Value>(context: Context, shape: z.ZodType<Value>): Promise<Body<Value>> {
  const type = context.req.header('content-type') ?? ''
  if (!/^application\/json\s*(;|$)/i.test(type)) return { refusal: context.json({ error: 'send application/json' }, 415) }
  const found = parsed(await context.req.arrayBuffer())
  if (found === undefined) return { refusal: context.json({ error: 'the body is no JSON in UTF-8' }, 400) }
  const checked = shape.safeParse(found.json)
  if (!checked.success) return { refusal: context.json({ error: issueWords(checked.error) }, 422) }
  return { value: checked.data }
}

/** Where something does not fit, and why. */
export function issueWords(error: z.ZodError): string {
  const [{ path, message }] = error.issues
  return [path.map(String).join('.'), message].filter((words) => words !== '').join(': ')
}

/** Undefined for bytes that are no JSON text; the sender is told so. */
function parsed(bytes: ArrayBuffer): { readonly json: unknown } | undefined {
  try {
    return { json: JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) }
  } catch (error) {
    if (error instanceof SyntaxError || error instanceof TypeError) return undefined
    throw error
  }
}
