/** How the margins of springs come about. */
import type { Method } from './working-method.ts'

const MARGIN = 'm = \\frac{S}{n\\,\\sigma} - 1'
const SHIGLEY = 'Shigley, Mechanical Engineering Design, chapter 10, from memory; docs/theory/springs.md'

/** Rows of springs that state their wire. */
export const workingsOfSprings: readonly Method[] = [
  {
    head: 'strength.spring.',
    tail: '.set',
    method:
      'Largest stress at the inner side of the coil on the travel, with the correction of its curvature, against the share of the tensile strength that leaves no set.',
    formulas: [
      '\\sigma = K_i \\frac{32 M}{\\pi d^3},\\; K_i = \\frac{4C^2 - C - 1}{4C(C - 1)}',
      '\\tau = K_B \\frac{8 F D}{\\pi d^3},\\; K_B = \\frac{4C + 2}{4C - 3}',
      'S_{ut} = A / d^m',
      MARGIN,
    ],
    source: SHIGLEY,
  },
  {
    head: 'strength.spring.',
    tail: '.fatigue',
    method:
      'Least and largest stress on the travel by Goodman, for the closings of its use, or without end where the design does not state its use. The stress is that amplitude without mean which does as much harm.',
    formulas: [
      'S_e = \\frac{S_a}{1 - S_m / S_u}',
      '\\sigma = \\sigma_a + \\sigma_m \\frac{S_e}{S_u}',
      'm = \\frac{S_e}{n\\,\\sigma} - 1',
    ],
    source: `${SHIGLEY}; endless: Zimmerli 1957, from memory`,
  },
  {
    head: 'strength.spring.',
    tail: '.room',
    method:
      'Turns or way that the coil has until it binds on what it sits on, or its coils touch, over those that the travel uses.',
    formulas: [
      'n_{most} = N_b \\left(\\frac{D}{d + d_{arbour}} - 1\\right)',
      'y_{most} = L_0 - L_{solid}',
      'm = \\frac{y_{most}}{n\\,y} - 1',
    ],
    source: SHIGLEY,
  },
  {
    head: 'strength.spring.',
    tail: '.buckling',
    method:
      'Way that the spring can be pressed until it bows out, its ends kept as the design says, over the way that the travel uses.',
    formulas: [
      'y_{cr} = L_0 C_1 \\left(1 - \\sqrt{1 - C_2 / \\lambda^2}\\right),\\; \\lambda = \\alpha L_0 / D',
      'C_1 = \\frac{E}{2(E - G)},\\; C_2 = \\frac{2\\pi^2 (E - G)}{2G + E}',
      'm = \\frac{y_{cr}}{n\\,y} - 1',
    ],
    source: `J. A. Haringx 1948, from memory; ${SHIGLEY}`,
  },
  {
    head: 'strength.spring.',
    tail: '.hook',
    method:
      'Bending where the loop of the hook begins and twisting in the bend from the body, each against a set and against breaking in use; the least counts.',
    formulas: [
      '\\sigma_A = F \\left(K_A \\frac{16 D}{\\pi d^3} + \\frac{4}{\\pi d^2}\\right),\\; C_1 = 2 r_1 / d',
      '\\tau_B = K_B \\frac{8 F D}{\\pi d^3},\\; K_B = \\frac{4 C_2 - 1}{4 C_2 - 4},\\; C_2 = 2 r_2 / d',
      MARGIN,
    ],
    source: SHIGLEY,
  },
]
