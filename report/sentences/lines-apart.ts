import { spliceBetween } from '../../engine/index.ts'

/**
 * The lines in which two texts differ, as each of them has them: from the first line that differs to the last.
 *
 * @returns two empty texts for texts that are equal
 */
export function linesApart(one: string, other: string): readonly [string, string] {
  if (one === other) return ['', '']
  const { at, removed, inserted } = spliceBetween(one, other)
  return [wholeLines(one, { at, length: removed.length }), wholeLines(other, { at, length: inserted.length })]
}

function wholeLines(text: string, { at, length }: { readonly at: number; readonly length: number }): string {
  const start = text.lastIndexOf('\n', at - 1) + 1
  const end = text.indexOf('\n', at + length)
  return text.slice(start, end < 0 ? text.length : end)
}
