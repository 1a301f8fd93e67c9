/** Which thing of the design has the reader's attention, so that its row in the tables and its place in the drawing show each other. */
import { sharedState, useShared } from './shared-state.ts'

/** What is looked at: rows by their ids, such as `pins.mcp`. */
export interface Attention {
  /** Marked in the drawing. */
  readonly marked?: string
  /** A row that is to be opened, brought into view and given the focus. */
  readonly wanted?: string
}

const attention = sharedState<Attention>({})

/** Marks a thing in the drawing, or none. */
export function mark(row: string | undefined): void {
  attention.set(row === undefined ? {} : { marked: row })
}

/** Asks the tables to open at a row. */
export function goTo(row: string): void {
  attention.set({ marked: row, wanted: row })
}

/** The row that was asked for has been shown. */
export function arrived(): void {
  const { wanted: _, ...rest } = attention.now()
  attention.set(rest)
}

/** What is looked at now. */
export function useAttention(): Attention {
  return useShared(attention)
}
