/** How the margins of screws come about. */
import type { Method } from './working-method.ts'

const PRELOAD = 'F = \\frac{T}{K d},\\; F_{most} = (1 + s)\\,F'
const SOURCE = 'Shigley, Mechanical Engineering Design, chapter 8, from memory; docs/theory/screws.md'

/** Rows of screws. */
export const workingsOfScrews: readonly Method[] = [
  {
    head: 'strength.screw.',
    tail: '.proof',
    method:
      'Largest preload of its torque and all of the pull of the load, over the stress area, against three quarters of the proof stress.',
    formulas: [PRELOAD, '\\sigma = \\frac{F_{most} + P}{A_t}', 'm = \\frac{S_p}{n\\,\\sigma} - 1'],
    source: `ISO 898-1 and ISO 3506-1, from memory; ${SOURCE}`,
  },
  {
    head: 'strength.screw.',
    tail: '.stripping',
    method:
      'Largest preload and all of the pull of the load, over the cylinder that shears in the thread of the part or of the screw.',
    formulas: [
      PRELOAD,
      'A_i = \\frac{\\pi D}{p}\\left(\\frac{p}{2} + \\frac{D - E_n}{\\sqrt 3}\\right)',
      '\\tau = \\frac{F_{most} + P}{A L}',
      'm = \\frac{S_s}{n\\,\\tau} - 1',
    ],
    source: `FED-STD-H28/2, from memory; ${SOURCE}`,
  },
  {
    head: 'strength.screw.',
    tail: '.separation',
    method:
      'Least preload of its torque against the largest pull of the load, which is spread over the screws of the mount as over a rigid plate.',
    formulas: ['F_{least} = (1 - s)\\,F', 'P = \\frac{N}{n_s} + \\frac{M s}{\\sum s^2}', 'm = \\frac{F_{least}}{n\\,P} - 1'],
    source: SOURCE,
  },
]
