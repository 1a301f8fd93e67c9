/** Digits of a share: more would claim what no count of some thousand sets knows. */
const DIGITS = 3

/** A share as it is read: `99.5 %`; a whole is not written unless it is one. */
export function shareWords(share_ratio: number): string {
  const percent = 100 * share_ratio
  const left = 100 - percent
  // Just below the whole it is what is left that counts: 99.98 % must not become 100 %.
  const text = percent > 50 ? 100 - Number(left.toPrecision(2)) : Number(percent.toPrecision(2))
  return `${Number(text.toPrecision(DIGITS + 2))} %`
}
