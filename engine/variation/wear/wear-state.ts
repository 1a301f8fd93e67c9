/** How far a finger has worn, and how a number of closings takes it further. */
import type { Design, FrictionPair } from '../../design/design.ts'
import type { Mechanism } from '../../motion/mechanism.ts'
import { BORE_SECTORS } from '../../strength/worn-bore.ts'
import { type StopContact, stopDepth, stopVolume } from '../../strength/worn-stop.ts'

/** The hole of one joint. */
export interface BoreState {
  /** One a sector: how far the pin has bedded in while it pressed that way. */
  readonly depths_mm: Float64Array
  /** The surfaces that run on each other now. */
  readonly pair: FrictionPair
  /** How much of the film is gone at most; counts from the last film that was worn through. */
  readonly ofFilm_mm: number
}

/** One stop. */
export interface StopState {
  readonly volume_mm3: number
  readonly pair: FrictionPair
  readonly volumeOfFilm_mm3: number
}

/** By joint and by stop. */
export interface WearState {
  readonly closings: number
  readonly bores: readonly BoreState[]
  readonly stops: readonly StopState[]
}

/** What one closing takes, by joint and by stop. */
export interface WearRates {
  readonly bores: readonly { readonly depths_mm: Float64Array; readonly most_mm: number }[]
  readonly stops: readonly { readonly volume_mm3: number; readonly contact: StopContact }[]
}

/** A finger as it leaves the bench. */
export function unworn({ design, joints }: Mechanism): WearState {
  return {
    closings: 0,
    bores: joints.map(({ pin }) => ({
      depths_mm: new Float64Array(BORE_SECTORS),
      pair: design.pins[pin].friction,
      ofFilm_mm: 0,
    })),
    stops: design.stops.map(({ friction }) => ({ volume_mm3: 0, pair: friction, volumeOfFilm_mm3: 0 })),
  }
}

/** The state after more closings at rates that stay as they are. */
export function advanced(state: WearState, rates: WearRates, closings: number): WearState {
  return {
    closings: state.closings + closings,
    bores: state.bores.map(({ depths_mm, pair, ofFilm_mm }, joint) => ({
      depths_mm: depths_mm.map((depth, sector) => depth + closings * rates.bores[joint].depths_mm[sector]),
      pair,
      ofFilm_mm: ofFilm_mm + closings * rates.bores[joint].most_mm,
    })),
    stops: state.stops.map(({ volume_mm3, pair, volumeOfFilm_mm3 }, stop) => ({
      volume_mm3: volume_mm3 + closings * rates.stops[stop].volume_mm3,
      pair,
      volumeOfFilm_mm3: volumeOfFilm_mm3 + closings * rates.stops[stop].volume_mm3,
    })),
  }
}

/** Closings until the next film is worn through at these rates; infinite where none will be. */
export function closingsToBare(state: WearState, rates: WearRates): number {
  const ofBores = state.bores.map(({ pair, ofFilm_mm }, joint) =>
    pair.wear?.film ? (pair.wear.film.depth_mm - ofFilm_mm) / rates.bores[joint].most_mm : Number.POSITIVE_INFINITY,
  )
  const ofStops = state.stops.map(({ pair, volumeOfFilm_mm3 }, stop) => {
    const { contact, volume_mm3 } = rates.stops[stop]
    const film = pair.wear?.film
    return film ? (stopVolume(contact, film.depth_mm) - volumeOfFilm_mm3) / volume_mm3 : Number.POSITIVE_INFINITY
  })
  // 0 / 0, a film of which nothing is left where nothing rubs, cannot be: what is gone was rubbed off.
  return Math.max(0, Math.min(...ofBores, ...ofStops))
}

/** Rounding of the closings to bare may leave this share of a film. */
const LEFT_ratio = 1e-9

/** A film that was worn through: at a pin or a stop, and the pair that has taken over. */
export interface WornThrough {
  readonly at: { readonly kind: 'pin' | 'stop'; readonly id: string }
  readonly film: string
  readonly under: string
}

/** The state with what lies under each film that is gone, and which they were. */
export function bared(
  state: WearState,
  { mechanism, rates }: { readonly mechanism: Mechanism; readonly rates: WearRates },
): { readonly state: WearState; readonly films: readonly WornThrough[] } {
  const { design } = mechanism
  const films: WornThrough[] = []
  const through = ({ wear, name }: FrictionPair, gone_ratio: (depth_mm: number) => number, at: WornThrough['at']) => {
    if (!wear?.film || gone_ratio(wear.film.depth_mm) < 1 - LEFT_ratio) return undefined
    films.push({ at, film: name, under: wear.film.under.name })
    return wear.film.under
  }
  const bores = state.bores.map((bore, joint) => {
    const { id } = design.pins[mechanism.joints[joint].pin]
    const under = through(bore.pair, (depth) => bore.ofFilm_mm / depth, { kind: 'pin', id })
    return under ? { ...bore, pair: under, ofFilm_mm: 0 } : bore
  })
  const stops = state.stops.map((stop, index) => {
    const { contact } = rates.stops[index]
    const gone = (depth: number) => stop.volumeOfFilm_mm3 / stopVolume(contact, depth)
    const under = through(stop.pair, gone, { kind: 'stop', id: design.stops[index].id })
    return under ? { ...stop, pair: under, volumeOfFilm_mm3: 0 } : stop
  })
  return { state: { ...state, bores, stops }, films }
}

/** How deep each stop has worn, mm. */
export function stopDepths({ stops }: WearState, rates: WearRates): readonly number[] {
  return stops.map(({ volume_mm3 }, index) => stopDepth(rates.stops[index].contact, volume_mm3))
}

/** A pin runs on the barest of its surfaces: the one that is furthest down the row of pairs that lie under its own. */
export function barest(design: Design, pin: number, pairs: readonly FrictionPair[]): FrictionPair {
  const depthOf = (pair: FrictionPair): number => {
    let depth = 0
    for (let over: FrictionPair | undefined = design.pins[pin].friction; over && over.name !== pair.name; depth++)
      over = over.wear?.film?.under
    return depth
  }
  return pairs.reduce((most, pair) => (depthOf(pair) > depthOf(most) ? pair : most))
}
