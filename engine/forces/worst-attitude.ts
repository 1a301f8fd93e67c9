/**
 * The direction within a range at which a pull has the most power: along · cos α + across · sin α at its crest, by whole turns into the range,
 * or at the better end.
 *
 * @param power of the unit pull along x and along y of the mount frame
 * @returns α in the mount frame, rad
 */
export function worstAttitude(
  { from_rad, to_rad }: { readonly from_rad: number; readonly to_rad: number },
  { along, across }: { readonly along: number; readonly across: number },
): number {
  const crest_rad = Math.atan2(across, along)
  const turnsOn = Math.ceil((from_rad - crest_rad) / (2 * Math.PI))
  const inRange = crest_rad + 2 * Math.PI * turnsOn
  if (inRange <= to_rad) return inRange
  const powerAt = (angle_rad: number): number => along * Math.cos(angle_rad) + across * Math.sin(angle_rad)
  return powerAt(from_rad) >= powerAt(to_rad) ? from_rad : to_rad
}
