import type { Design, FrictionPair } from '../design/design.ts'

/** A coefficient for each state, known: what the bench finds is one number, not a range. */
export interface KnownFriction {
  readonly moving: number
  readonly rest: number
}

/** The design with some of its friction pairs known, wherever they are used. */
export function withFriction(design: Design, knownOf: (pair: FrictionPair) => KnownFriction | undefined): Design {
  const put = (pair: FrictionPair): FrictionPair => {
    const known = knownOf(pair)
    if (known === undefined) return pair
    const all = (value: number) => ({ least: value, likely: value, most: value })
    return { ...pair, moving: all(known.moving), rest: all(known.rest) }
  }
  const of = <Thing extends { readonly friction: FrictionPair }>(things: readonly Thing[]): readonly Thing[] =>
    things.map((thing) => ({ ...thing, friction: put(thing.friction) }))
  return { ...design, frictionPairs: design.frictionPairs.map(put), pins: of(design.pins), stops: of(design.stops) }
}
