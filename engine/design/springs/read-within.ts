import type { Reading } from '../reading.ts'

/** Shares by which a spring as bought may be off; one that is not stated has no range. @param place of the spring */
export function readWithin<Key extends string>(
  place: string,
  typed: { readonly [key in Key]?: string | number | undefined } | undefined,
  reading: Reading,
): { readonly within?: { readonly [key in `${Key}_ratio`]?: number } } {
  if (!typed) return {}
  const shares = Object.entries<string | number | undefined>(typed).flatMap(([key, share]) =>
    share === undefined ? [] : [[`${key}_ratio`, reading.share(`${place}.within.${key}`, share)]],
  )
  return { within: Object.fromEntries(shares) }
}
