import type pc from 'picocolors'

/** Colours of the terminal, or none. */
export type Paint = ReturnType<typeof pc.createColors>
