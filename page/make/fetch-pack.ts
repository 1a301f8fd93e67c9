import type { DrawingsAsked } from '../../report/index.ts'
import { reasonOf } from '../state/server-words.ts'

interface Wanted {
  readonly text: string
  readonly name: string
  readonly asked: DrawingsAsked
}

/**
 * Asks the server for what goes to the shop.
 *
 * @returns the zip, and what is not in it and why
 * @throws Error in words when there is none
 */
export async function fetchPack({
  text,
  name,
  asked,
}: Wanted): Promise<{ readonly zip: Blob; readonly left: readonly string[] }> {
  const { paper, projection: views, revision } = asked
  const words = new URLSearchParams({ name, paper, views, ...(revision !== undefined && { revision }) })
  const request = { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: text }
  const response = await fetch(`/api/shop-pack?${words}`, request)
  if (!response.ok) throw new Error(await reasonOf(response))
  const left = JSON.parse(decodeURIComponent(response.headers.get('X-Left-Out') ?? '[]')) as readonly string[]
  return { zip: await response.blob(), left }
}
