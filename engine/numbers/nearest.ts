/** More edits than this are another word, not a slip of the pen. */
const editsMost = 3

/**
 * Edits (a letter more, less or other) that turn one word into another, or `most + 1` for more than `most`.
 * Plain dynamic programming over two rows; it ends as soon as a whole row is beyond `most`.
 */
function edits(a: string, b: string, most: number): number {
  let above = Array.from({ length: b.length + 1 }, (_, index) => index)
  for (let row = 1; row <= a.length; row++) {
    const current = [row]
    let least = row
    for (let column = 1; column <= b.length; column++) {
      const changed = a[row - 1] === b[column - 1] ? 0 : 1
      const cost = Math.min(above[column] + 1, current[column - 1] + 1, above[column - 1] + changed)
      current.push(cost)
      least = Math.min(least, cost)
    }
    if (least > most) return most + 1
    above = current
  }
  return above[b.length]
}

/** The known name that was most likely meant, when one is near enough; capitals do not count as a difference. */
export function nearestName(typed: string, known: Iterable<string>): string | undefined {
  const wanted = typed.toLowerCase()
  const allowed = Math.min(editsMost, Math.max(1, Math.floor(typed.length / 3)), typed.length - 1)
  let best: { name: string; distance: number } | undefined
  for (const name of known) {
    if (Math.abs(name.length - typed.length) > allowed) continue
    const distance = edits(wanted, name.toLowerCase(), allowed)
    if (distance <= allowed && (best === undefined || distance < best.distance)) best = { name, distance }
  }
  return best?.name
}
