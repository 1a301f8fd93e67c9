/** How the figures of a load case come about. */
import { circle, equilibrium, type Method, theory } from './working-method.ts'

/** Rows of the figures that every load case has. */
export const workingsOfLoadCases: readonly Method[] = [
  {
    head: 'loadCase.',
    tail: '.effortToClose',
    method:
      'Drive effort that just closes against the load at the closed posture, the value just before the stop. Most friction moving.',
    formulas: [equilibrium, circle],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.effortToHold',
    method:
      'Drive effort below which the load just opens the closed finger; no force at the stop. Least friction moving. Negative: it would have to be pulled open.',
    formulas: [equilibrium, '\\lambda_{hold} \\le \\lambda_0 \\le \\lambda_{close}', circle],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.effortFrictionless',
    method:
      'Drive effort that balances the load without friction, at the closed posture; drag that is declared at the pins still acts.',
    formulas: ['\\lambda_0 = -\\frac{v \\cdot Q}{v \\cdot p}'],
    source: 'virtual work, any text on mechanics, from memory',
  },
  {
    head: 'loadCase.',
    tail: '.holdsByItself',
    method:
      'With drive and keeper let go, the closed finger stays: what pushes closed rests on the stop, or friction at its least leaves no drag over that could open it. Judged with clearances taken up under the load.',
    formulas: ['\\lambda_{drag}(\\mu_{least}) \\le 0'],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.holdReserve',
    method:
      'Equal drag that could be taken from every pin before the closed finger no longer holds by itself; below zero, what it lacks. Friction at its least; where the load presses on the stop friction is left out. Clearances taken up under the load.',
    formulas: ['-\\lambda_{drag}(\\mu_{least})'],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.heldBy',
    method: 'The largest share of virtual work in a small opening motion.',
    formulas: ['\\sum \\text{shares} = 1'],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.share.*',
    method: 'Share of the virtual work of what has to be carried in a small opening motion. Least friction.',
    formulas: ['\\lambda P_p + P_Q = \\sum_j \\kappa_j |R_j| \\omega_j'],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.sustainingLoad',
    method:
      'Load at the keeper that just keeps the closed finger from opening, the drive let go, springs and weight on. Least friction moving; clearances taken up under the load.',
    formulas: [equilibrium, 'K = \\max(0, \\lambda)'],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.keeperRatio',
    method: 'Sustaining load over the sum of the forces of the load case.',
    formulas: ['K / F'],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.letGoUnderLoadEffort',
    method:
      'Drive effort in the opening sense that lets the finger go with the load still on, from the worst rest. Most friction at rest. 0 when it opens by itself.',
    formulas: ['\\lambda_{rest}(Q + E\\,p) = 0'],
    source: theory('return.md'),
  },
  {
    head: 'loadCase.',
    tail: '.letGoUnderLoadReserve',
    method:
      'Drag that is left over at every pin when the finger opens by itself with the load still on, from the worst rest, the drive let go; at zero or below it has to be opened. Most friction at rest.',
    formulas: ['\\lambda_{rest}(Q)'],
    source: theory('return.md'),
  },
  {
    head: 'loadCase.',
    tail: '.releaseEffort',
    method:
      'Effort at the release port that lets the finger go with the load still on, from the worst rest. Most friction at rest. 0 when it opens by itself.',
    formulas: ['\\lambda_{rest}(Q + E\\,p) = 0'],
    source: theory('return.md'),
  },
  {
    head: 'loadCase.',
    tail: '.slipAngle',
    method:
      'First dead-centre margin, going outward from the jam, at which the keeper would need more than it is allowed; the stop is taken away.',
    formulas: ['K(\\delta) = K_{allowed}'],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.holdWindow',
    method: 'Slip angle less jam angle: the margins at which the finger both holds with its keeper and lets go.',
    formulas: ['\\delta_{slip} - \\delta_{jam}'],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.loadedMargin',
    method: 'Dead-centre margin with clearances taken up and links stretched by the forces that hold the load.',
    formulas: ['x_b = x_a - \\tfrac{c}{2}\\, \\hat R^{n}_b', '\\Delta L = T / k'],
    source: theory('clearance.md'),
  },
  {
    head: 'loadCase.',
    tail: '.pinForceMost',
    method: 'Largest force in any pin under this case, just held or just closing, at any posture it acts in.',
    formulas: [equilibrium],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.stopForceLeast',
    method: 'Least force of the stop at rest over all states of friction in pins and stop. Most friction at rest.',
    formulas: [equilibrium, 'p = n + m\\,t,\\; |m| \\le \\mu_{stop}'],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.stopForceMost',
    method: 'Largest force of the stop at rest over all states of friction in pins and stop. Most friction at rest.',
    formulas: [equilibrium, 'p = n + m\\,t,\\; |m| \\le \\mu_{stop}'],
    source: theory('forces.md'),
  },
  {
    head: 'loadCase.',
    tail: '.elasticMarginChange',
    method: 'Change of the dead-centre margin by the stretch of the links under the load.',
    formulas: ['\\Delta L = T / k'],
    source: theory('clearance.md'),
  },
]
