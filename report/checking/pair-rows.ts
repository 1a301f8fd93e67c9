/** Pieces of a lot that go together, in words. */
import type { MeasuredPiece, PairedLot } from '../../engine/index.ts'
import type { Answer } from '../tables/overall-verdict.ts'
import type { ReadSet } from './read-readings.ts'

/**
 * The parts and pins of measured sets, each with its readings and the serial number of its set. Coatings, and dimensions that several parts share,
 * belong to no piece: they count as drawn.
 */
export function measuredPieces(sets: readonly ReadSet[]): readonly MeasuredPiece[] {
  return sets.flatMap(({ serial, readings }) => {
    const pieces = new Map(
      readings.flatMap(({ characteristic: { piece } }) =>
        piece.kind === 'part' || piece.kind === 'pin' ? [[`${piece.kind} ${piece.id}`, piece] as const] : [],
      ),
    )
    return [...pieces.values()].map((piece): MeasuredPiece => {
      const own = readings.filter(({ characteristic: { piece: of } }) => of.kind === piece.kind && of.id === piece.id)
      return { serial, piece, readings: own }
    })
  })
}

/** Fingers beyond which a round of pairing takes so long that it is told before. */
const FINGERS_many = 3000

/** How many fingers a round of pairing puts together, where they are so many that one waits; undefined where they are few. */
export function pairingSize(pieces: readonly MeasuredPiece[]): string | undefined {
  const names = pieces.map(({ piece }) => `${piece.kind} ${piece.id}`)
  const counts = [...new Set(names)].map((kind) => names.filter((name) => name === kind).length)
  const sets = Math.min(...counts)
  const fingers = counts.reduce((sum, count) => sum + sets * count, 0)
  if (fingers <= FINGERS_many) return undefined
  return `${sets} sets of ${counts.length} kinds of pieces: up to ${fingers} fingers are put together in a round, which takes its time. Ctrl-C ends it.`
}

/** `5 of 8 sets meet every requirement; first come, first served it would be 4. Pairing gains one.` */
export function pairSentence({ sets, working_count, firstCome_count }: PairedLot): string {
  const gain = working_count - firstCome_count
  const gained = gain > 0 ? `Pairing gains ${gain}.` : 'Pairing gains none.'
  const counted = `${working_count} of ${sets.length} sets meet every requirement; first come, first served it would be ${firstCome_count}.`
  return `${counted} ${gained} What was not measured of a set counts as drawn.`
}

/** One set as it is put together. */
export interface PairRow {
  readonly number: number
  readonly answer: Answer
  /** `A-001: Middle phalanx, Pin pip; A-003: Distal phalanx` */
  readonly pieces: string
}

/** Rows in the order of the sets: pieces of one serial number stand together. */
export function pairRows({ sets }: PairedLot): readonly PairRow[] {
  return sets.map(({ pieces, works }, index) => {
    const serials = [...new Set(pieces.map(({ serial }) => serial))]
    const words = serials.map((serial) => {
      const titles = pieces.flatMap((one) => (one.serial === serial ? [one.piece.title] : []))
      return `${serial}: ${titles.join(', ')}`
    })
    return { number: index + 1, answer: works ? 'met' : 'short', pieces: words.join('; ') }
  })
}
