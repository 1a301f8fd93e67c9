/** How the figures of letting go, and of what the wearer gives on the way, come about. */
import { circle, equilibrium, type Method, theory } from './working-method.ts'

/** Rows of return, jam, play, drive and release figures. */
export const workingsOfReturn: readonly Method[] = [
  {
    head: 'closed.toggle.',
    tail: '.jamAngle',
    method:
      'Dead-centre margin at which the return reserve from the worst rest is zero, looked for along the path with the stop taken away. At most friction at rest.',
    formulas: [
      '\\lambda_{rest}(\\delta) = 0',
      '\\text{plain toggle: } \\delta = \\arcsin\\frac{\\rho_B + \\rho_C}{a} + \\arcsin\\frac{\\rho_A + \\rho_B}{L}',
      circle,
    ],
    source: theory('return.md'),
  },
  {
    head: 'closed.toggle.',
    tail: '.runJamAngle',
    method:
      'Dead-centre margin at which the return reserve moving is zero: every joint’s friction opposes the motion under way. At most friction moving.',
    formulas: [
      '\\lambda_{moving}(\\delta) = 0',
      '\\text{plain toggle: } \\delta = \\arcsin\\frac{\\rho_B + \\rho_C}{a} + \\arcsin\\frac{\\rho_B + s\\,\\rho_A}{L}',
      circle,
    ],
    source: theory('return.md'),
  },
  {
    head: 'play.toggle.',
    tail: '',
    method: 'Margin with every clearance taken up to one side by a couple on the margin itself, the finger at its stop.',
    formulas: ['x_b = x_a - \\tfrac{c}{2}\\, \\hat R'],
    source: theory('clearance.md'),
  },
  {
    head: 'letGo.toggle.',
    tail: '.deadCentreMargin',
    method: 'Margin with the clearances taken up by the springs alone, about to open, from the worst rest.',
    formulas: ['x_b = x_a - \\tfrac{c}{2}\\, \\hat R^{n}_b'],
    source: theory('clearance.md'),
  },
  {
    head: 'return.reserveFromRest',
    tail: '',
    method:
      'Equal drag torque at every pin that the springs can just overcome from the worst state of rest; the least over the way back and at let-go. Most friction at rest, weight in its worst attitude. Below zero only the sign counts: the search ends with the first state that holds, and worse ones may exist.',
    formulas: [equilibrium, '\\lambda_{rest} = \\min_{\\kappa_j = \\pm\\rho_j} \\lambda', circle],
    source: theory('return.md'),
  },
  {
    head: 'return.reserveMoving',
    tail: '',
    method:
      'Equal drag torque at every pin that the springs can just overcome while moving; the least over the way back. Most friction moving, weight in its worst attitude.',
    formulas: [equilibrium, '\\kappa_j = \\mathrm{sign}(\\omega_j)\\,\\rho_j', circle],
    source: theory('return.md'),
  },
  {
    head: 'return.letsGo',
    tail: '',
    method: 'It lets go when the return reserve from rest is positive at every posture of the way back.',
    formulas: ['\\lambda_{rest} > 0 \\text{ at every posture}'],
    source: theory('return.md'),
  },
  {
    head: 'return.margin',
    tail: '',
    method: 'Drag per pin that could be overcome over the drag that is declared; the least over the way back.',
    formulas: ['\\frac{\\lambda_{rest} + T}{T}'],
    source: theory('return.md'),
  },
  {
    head: 'return.efficiency',
    tail: '',
    method: 'Reserve moving over reserve without friction; the least over the way back where the latter is positive.',
    formulas: ['\\eta = \\lambda_{moving} / \\lambda_0'],
    source: theory('return.md'),
  },
  {
    head: 'return.worstAt',
    tail: '',
    method: 'Drive coordinate at the posture with the least return reserve from rest.',
    formulas: [],
    source: theory('return.md'),
  },
  {
    head: 'drive.effortMost',
    tail: '',
    method:
      'Largest effort to close at any posture: springs, weight and drag alone, and with each load case that acts all the way. Most friction moving.',
    formulas: [equilibrium, '\\kappa_j = \\mathrm{sign}(\\omega_j)\\,\\rho_j', circle],
    source: theory('forces.md'),
  },
  {
    head: 'drive.workToClose',
    tail: '',
    method: 'Effort to close without load, summed over the drive’s travel by the trapezium rule over the postures.',
    formulas: ['W = \\int \\lambda\\, \\mathrm{d}D'],
    source: 'virtual work; trapezium rule, any text on numerical methods, from memory',
  },
  {
    head: 'release.effort',
    tail: '',
    method:
      'Effort at the release port that opens the closed finger from the worst rest, springs helping; most friction at rest.',
    formulas: ['\\lambda_{rest}(Q + E\\,p) = 0'],
    source: theory('return.md'),
  },
]
