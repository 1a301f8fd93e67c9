import type { SignIn } from '../index.ts'
import { keepPassphrase } from '../index.ts'
import { type RawAnswer, send } from './raw-request.ts'

/** The passphrase of the tests. */
export const passphrase = 'four plain words here'

/** A clock that a test sets; it stands still by itself. */
export interface SetClock {
  ms: number
}

/** Hashing as in use, at a cost that lets a test try often. */
export const cheap = { blocks: 1024, blockSize: 8, lanes: 1 } as const

/** Signing in with the passphrase of the tests, by a clock that the test sets. */
export async function exampleSignIn(clock: SetClock): Promise<SignIn> {
  return { kept: await keepPassphrase(passphrase, cheap), now: () => clock.ms }
}

/** Tries a passphrase as the form of the page does. */
export function tryToSignIn(address: string, tried: string, headers: Readonly<Record<string, string>> = {}): Promise<RawAnswer> {
  return send(address, {
    method: 'POST',
    path: '/sign-in',
    headers: { 'content-type': 'application/x-www-form-urlencoded', ...headers },
    body: new URLSearchParams({ passphrase: tried }).toString(),
  })
}

/** The cookie that an answer sets, as a browser sends it back. */
export function cookieOf(answer: RawAnswer): string {
  return setCookieOf(answer).split(';')[0] ?? ''
}

/** The line by which an answer sets its cookie; empty when it sets none. */
export function setCookieOf({ headers }: RawAnswer): string {
  return String(headers['set-cookie'] ?? '')
}
