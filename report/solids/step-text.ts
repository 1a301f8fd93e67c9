/**
 * The text of a STEP file: numbered lines that refer to one another.
 *
 * SOURCE standard: ISO 10303-21 (clear text encoding), from memory: `#7=NAME(...);`, reals with a point, quotes doubled in a string,
 * characters beyond ASCII as \X2\ and four hexadecimal digits each.
 */

/** Collects entities; each call returns the reference by which others name it. */
export class StepText {
  readonly #lines: string[] = []

  /** @param values of the entity, already encoded */
  add(name: string, ...values: readonly string[]): string {
    return this.complex(`${name}(${values.join(',')})`)
  }

  /** An entity of several types at once, or one that is encoded already. */
  complex(text: string): string {
    const reference = `#${this.#lines.length + 1}`
    this.#lines.push(`${reference}=${text};`)
    return reference
  }

  get lines(): readonly string[] {
    return this.#lines
  }
}

/** A real number: always with a point, exponent after E. */
export function stepReal(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`a coordinate is ${value}`)
  // Both zeros are written alike, so that the same solid gives the same bytes.
  const [mantissa, exponent] = String(value === 0 ? 0 : value).split('e')
  const real = mantissa.includes('.') ? mantissa : `${mantissa}.`
  return exponent === undefined ? real : `${real}E${exponent.replace('+', '')}`
}

/** A list in brackets. */
export function stepList(values: readonly string[]): string {
  return `(${values.join(',')})`
}

/** A text in quotes; what is not printable ASCII is escaped. */
export function stepString(text: string): string {
  const escaped = [...text].map((character) => {
    if (character === "'") return "''"
    if (character === '\\') return '\\\\'
    if (/^[ -~]$/.test(character)) return character
    const units = Array.from({ length: character.length }, (_, index) => character.charCodeAt(index))
    return `\\X2\\${units.map((unit) => unit.toString(16).toUpperCase().padStart(4, '0')).join('')}\\X0\\`
  })
  return `'${escaped.join('')}'`
}
