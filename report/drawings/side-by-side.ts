/** Where blocks in a row begin, each as near to where it would like to stand as the others and the row's ends leave room. */
export interface RowOfBlocks {
  /** In the order in which they stand: where each would like to begin, and how wide it is. */
  readonly blocks: readonly { readonly wish: number; readonly width: number }[]
  readonly left: number
  readonly right: number
  readonly gap: number
}

/** Pushed to the right of the one before, then back from the row's end; too many blocks run out over its beginning. */
export function sideBySide({ blocks, left, right, gap }: RowOfBlocks): readonly number[] {
  const begins: number[] = []
  let next = left
  for (const { wish, width } of blocks) {
    const begin = Math.max(wish, next)
    begins.push(begin)
    next = begin + width + gap
  }
  let end = right
  for (let index = blocks.length - 1; index >= 0; index--) {
    begins[index] = Math.min(begins[index], end - blocks[index].width)
    end = begins[index] - gap
  }
  return begins
}
