import { reasonOf } from '../state/server-words.ts'

/** A design that is to come into the store. */
export interface NewDesign {
  readonly name: string
  readonly text: string
}

/** It came in; or its name is taken and another is free; or why it was refused, in words. */
export type CameIn = { readonly came: true } | { readonly came: false; readonly why: string; readonly free?: string }

/** Brings a design into the store under a name that is free. Nothing is overwritten. */
export async function bringInDesign({ name, text }: NewDesign): Promise<CameIn> {
  const headers = { 'Content-Type': 'application/json' }
  const response = await fetch('/api/designs', { method: 'POST', headers, body: JSON.stringify({ name, text }) })
  if (response.ok) return { came: true }
  if (response.status !== 409) return { came: false, why: await reasonOf(response) }
  const { error, free } = (await response.json()) as { readonly error: string; readonly free?: string }
  return { came: false, why: error, ...(free === undefined ? {} : { free }) }
}
