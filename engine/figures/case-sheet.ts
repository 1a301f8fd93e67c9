import type { FigureEntry } from './figure-sheet.ts'

/** Adds a figure of one load case. @param tail of its id, behind that of the case */
export type AddToCase = (tail: string, entry: FigureEntry) => void
