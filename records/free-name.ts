/** The first of `name`, `name-2`, `name-3` … that is not taken. */
export function freeName(wanted: string, isTaken: (name: string) => boolean): string {
  if (!isTaken(wanted)) return wanted
  let number = 2
  while (isTaken(`${wanted}-${number}`)) number++
  return `${wanted}-${number}`
}
