/** Test support: a stream of numbers that looks random and is the same on every run. */

export interface Seeded {
  /** Evenly spread between the two. */
  readonly between: (low: number, high: number) => number
}

/** Weyl sequence mixed by two multiplications (the 32-bit mulberry generator, public domain, from memory). */
export function seeded(seed: number): Seeded {
  let state = seed >>> 0
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
  return { between: (low, high) => low + (high - low) * next() }
}
