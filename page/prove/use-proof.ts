import { useMemo } from 'react'
import { type Book, bookFor, type DesignSpread, type Lived, type Proof, proofOf } from '../../engine/index.ts'
import type { Told } from '../../report/index.ts'
import { spreadRun } from '../spread/spread-run.ts'
import { isKeptHere, type OpenDesign } from '../state/open-design.ts'
import { wearRun } from '../state/wear-run.ts'
import { useKeptBook } from './kept-book.ts'

/** What is known of a text: its evaluation, what was counted and worked through of this very text, what the bench book says. */
export interface Proved {
  readonly evaluation: Told
  readonly proof: Proof
  readonly spread?: DesignSpread
  readonly lived?: Lived
  readonly book?: Book
  /** Why the bench book could not be had. */
  readonly fault?: string
}

/** A text as it is shown. */
export interface ShownText {
  readonly open: OpenDesign | undefined
  readonly evaluation: Told | undefined
  readonly text: string | undefined
}

/** The proof of what is shown; undefined while nothing is. Runs over another text prove nothing of this one. */
export function useProof({ open, evaluation, text }: ShownText): Proved | undefined {
  const counted = spreadRun.use()
  const worn = wearRun.use()
  const { book: kept, fault } = useKeptBook(open !== undefined && isKeptHere(open) ? open.name : undefined)
  const spread = counted?.text === text ? counted?.reached : undefined
  const lived = worn?.text === text ? worn?.reached : undefined
  const book = useMemo(() => (kept === undefined || text === undefined ? undefined : bookFor(text, kept)), [kept, text])
  return useMemo(() => {
    if (evaluation === undefined) return undefined
    const known = { evaluation, ...(spread && { spread }), ...(lived && { lived }), ...(book && { book }) }
    return { ...known, proof: proofOf(known), ...(fault !== undefined && { fault }) }
  }, [evaluation, spread, lived, book, fault])
}
