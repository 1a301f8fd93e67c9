/** How the margins against a crack from use, against a push from the side and of parts in bending come about. */
import type { Method } from './working-method.ts'

const MARGIN = 'm = \\frac{S}{n\\,\\sigma} - 1'
const GOODMAN = '\\frac{\\sigma_a}{S_N} + \\frac{\\sigma_m}{S_{ut}} = \\frac{1}{n}'
const LIFE = 'S_N = S_3 \\left(\\frac{N}{10^3}\\right)^{\\log(S_f / S_3) / \\log(N_f / 10^3)}'
const TOGETHER = 'A = \\left(\\sum_i s_i A_i^{k}\\right)^{1/k},\\; k = \\frac{\\log(N_f / 10^3)}{\\log(S_3 / S_f)}'
const MARIN = 'S_f = k_a k_b k_c k_e\\, S'
const BORNE =
  'Goodman, Basquin and the factors of Marin: Shigley, Mechanical Engineering Design, ch. 6, from memory; read in worked examples of Bhandari, Design of Machine Elements, ch. 5; sum of harm: Miner, J. Appl. Mech. 12 (1945), from memory'

/** Rows of fatigue, side load and bending. */
export const workingsOfUse: readonly Method[] = [
  {
    head: 'strength.pin.',
    tail: '.fatigue',
    method:
      'The fibre of the pin that its swings bring nearest to a crack, each between the open finger without the load and all states of one load case; closings are added up over the load cases by their shares (Palmgren and Miner), and without shares each is under the worst. Fretting is not counted.',
    formulas: ['\\sigma = \\frac{32\\,M}{\\pi d^3}', MARIN, LIFE, TOGETHER, GOODMAN],
    source: `swing: derived for this project in docs/theory/fatigue.md; ${BORNE}`,
  },
  {
    head: 'strength.pin.',
    tail: '.lugFatigue',
    method:
      'The side of a hole, pulled by its pin from nothing to its peak and back, the closings of the stated life added up over the load cases by their shares (Palmgren and Miner); of the parts the one with the least margin. Fretting is not counted.',
    formulas: [
      '\\sigma = K_f \\frac{F}{(w - d)\\,t}',
      'K_f = 1 + \\frac{K_t - 1}{1 + \\sqrt{a / r}}',
      MARIN,
      LIFE,
      TOGETHER,
      GOODMAN,
    ],
    source: `notch: Pilkey, Peterson's Stress Concentration Factors, and Neuber, from memory; ${BORNE}`,
  },
  {
    head: 'strength.pin.',
    tail: '.sideLoad',
    method:
      'The couple of the push about the hinge, held between the slices of its two parts: the pin bent and sheared, the edges of its holes pressed. Coupling links carry none of it.',
    formulas: ['C = \\left|\\sum F\\,(p - c)\\right|', 'q(z) = \\frac{C\\,(z - z_0)}{\\sum\\int (z - z_0)^2 dz}', MARGIN],
    source: 'derived for this project in docs/theory/side-load.md',
  },
  {
    head: 'strength.part.',
    tail: '.sideLoad',
    method:
      'The part bent about its weak axis, twisted and sheared by the push, at its weakest section on the outline; its slices stand side by side as single bars.',
    formulas: [
      '\\sigma = \\frac{6\\,M\\,b}{h \\sum b^3}',
      '\\tau = \\frac{T\\,s}{\\sum l\\,s^3 / (3 + 1.8\\,s/l)} + \\frac{1.5\\,F}{h \\sum b}',
      '\\sqrt{\\sigma^2 + 3\\tau^2}',
      MARGIN,
    ],
    source: 'derived for this project in docs/theory/side-load.md; twist of a rectangle: Shigley, eq. 3-40, from memory',
  },
  {
    head: 'strength.part.',
    tail: '.bending',
    method:
      'The part pulled and bent by what its pins and pads give it, at its weakest section on the outline. Where the rest of its balance may act on either side of a cut the worse is charged.',
    formulas: [
      '\\sigma = \\frac{|N|}{b\\,h} + \\frac{6\\,|M|}{b\\,h^2}',
      '\\tau = \\frac{1.5\\,|V|}{b\\,h}',
      '\\sqrt{\\sigma^2 + 3\\tau^2}',
      MARGIN,
    ],
    source: 'derived for this project in docs/theory/strength.md',
  },
]
