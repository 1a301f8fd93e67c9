/** SOURCE standard (the inch is 25.4 mm and the pound-force 4.4482216152605 N by definition: NIST SP 811, from memory) */
const MM_PER_IN = 25.4
const N_PER_LBF = 4.4482216152605

/** Every quantity of a document in inches and pounds instead of millimetres and newtons. */
export function inInches(text: string): string {
  const units = [
    ['N\\*mm', 'lbf*in', N_PER_LBF * MM_PER_IN],
    ['N/mm', 'lbf/in', N_PER_LBF / MM_PER_IN],
    ['N(?![*/\\w])', 'lbf', N_PER_LBF],
    ['mm(?![*/^\\w])', 'in', MM_PER_IN],
  ] as const
  return units.reduce(
    (changed, [unit, other, size]) =>
      changed.replaceAll(
        new RegExp(`(?<=["( ])(-?\\d+(?:\\.\\d+)?) ${unit}`, 'g'),
        (_, number) => `${Number(number) / size} ${other}`,
      ),
    text,
  )
}
