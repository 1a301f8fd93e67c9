import { BROKEN_POSTURES, type BrokenMember, type Design, type Working, type WorkingValue } from '../../engine/index.ts'

/** How it was found what a finger does without one of its members. */
export function brokenWorking(
  design: Design,
  { words, outcome, loose, limp, taken_ratio, margin, figure }: BrokenMember,
): Working {
  const names = (parts: readonly number[]): string => parts.map((part) => design.parts[part].id).join(', ') || 'none'
  return {
    method: `${words} is taken out. Loose is what no longer hangs on the mount, limp what moves although the drive is held. It opens where at every posture the springs that are left give more than friction at rest, at its most, and drag take.`,
    formulas: ['\\frac{\\sum_j |\\omega_j| (\\rho_j |R_j| + T_j)}{\\sum_j c\\,\\omega_j^2} < 1'],
    inputs: [
      { name: 'postures looked at, open to closed', value: BROKEN_POSTURES, unit: '1' },
      ...(margin === undefined
        ? []
        : [{ name: 'its least margin', value: margin, unit: '1', ...(figure && { from: figure }) } as const]),
    ],
    steps: [
      inWords('loose', names(loose)),
      inWords('limp', names(limp)),
      taken_ratio === undefined
        ? inWords('of what the springs give, taken', 'no spring pushes what is left towards open everywhere')
        : { name: 'of what the springs give, friction and drag take at most', value: taken_ratio, unit: '1' },
      inWords('so the finger', outcome),
    ],
    source: 'derived for this project in docs/theory/breakage.md',
  }
}

function inWords(name: string, value: string): WorkingValue {
  return { name, value, unit: 'words' }
}
