/** TEST SUPPORT. Requests with JSON both ways. */
import { type RawAnswer, send } from './raw-request.ts'

/** What came back, and its body read as JSON. */
export interface JsonAnswer extends RawAnswer {
  // Tests look into answers of every shape.
  readonly json: Record<string, never> & { readonly error?: string }
}

/** Asks a server with a JSON body, or without one. */
export async function askJson(address: string, [method, path, body]: readonly [string, string, unknown?]): Promise<JsonAnswer> {
  const json = body === undefined ? {} : { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }
  const answer = await send(address, { method, path, ...json })
  return { ...answer, json: answer.text.startsWith('{') ? JSON.parse(answer.text) : {} }
}
