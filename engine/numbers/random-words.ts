/**
 * Words of 32 bits that look random and are the same for the same seeds: a counter, mixed by two multiplications and shifts (the finaliser
 * of A. Appleby's public-domain hash, from memory).
 */

/** Step of the counter: 2³² over the golden ratio, odd, so that it passes through every word. */
const goldenStep = 0x9e3779b9

/** A stream of words for a list of whole numbers; streams of different lists have nothing to do with one another. */
export function randomWords(...seeds: readonly number[]): () => number {
  let state = 0
  for (const seed of seeds) state = mixed((state + goldenStep) ^ mixed(seed ^ goldenStep))
  return () => {
    state = (state + goldenStep) | 0
    return mixed(state)
  }
}

function mixed(word: number): number {
  let bits = word ^ (word >>> 16)
  bits = Math.imul(bits, 0x85ebca6b)
  bits ^= bits >>> 13
  bits = Math.imul(bits, 0xc2b2ae35)
  return (bits ^ (bits >>> 16)) >>> 0
}
