/**
 * The hold verdicts of a block of sets in step with each other: the same trials for all of them, as many as nearly all sets need.
 *
 *     contact of the stop (3 trials) ─▶ reserve there ─▶ jam (3 trials) ─▶ slip (3 trials)
 *
 * No set waits for another, and none knows of another: what comes out for a set does not hang on what it stands beside. Whether a set has
 * settled is asked at the end. One that has not, that has a pin on the wrong side, or that may not be the same finger as the one drawn
 * (hold-alone.ts says when) is not solved, and has to be asked alone.
 */
import type { Column } from './columns.ts'
import { contactsTogether } from './contacts-together.ts'
import { moveFlat } from './flat-motion.ts'
import { gapFlat } from './flat-stop.ts'
import type { HoldGuess } from './hold-guess.ts'
import { beginFrom, type HoldRoom, marginsFlat, readPlaces, takeSets } from './hold-room.ts'
import { excessValue, reserveValue } from './hold-values.ts'
import type { FlatState } from './rest-room.ts'
import { closedHere, rootsTogether, rootsWay } from './roots-together.ts'
import type { StandingHold } from './standing-hold.ts'
import { askSettled, settledValues } from './values-together.ts'

/** Solves the sets whose numbers stand in a room. @param isSolved out: 0 for those that have to be asked alone */
export type HoldTogether = (guess: HoldGuess, out: readonly Column[], isSolved: Uint8Array) => void

/** Rounds of directions where the sets are closed, from the state as drawn. */
const closedRounds = 2

/** @param hold of as many sets as a block has */
export function holdTogether(standing: StandingHold, hold: HoldRoom): HoldTogether {
  const { closed, jam, slip, keptAtJam } = standing.states
  const way = rootsWay(hold.room.sets_count)
  return (guess, out, isSolved) => {
    const [reserves, jams, slips] = out.slice(hold.toggles.length)
    takeSets(hold, isSolved)
    contactsTogether(hold, guess.turn, isSolved)
    askClosed(hold, out, isSolved)
    moveFlat(hold.room, hold.room.centres)
    readPlaces(hold)
    closedHere(way, hold)
    reserves.fill(Number.NaN)
    if (closed) reservesHere(hold, closed, isSolved)
    if (closed) reserves.set(hold.found)
    jams.fill(Number.NaN)
    slips.fill(Number.NaN)
    if (!jam) return
    rootsTogether(hold, { way, value: reserveValue, guess: guess.jam, state: jam.state }, isSolved)
    jams.set(way.aimed)
    askAbove(jams, 0, isSolved)
    // Where there is a keeper and as drawn no slip, each set is asked by itself whether it has none.
    if (keptAtJam && !slip) isSolved.fill(0)
    if (!slip) return
    rootsTogether(hold, { way, value: excessValue, guess: guess.slip, state: slip.state }, isSolved)
    slips.set(way.aimed)
    askClear(slips, jams, isSolved)
  }
}

/** Works out what is left of the return where the sets are closed, into `found`. */
function reservesHere(hold: HoldRoom, closed: FlatState, isSolved: Uint8Array): void {
  beginFrom(hold, closed)
  settledValues(hold, reserveValue, closedRounds)
  askSettled(hold, reserveValue, isSolved)
}

/** Reads the closed margins; asks whether the sets come to their stop before anything else, on the side of dead centre as drawn. */
function askClosed(hold: HoldRoom, out: readonly Column[], isSolved: Uint8Array): void {
  const { room, toggles } = hold
  const { turn, lastTurn } = room
  const { stops, lead } = room.finger
  for (let set = 0; set < isSolved.length; set++) if (!(lead.opens * (turn[set] - lastTurn[set]) >= 0)) isSolved[set] = 0
  for (let stop = 0; stop < stops.length; stop++) {
    if (stop === hold.stop) continue
    gapFlat(room, stops[stop])
    askAbove(room.contact.gap, 0, isSolved)
  }
  for (let toggle = 0; toggle < toggles.length; toggle++) {
    marginsFlat(hold, toggle, out[toggle])
    askOnSide(out[toggle], toggles[toggle].closes, isSolved)
  }
}

/** By how much the slip has to stand above the jam for the keeper to be enough at the jam without asking: what it needs rises with the margin. */
const clearly_ratio = 1.1

/** Asks whether sets slip clearly above where they jam. */
function askClear(slips: Column, jams: Column, isSolved: Uint8Array): void {
  for (let set = 0; set < isSolved.length; set++) if (!(slips[set] > clearly_ratio * jams[set])) isSolved[set] = 0
}

function askOnSide(margins: Column, closes: 1 | -1, isSolved: Uint8Array): void {
  for (let set = 0; set < isSolved.length; set++) if (!(closes * margins[set] > 0)) isSolved[set] = 0
}

function askAbove(values: Column, bound: number, isSolved: Uint8Array): void {
  for (let set = 0; set < isSolved.length; set++) if (!(values[set] > bound)) isSolved[set] = 0
}
