/** A number with a fixed count of digits after the point and a true minus; what rounds to nothing has none. */
export function fixedText(value: number, digits: number): string {
  const text = value.toFixed(digits)
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−')
}
