import type { Verdict } from '../figures/evaluation.ts'

/** What falls short first, then what is open, then what is met. */
export const verdictOrder: readonly Verdict[] = ['short', 'undecided', 'met']

/** Short if any is short, else undecided if any is; met for none. */
export function worstVerdict(verdicts: readonly Verdict[]): Verdict {
  return verdictOrder.find((verdict) => verdicts.includes(verdict)) ?? 'met'
}

/** The same things, those that fall short first and those that are met last; otherwise in their order. */
export function worstFirst<T extends { readonly verdict: Verdict }>(things: readonly T[]): readonly T[] {
  return things.toSorted((one, other) => verdictOrder.indexOf(one.verdict) - verdictOrder.indexOf(other.verdict))
}
