/** Shown characters of a typed text; a whole paste would bury the message. */
const shownLength = 60

/** Control characters and those that change the direction of writing could make a terminal show what is not there. */
function isUnprintable(code: number): boolean {
  return (
    code < 0x20 ||
    (code >= 0x7f && code < 0xa0) ||
    (code >= 0x200b && code <= 0x200f) ||
    (code >= 0x2028 && code <= 0x202e) ||
    (code >= 0x2060 && code <= 0x206f) ||
    (code >= 0xd800 && code <= 0xdfff) ||
    code === 0xfeff
  )
}

/** True when a text holds a character that no title, note or name needs; line ends count unless they are allowed. */
export function hasUnprintable(text: string): boolean {
  for (const letter of text) if (isUnprintable(letter.codePointAt(0) ?? 0)) return true
  return false
}

/** Typed text in quotation marks, shortened, with unprintable characters written out. */
export function quoted(text: string): string {
  const letters = [...text.slice(0, 2 * shownLength)]
  const shown = letters.slice(0, shownLength).map((letter) => {
    const code = letter.codePointAt(0) ?? 0
    return isUnprintable(code) ? `\\u${code.toString(16).padStart(4, '0')}` : letter
  })
  return `“${shown.join('')}${letters.length > shownLength ? '…' : ''}”`
}
