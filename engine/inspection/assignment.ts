/**
 * Which column each row takes so that the sum of what they are worth together is largest: the assignment problem, exactly, by shortest augmenting
 * paths with prices on rows and columns (H. Kuhn, Naval Research Logistics Quarterly 2, 1955, and J. Munkres 1957; from memory).
 *
 * @param worth rows of equal length, at least as many columns as rows; finite
 * @returns the column of each row
 */
export function assignment(worth: readonly (readonly number[])[]): readonly number[] {
  const [rows, columns] = [worth.length, worth[0]?.length ?? 0]
  const state: State = {
    worth,
    ofRow: new Float64Array(rows + 1),
    ofColumn: new Float64Array(columns + 1),
    taken: new Int32Array(columns + 1),
    way: new Int32Array(columns + 1),
  }
  for (let row = 1; row <= rows; row++) takeIn(state, row)
  const chosen = new Array<number>(rows).fill(-1)
  for (let column = 1; column <= columns; column++) if (state.taken[column] > 0) chosen[state.taken[column] - 1] = column - 1
  return chosen
}

/** Counted from 1; 0 is the row that is taken in and the column that it stands in for a moment. */
interface State {
  readonly worth: readonly (readonly number[])[]
  readonly ofRow: Float64Array
  readonly ofColumn: Float64Array
  readonly taken: Int32Array
  readonly way: Int32Array
}

function takeIn(state: State, row: number): void {
  const { taken, way } = state
  taken[0] = row
  const nearest = new Float64Array(taken.length).fill(Infinity)
  const isSeen = new Uint8Array(taken.length)
  let column = 0
  do {
    isSeen[column] = 1
    column = nextColumn(state, { nearest, isSeen, column })
  } while (taken[column] !== 0)
  while (column !== 0) {
    taken[column] = taken[way[column]]
    column = way[column]
  }
}

interface Search {
  readonly nearest: Float64Array
  readonly isSeen: Uint8Array
  readonly column: number
}

/** Lowers the prices until one more column costs nothing, and goes there. */
function nextColumn({ worth, ofRow, ofColumn, taken, way }: State, { nearest, isSeen, column }: Search): number {
  const row = taken[column]
  let [least, next] = [Infinity, 0]
  for (let other = 1; other < taken.length; other++) {
    if (isSeen[other]) continue
    const cost = -worth[row - 1][other - 1] - ofRow[row] - ofColumn[other]
    if (cost < nearest[other]) {
      nearest[other] = cost
      way[other] = column
    }
    if (nearest[other] < least) [least, next] = [nearest[other], other]
  }
  for (let other = 0; other < taken.length; other++) {
    if (isSeen[other]) {
      ofRow[taken[other]] += least
      ofColumn[other] -= least
    } else nearest[other] -= least
  }
  return next
}
