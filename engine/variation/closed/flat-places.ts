/** What stands on the parts of a flat finger and moves with them. */
import { ofForce, ofStop, ofWeight } from './flat-numbers.ts'
import type { FlatFinger, FlatLimb, FlatPlace } from './flat-tables.ts'

/** Limbs of all parts but the mount. */
export function limbsOf({ lead, dyads }: Pick<FlatFinger, 'lead' | 'dyads'>): readonly FlatLimb[] {
  const ofDyads = dyads.flatMap(({ first, second, pOnFirst, qOnFirst, qOnSecond, sOnSecond }): FlatLimb[] => [
    { part: first, base: pOnFirst, tip: qOnFirst },
    { part: second, base: sOnSecond, tip: qOnSecond },
  ])
  return [{ part: lead.part, base: lead.onLead, tip: undefined }, ...ofDyads]
}

type Acting = Pick<FlatFinger, 'dyads' | 'stops' | 'weights' | 'kept'>

/** All that is asked for of where parts stand. */
export function* placesOf({ dyads, stops, weights, kept }: Acting): Generator<FlatPlace> {
  for (const { beyondFirst, beyondSecond, pBeyond, sBeyond } of dyads) {
    yield { part: beyondFirst, at: pBeyond, is: 'place' }
    yield { part: beyondSecond, at: sBeyond, is: 'place' }
  }
  for (const { round, against, at } of stops) {
    yield { part: round, at, is: 'place' }
    yield { part: against, at: at + ofStop.from, is: 'place' }
    yield { part: against, at: at + ofStop.to, is: 'place' }
  }
  for (const { part, at } of weights) yield { part, at: at + ofWeight.place, is: 'place' }
  for (const { part, frame, at } of [...(kept?.forces ?? []), ...(kept?.keeperForces ?? [])]) {
    yield { part: frame, at, is: 'vector' }
    yield { part, at: at + ofForce.place, is: 'place' }
  }
}
