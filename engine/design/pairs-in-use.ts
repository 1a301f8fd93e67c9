import type { Design, FrictionPair } from './design.ts'

/** Friction pairs that act in a finger as it stands, in the order of the document; pairs that only wait to take over are none. */
export function pairsInUse({ frictionPairs, pins, stops }: Design): readonly FrictionPair[] {
  const named = new Set([...pins, ...stops].map(({ friction }) => friction.name))
  return frictionPairs.filter(({ name }) => named.has(name))
}
