/** What the server says when it cannot do something, and what the browser says when it cannot reach the server. */
import { noteStatus } from './signed-in.ts'

/** Why an answer is no success: the server's own words, or its status when it has none. */
export async function reasonOf(response: Response): Promise<string> {
  noteStatus(response.status)
  const answer: unknown = await response.json().catch(() => undefined)
  const isSaid = typeof answer === 'object' && answer !== null && 'error' in answer
  return isSaid ? String(answer.error) : `the server answers ${response.status}`
}

/** A fault in words. */
export function wordsOf(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason)
}
