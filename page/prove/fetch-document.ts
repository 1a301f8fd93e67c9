import type { TypesetJob } from '../../report/index.ts'
import { reasonOf } from '../state/server-words.ts'

/** Has the server typeset a document. @throws Error in words when there is no PDF, and when it was stopped */
export async function fetchDocument(job: TypesetJob, signal: AbortSignal): Promise<Blob> {
  const request = { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(job), signal }
  const response = await fetch('/api/documents', request)
  if (!response.ok) throw new Error(await reasonOf(response))
  return response.blob()
}
