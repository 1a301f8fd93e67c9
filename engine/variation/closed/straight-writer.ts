/** Numbers that follow sources in straight lines, with one bend at most where a source stands as drawn. */

import type { Column } from './columns.ts'

/** How a number follows one source. */
export interface Slope {
  readonly source: number
  /** Change of the number with the source below and above what is drawn. */
  readonly down: number
  readonly up: number
}

export interface StraightLines {
  /** The numbers as drawn. */
  readonly drawn: Float64Array
  /** Of each number, for the sources that move it. */
  readonly slopes: readonly (readonly Slope[])[]
  /** The sources as drawn. */
  readonly nominal: Float64Array
}

/** Writes numbers for any values of the sources. @param values a column a source. @param out a column a number; those that nothing moves are left as they stand */
export type StraightWriter = (values: readonly Column[], out: readonly Column[]) => void

/** Numbers that are equal in every set are worked out once. */
export function straightWriter({ drawn, slopes, nominal }: StraightLines): StraightWriter {
  const rows = new Map<string, number[]>()
  for (const [index, own] of slopes.entries()) {
    if (own.length === 0) continue
    const key = JSON.stringify([drawn[index], own])
    rows.set(key, [...(rows.get(key) ?? []), index])
  }
  const groups = [...rows.values()].map(([first, ...others]) => {
    return { first, others, lines: slopes[first].map((slope) => ({ ...slope, nominal: nominal[slope.source] })) }
  })
  return (values, out) => {
    for (const { first, others, lines } of groups) {
      const numbers = out[first]
      numbers.fill(drawn[first])
      for (const line of lines) addLine(numbers, line, values[line.source])
      for (const other of others) out[other].set(numbers)
    }
  }
}

function addLine(numbers: Column, { nominal, down, up }: Slope & { readonly nominal: number }, values: Column): void {
  for (let set = 0; set < numbers.length; set++) {
    const away = values[set] - nominal
    numbers[set] += away * (away < 0 ? down : up)
  }
}
