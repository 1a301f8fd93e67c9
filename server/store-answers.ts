import type { Context, Env } from 'hono'
import { type Problem, sentence } from '../engine/index.ts'
import { StoreFault } from '../records/index.ts'

const NOTHING = { error: 'no design of this name was given to the server or saved' }

/** 404 for a name that nothing is known of. */
export function unknownDesign(context: Context): Response {
  return context.json(NOTHING, 404)
}

/** 422 for something that does not fit, with every problem. */
export function refused(context: Context, problems: readonly Problem[]): Response {
  return context.json({ error: problems.map((problem) => sentence('', problem)).join('\n'), problems }, 422)
}

/** 409 for readings that were likely mistyped: nothing was kept, and they come again with `asRead` where they were read so. */
export function askedFirst(context: Context, asks: readonly string[]): Response {
  return context.json({ error: `nothing was kept: were these read so?\n${asks.join('\n')}`, asks }, 409)
}

/** 409 for a save that another one overtook: nothing was overwritten, and what is stored comes with the answer. */
export function overtaken(context: Context, newer: { readonly version: number; readonly text: string }): Response {
  const error = 'this design was saved elsewhere meanwhile; nothing was overwritten and nothing of yours was saved'
  return context.json({ error, ...newer }, 409)
}

/** 507 when the disk is full, 503 when the store cannot be used; any other fault is ours and is thrown on. */
export function storeFailed(error: Error, context: Context<Env>): Response {
  if (!(error instanceof StoreFault)) throw error
  const said = context.req.method === 'GET' ? error.message : `Not saved. ${error.message}`
  return context.json({ error: said }, error.problem.code === 'disk full' ? 507 : 503)
}
