/** What the calculation leaves out, for readers of a report; the same as in docs/limits.md, shorter. */
export const modelLimits: readonly string[] = [
  'Parts move in one plane; a push from the side goes through the phalanges alone, and pins do not tilt in their holes.',
  'Motion is slow: no inertia, no impact. “Lets go” means that no state of rest is left; how fast it opens is not said.',
  'Friction is dry, between a stated least and most; holding is judged at the least, letting go at the most. Dirt and cold grease count only where a drag is stated.',
  'Parts are rigid except coupling links along their pins. Stresses are nominal ones of the drawn sizes.',
  'Fretting, corrosion and sweat are not counted. Fatigue strengths are mostly recalled from handbooks.',
  'Wear follows Archard’s law with rates known to an order of magnitude; grit, galling and running in are not in it.',
  'Sets vary as the stated tolerances, coatings, friction and springs say; a shop that drifts makes others. Form, squareness and materials do not vary.',
  'The program counts only the loads that the design states. A load that nobody wrote down is not covered.',
]

/** What decides beside the facts of the orientation. */
export const localRules =
  'These are facts for orientation, not advice, and some are recalled and not read. The law and the codes where the wearer lives and the practice of licensed prosthetists decide.'
