/** Shown characters of a typed text; a whole paste would bury the message. */
const quotedLength = 60
/** Shown characters of a place; the deepest of the format is shorter. */
const placeLength = 160

/**
 * Controls, lone surrogates, line separators and invisible marks, such as those that change the direction of writing: they
 * could make a terminal show what is not there. The two joiners that Persian and Indic spelling needs are let through.
 */
const unprintable = /(?![\u200c\u200d])[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]/u

/** True when a text holds a character that no title, note or name needs; line ends count too. */
export function hasUnprintable(text: string): boolean {
  return unprintable.test(text)
}

/** A text shortened to `length` characters, with unprintable ones written out. */
function printable(text: string, length: number): string {
  // No character is longer than two units, so that a huge text is not taken apart as a whole.
  const letters = [...text.slice(0, 2 * (length + 1))]
  const shown = letters
    .slice(0, length)
    .map((letter) => (unprintable.test(letter) ? `\\u${(letter.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}` : letter))
  return shown.join('') + (letters.length > length ? '…' : '')
}

/** Typed text in quotation marks, shortened, with unprintable characters written out. */
export function quoted(text: string): string {
  return `“${printable(text, quotedLength)}”`
}

/** A place in a document as it may be shown: keys are typed text too. */
export function printablePlace(place: string): string {
  return printable(place, placeLength)
}
