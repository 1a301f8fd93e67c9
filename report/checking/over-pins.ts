const OVER_PINS = /^(?<length>.+?)\s+(?<taken>over|between)\s+(?<first>.+?)\s+and\s+(?<second>.+)$/

/** A length as it is typed where it was taken over two pins, `27.507 over 3 and 3`, or between them; undefined for any other. */
export function pinsOf(typed: string) {
  const { length, taken, first, second } = OVER_PINS.exec(typed)?.groups ?? {}
  if (length === undefined || first === undefined || second === undefined) return undefined
  return { length, thick: [first, second] as const, taken: taken === 'over' ? ('over' as const) : ('between' as const) }
}
