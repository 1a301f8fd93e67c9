/** Room for a block of sets of a flat finger at one posture each; one a caller, never shared between two that run at once. */
import { type Column, columns, type Pair, type PartMotion, pairs, partMotions } from './columns.ts'
import type { FlatFinger } from './flat-tables.ts'

/** What stands at the postures that were placed last, mount frame. */
export interface FlatRoom {
  readonly finger: FlatFinger
  readonly sets_count: number
  /** The sets: as `finger.numbers` lists them. */
  readonly numbers: readonly Column[]
  /** On which side of the line from p to s each dyad's pin q lies: +1 to the left. Kept for all postures and sets. */
  readonly sides: Float64Array
  /** Dyad that is nearest to its dead centre in the closed posture as drawn. */
  readonly nearest: number
  /** Turn of the lead; as it is drawn, and where the drive begins and ends, rad. */
  readonly turn: Column
  readonly drawnTurn: Column
  readonly firstTurn: Column
  readonly lastTurn: Column
  /** Of each part: the place where it hangs on a part before it, and the vector of its arm from there (flat-posture.ts), mm. */
  readonly bases: readonly Pair[]
  readonly arms: readonly Pair[]
  /** Arms in the parts' own frames, mm. */
  readonly ownArms: readonly Pair[]
  /** By where a place's or a vector's numbers stand: what its part's arm is multiplied by to give it. Only `finger.places` have one. */
  readonly shares: readonly Pair[]
  /** Squares of both arms of each dyad, mm². */
  readonly squares: readonly { readonly first: Column; readonly second: Column }[]
  /** Of each joint, mm. */
  readonly centres: readonly Pair[]
  readonly motion: readonly PartMotion[]
  /** a × b of the nearest dyad, by which all is slowed down there (flat-motion.ts), mm². */
  readonly across: Column
  /** Gap of the stop that was looked at last (mm), its round, and the normal of its edge. */
  readonly contact: { readonly gap: Column; readonly at: Pair; readonly normal: Pair }
  /** Ends of its edge. */
  readonly ends: { readonly from: Pair; readonly to: Pair }
  /** A force that is being put on, its place, and those of the weights. */
  readonly acting: { readonly vector: Pair; readonly place: Pair; readonly places: readonly Pair[] }
}

/** A finger's sets. */
export interface FlatSets {
  readonly finger: FlatFinger
  /** The numbers that every set begins with. */
  readonly drawn: Float64Array
  readonly sides: Float64Array
  readonly nearest: number
  readonly sets_count: number
}

/** Room for sets that are all as drawn. */
export function flatRoom({ finger, drawn, sides, nearest, sets_count }: FlatSets): FlatRoom {
  const { parts_count, joints_count, dyads, lead } = finger
  const numbers = Array.from(drawn, (value) => new Float64Array(sets_count).fill(value))
  const bases = basesOf(finger, numbers)
  const arms = pairs(parts_count, sets_count)
  // The mount stands still: its arm is the unit along x, and what it is multiplied by is the place itself.
  arms[0].x.fill(1)
  const centres = [...pairs(joints_count, sets_count)]
  centres[lead.joint] = bases[lead.part]
  for (const { p, s, first, second } of dyads) [centres[p], centres[s]] = [bases[first], bases[second]]
  const squares = dyads.map(() => ({ first: new Float64Array(sets_count), second: new Float64Array(sets_count) }))
  const [at, normal, from, to, vector, place] = pairs(6, sets_count)
  const [turn, drawnTurn, firstTurn, lastTurn] = columns(4, sets_count)
  return {
    ...{ finger, sets_count, numbers, sides, nearest, bases, arms, squares, centres },
    ownArms: pairs(parts_count, sets_count),
    shares: sharesOf(finger, numbers),
    ...{ turn, drawnTurn, firstTurn, lastTurn },
    ...{ motion: partMotions(parts_count, sets_count) },
    across: new Float64Array(sets_count),
    contact: { gap: new Float64Array(sets_count), at, normal },
    ends: { from, to },
    acting: { vector, place, places: pairs(finger.weights.length, sets_count) },
  }
}

/** Of what hangs on the mount they are its own numbers. */
function basesOf({ parts_count, lead, dyads }: FlatFinger, numbers: readonly Column[]): readonly Pair[] {
  const bases = [...pairs(parts_count, numbers[lead.onMount].length)]
  const hang = (part: number, at: number): void => {
    bases[part] = { x: numbers[at], y: numbers[at + 1] }
  }
  hang(lead.part, lead.onMount)
  for (const { first, second, beyondFirst, beyondSecond, pBeyond, sBeyond } of dyads) {
    if (beyondFirst === 0) hang(first, pBeyond)
    if (beyondSecond === 0) hang(second, sBeyond)
  }
  return bases
}

function sharesOf({ places }: FlatFinger, numbers: readonly Column[]): readonly Pair[] {
  const shares = pairs(numbers.length, 0) as Pair[]
  for (const { part, at } of places)
    shares[at] = part === 0 ? { x: numbers[at], y: numbers[at + 1] } : pairs(1, numbers[at].length)[0]
  return shares
}
