import { isPassphrase, type KeptPassphrase } from './passphrase.ts'

/** Tells whether a passphrase is the one that was kept. */
export type PassphraseCheck = (passphrase: string) => Promise<boolean>

/** Checks one passphrase after the other: each takes 128 MB while it lasts, and many at once would take all there is. */
export function passphraseCheck(kept: KeptPassphrase): PassphraseCheck {
  let before: Promise<unknown> = Promise.resolve()
  return (passphrase) => {
    const check = () => isPassphrase(passphrase, kept)
    // Whoever asked for the check before hears of its failure; the next one goes ahead all the same.
    const answer = before.then(check, check)
    before = answer
    return answer
  }
}
