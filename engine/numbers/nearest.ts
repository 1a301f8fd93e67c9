/** Edits (a letter more, less or other) that turn one word into another; plain dynamic programming over two rows. */
function edits(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, index) => index)
  for (let row = 1; row <= a.length; row++) {
    const current = [row]
    for (let column = 1; column <= b.length; column++) {
      const changed = a[row - 1] === b[column - 1] ? 0 : 1
      current.push(Math.min(above[column] + 1, current[column - 1] + 1, above[column - 1] + changed))
    }
    above = current
  }
  return above[b.length]
}

/** Longer words are not compared: a wrong paste is not a slip of the pen, and the work grows with the square. */
const comparableLength = 60

/** The known name that was most likely meant, when one is near enough; capitals do not count as a difference. */
export function nearestName(typed: string, known: Iterable<string>): string | undefined {
  if (typed.length > comparableLength) return undefined
  const wanted = typed.toLowerCase()
  const allowed = Math.max(1, Math.floor(typed.length / 3))
  let best: { name: string; distance: number } | undefined
  for (const name of known) {
    if (Math.abs(name.length - typed.length) > allowed) continue
    const distance = edits(wanted, name.toLowerCase())
    if (distance <= allowed && distance < typed.length && (best === undefined || distance < best.distance))
      best = { name, distance }
  }
  return best?.name
}
