import { isIPv6 } from 'node:net'
import type { Clock } from './sessions.ts'

/** Tries that are free at first, and how long it takes until one more is. */
interface Allowance {
  readonly free: number
  readonly oneMoreAfter_ms: number
}

/** A person mistypes a passphrase a few times; a guesser behind one address gets 1440 guesses a day. */
const OF_ONE_ADDRESS: Allowance = { free: 5, oneMoreAfter_ms: 60_000 }

/** Many addresses together: 14,400 guesses a day, and at most this many hashes waiting for their turn. */
const OF_ALL: Allowance = { free: 20, oneMoreAfter_ms: 6_000 }

/**
 * How many tries to sign in are left, for each address and for all together. Every try counts, before it is known to be right.
 * An address is forgotten once its tries are all free again; because all together are limited, only some dozens are ever remembered.
 */
export class SignInLimit {
  /** When all tries of an address are free again. */
  readonly #free_ms = new Map<string, number>()
  #allFree_ms = Number.NEGATIVE_INFINITY
  readonly #now: Clock

  constructor(now: Clock) {
    this.#now = now
  }

  /**
   * Counts a try.
   *
   * @param address IP address of who tries
   * @returns 0 when the try may go on; else how many seconds to wait, and the try was not counted
   */
  take(address: string): number {
    const now_ms = this.#now()
    for (const [known, free_ms] of this.#free_ms) if (free_ms <= now_ms) this.#free_ms.delete(known)
    const key = networkOf(address)
    const one_ms = afterOneMore(OF_ONE_ADDRESS, { free_ms: this.#free_ms.get(key), now_ms })
    const all_ms = afterOneMore(OF_ALL, { free_ms: this.#allFree_ms, now_ms })
    const wait_ms = Math.max(waitFor(OF_ONE_ADDRESS, one_ms - now_ms), waitFor(OF_ALL, all_ms - now_ms))
    if (wait_ms > 0) return Math.ceil(wait_ms / 1000)
    this.#free_ms.set(key, one_ms)
    this.#allFree_ms = all_ms
    return 0
  }

  /** Frees the tries of an address: who signs in there knew the passphrase. Those of all together stay counted. */
  forgive(address: string): void {
    this.#free_ms.delete(networkOf(address))
  }
}

/** When all tries would be free again after one more. */
function afterOneMore(allowance: Allowance, { free_ms, now_ms }: { free_ms: number | undefined; now_ms: number }): number {
  return Math.max(free_ms ?? now_ms, now_ms) + allowance.oneMoreAfter_ms
}

/** How long until one more try fits into the allowance. */
function waitFor({ free, oneMoreAfter_ms }: Allowance, untilAllFree_ms: number): number {
  return Math.max(0, untilAllFree_ms - free * oneMoreAfter_ms)
}

/** What one person holds: a single IPv4 address, or an IPv6 network of 64 bits, within which addresses are free to choose. */
function networkOf(address: string): string {
  const plain = address.replace(/^::ffff:(?=\d+\.)/i, '').replace(/%.*$/, '')
  if (!isIPv6(plain)) return plain
  const [head = '', tail] = plain.split('::')
  const before = head === '' ? [] : head.split(':')
  const after = tail === undefined || tail === '' ? [] : tail.split(':')
  const zeros = Array<string>(Math.max(0, 8 - before.length - after.length)).fill('0')
  return [...before, ...zeros, ...after].slice(0, 4).join(':')
}
