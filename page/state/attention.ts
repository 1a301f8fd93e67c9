/** Which thing of the design has the reader's attention, so that its row in the tables and its place in the drawing show each other. */
import { useSyncExternalStore } from 'react'

/** What is looked at: rows by their ids, such as `pins.mcp`. */
export interface Attention {
  /** Marked in the drawing. */
  readonly marked?: string
  /** A row that is to be opened, brought into view and given the focus. */
  readonly wanted?: string
}

const listeners = new Set<() => void>()
let attention: Attention = {}

/** Marks a thing in the drawing, or none. */
export function mark(row: string | undefined): void {
  set(row === undefined ? {} : { marked: row })
}

/** Asks the tables to open at a row. */
export function goTo(row: string): void {
  set({ marked: row, wanted: row })
}

/** The row that was asked for has been shown. */
export function arrived(): void {
  const { wanted: _, ...rest } = attention
  set(rest)
}

/** What is looked at now. */
export function useAttention(): Attention {
  return useSyncExternalStore(subscribe, () => attention)
}

function set(next: Attention): void {
  attention = next
  for (const listener of listeners) listener()
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}
