import { askedFigures, evaluateAsked } from '../evaluate-asked.ts'
import type { Variation } from '../variation/sources/source.ts'
import { measuredDesign, measuredSet, type Reading } from './measured-set.ts'
import { firstCome, type Lot, type Paired, pairing } from './pairing.ts'
import type { Piece } from './piece.ts'

/** One measured piece. */
export interface MeasuredPiece {
  readonly serial: string
  readonly piece: Piece
  readonly readings: readonly Reading[]
}

/** A lot paired to sets, against first come first served. */
export interface PairedLot {
  readonly sets: readonly { readonly pieces: readonly MeasuredPiece[]; readonly works: boolean }[]
  readonly working_count: number
  readonly firstCome_count: number
}

/** A set that works is worth more than any margin: margins, which decide among those that work, stay between −1 and 1. */
const WORKS_worth = 1000

/** How far the pairing of a lot is. */
export interface PairedSoFar {
  /** How often a kind of pieces was given to the sets anew. */
  readonly given_count: number
  readonly kinds_count: number
}

/** Pairs the pieces of a lot so that most fingers work; among those the smallest share of the margins that the drawing has is made large. */
export function pairLot(variation: Variation, pieces: readonly MeasuredPiece[]): PairedLot {
  const steps = pairingLot(variation, pieces)
  for (let step = steps.next(); ; step = steps.next()) if (step.done === true) return step.value
}

/** The same step by step: after each kind of pieces it yields how far it is. */
export function* pairingLot(variation: Variation, pieces: readonly MeasuredPiece[]): Generator<PairedSoFar, PairedLot> {
  const kinds = [...new Set(pieces.map(({ piece }) => `${piece.kind} ${piece.id}`))].map((key) =>
    pieces.filter(({ piece }) => `${piece.kind} ${piece.id}` === key),
  )
  const drawn = marginsOf(variation, [])
  const known = new Map<string, number>()
  const piecesOf = (set: readonly number[]): readonly MeasuredPiece[] => set.map((place, kind) => kinds[kind][place])
  const worthOf = (set: readonly number[]): number => {
    const key = set.join(' ')
    const worth = known.get(key) ?? worthWith(variation, piecesOf(set), drawn)
    known.set(key, worth)
    return worth
  }
  const lot: Lot = { counts: kinds.map((kind) => kind.length), worthOf }
  const isWorking = (set: readonly number[]): boolean => worthOf(set) > WORKS_worth / 2
  const workingIn = ({ sets }: Paired): number => sets.filter(isWorking).length
  const steps = pairing(lot)
  let step = steps.next()
  for (; step.done !== true; step = steps.next()) yield { given_count: step.value, kinds_count: kinds.length }
  const best = step.value
  return {
    sets: best.sets.map((set) => ({ pieces: piecesOf(set), works: isWorking(set) })),
    working_count: workingIn(best),
    firstCome_count: workingIn(firstCome(lot)),
  }
}

interface Margins {
  readonly isMet: boolean
  readonly margins: readonly (number | undefined)[]
}

function worthWith(variation: Variation, pieces: readonly MeasuredPiece[], drawn: Margins | undefined): number {
  const found = marginsOf(
    variation,
    pieces.flatMap(({ readings }) => readings),
  )
  if (!found) return -1
  const shares = found.margins.map((margin, index) => {
    const of = drawn?.margins[index]
    return margin === undefined || of === undefined || of === 0 ? 1 : margin / Math.abs(of)
  })
  return (found.isMet ? WORKS_worth : 0) + Math.max(-1, Math.min(1, ...shares))
}

/** Absent where no finger can be built. */
function marginsOf(variation: Variation, readings: readonly Reading[]): Margins | undefined {
  const { value } = measuredDesign(variation, measuredSet(variation, readings))
  if (!value) return undefined
  const asked = askedFigures(
    value,
    value.requirements.map(({ figure }) => figure),
  )
  const { findings } = evaluateAsked(value, asked)
  return { isMet: findings.every(({ verdict }) => verdict === 'met'), margins: findings.map(({ margin }) => margin) }
}
