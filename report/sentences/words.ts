/** Small pieces of English that every sentence needs: lists, capitals, clauses set into a longer sentence. */

/** `a, b and c`; `none` is never returned: an empty list gives an empty text. */
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join('')
  return `${items.slice(0, -1).join(', ')} and ${items[items.length - 1]}`
}

/** A name or sentence set inside another: first letter small unless the word is an abbreviation (`PIP`), no full stop at its end. */
export function inside(text: string): string {
  const trimmed = text.trim().replace(/\.+$/, '')
  const abbreviation = /^[A-Z][A-Z0-9]/.test(trimmed)
  return abbreviation ? trimmed : trimmed.charAt(0).toLowerCase() + trimmed.slice(1)
}

/** Begins with a capital and ends with one full stop. */
export function asSentence(text: string): string {
  const trimmed = text.trim().replace(/\.+$/, '')
  return `${trimmed.charAt(0).toUpperCase()}${trimmed.slice(1)}.`
}

/** `the wearer` from `wearer`; left alone where an article stands already. */
export function withArticle(noun: string): string {
  return /^(the|a|an|its|nothing|nobody) ?/.test(noun) ? noun : `the ${noun}`
}
