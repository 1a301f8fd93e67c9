import { createHash, randomBytes } from 'node:crypto'

/** How long a person stays signed in, however busy: one working day. */
export const sessionLife_s = 12 * 3600

/** 256 bits: no guesser finds one of them. */
const TOKEN_bytes = 32

/** More people at one server have never been seen; past it the oldest session ends. */
const MOST_SESSIONS = 100

/** A clock: milliseconds since any fixed moment. */
export type Clock = () => number

/**
 * Who is signed in. Kept in memory and as hashes: ending the server signs everybody out, and a dump of its memory opens no door.
 * Looking a hash up in a table tells a guesser nothing by its time, because the hash of a guess is not of the guesser's choosing.
 */
export class Sessions {
  /** When each session ends, by the hash of its token, the oldest first. */
  readonly #ends_ms = new Map<string, number>()
  readonly #now: Clock

  constructor(now: Clock) {
    this.#now = now
  }

  /** Begins a session under a fresh token that nobody can have known before. */
  begin(): string {
    this.#forgetEnded()
    const [oldest] = this.#ends_ms.keys()
    if (oldest !== undefined && this.#ends_ms.size >= MOST_SESSIONS) this.#ends_ms.delete(oldest)
    const token = randomBytes(TOKEN_bytes).toString('base64url')
    this.#ends_ms.set(hashOf(token), this.#now() + 1000 * sessionLife_s)
    return token
  }

  /** Whether a token belongs to a session that has begun and not ended. */
  knows(token: string | undefined): boolean {
    if (token === undefined) return false
    const ends_ms = this.#ends_ms.get(hashOf(token))
    return ends_ms !== undefined && this.#now() < ends_ms
  }

  /** Ends a session; a token that is not known changes nothing. */
  end(token: string | undefined): void {
    if (token !== undefined) this.#ends_ms.delete(hashOf(token))
  }

  #forgetEnded(): void {
    for (const [hash, ends_ms] of this.#ends_ms) if (ends_ms <= this.#now()) this.#ends_ms.delete(hash)
  }
}

function hashOf(token: string): string {
  return createHash('sha256').update(token).digest('base64')
}
