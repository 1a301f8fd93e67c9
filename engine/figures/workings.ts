/**
 * How each figure comes about: the idea, the formula, the source. One row a figure of the catalogue; names with an id in
 * them are matched by their ends.
 */
import type { Working, WorkingValue } from './evaluation.ts'

interface Method {
  /** Ends of the figure's name, e.g. `.deadCentreMargin`, with its head, e.g. `closed.toggle.`. */
  readonly head: string
  readonly tail: string
  readonly method: string
  readonly formulas: readonly string[]
  readonly source: string
}

const equilibrium = 'C^{T} R + \\lambda\\, p + Q - \\sum_j \\kappa_j |R_j|\\, d_j = 0'
const circle = '\\rho = r \\sin(\\arctan \\mu)'
const theory = (page: string): string =>
  `derived for this project in docs/theory/${page}; friction circle: any text on theory of machines, from memory`

const rows: readonly Method[] = [
  {
    head: 'motion.mobility',
    tail: '',
    method: 'Freedoms by count (Kutzbach): three for each moving part, less two for each pin joint and one for each slot.',
    formulas: ['f = 3\\,(n - 1) - 2\\,p - s'],
    source: 'Kutzbach criterion, any text on mechanisms, from memory',
  },
  {
    head: 'motion.closes',
    tail: '',
    method:
      'The finger closes when its travel ends at a stop or at the end of the drive’s range, and not at dead centre or at a gap.',
    formulas: [],
    source: 'path by arc length, docs/theory/motion.md',
  },
  {
    head: 'motion.coll',
    tail: '',
    method:
      'Outlines of parts that share a slice across the width are laid over each other at every posture of the travel; how far the boundary of one reaches inside the other. Undecided while a part has no outline or no place across the width.',
    formulas: [],
    source: 'polygon overlap, docs/theory/motion.md',
  },
  {
    head: 'open.drive',
    tail: '',
    method: 'Drive coordinate at the open end of the travel.',
    formulas: [],
    source: 'path by arc length, docs/theory/motion.md',
  },
  {
    head: 'closed.drive',
    tail: '',
    method: 'Drive coordinate at the posture where the stop’s gap is zero; never a stored angle.',
    formulas: ['\\mathrm{gap}(q) = 0,\\quad c(q) = 0'],
    source: 'path by arc length, docs/theory/motion.md',
  },
  {
    head: 'open.joint.',
    tail: '.flexion',
    method: 'Clockwise turn of the outer part against the inner, 0 when their frames are parallel.',
    formulas: ['\\varphi = \\theta_{inner} - \\theta_{outer}'],
    source: 'definition',
  },
  {
    head: 'closed.joint.',
    tail: '.flexion',
    method: 'Clockwise turn of the outer part against the inner, 0 when their frames are parallel.',
    formulas: ['\\varphi = \\theta_{inner} - \\theta_{outer}'],
    source: 'definition',
  },
  {
    head: 'closed.tip.',
    tail: '',
    method: 'Place of the watched pad in the mount frame at the closed posture.',
    formulas: ['x = x_{part} + R(\\theta)\\, x_{pad}'],
    source: 'definition',
  },
  {
    head: 'motion.transmissionAngle.',
    tail: '.least',
    method: 'Angle between the link and the arm that it drives, folded to 0 to 90°; the least over the travel.',
    formulas: ['\\cos\\mu = \\frac{|u \\cdot w|}{|u|\\,|w|}'],
    source: 'definition, any text on mechanisms, from memory',
  },
  {
    head: 'closed.toggle.',
    tail: '.deadCentreMargin',
    method: 'Angle by which A-B-C is short of straight: the direction of B to C on its part less that of A to B on its part.',
    formulas: ['\\delta = \\varepsilon\\,(\\angle(C-B) - \\angle(B-A))'],
    source: 'definition, docs/theory/motion.md',
  },
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

/** Rows by the figures that asked for them: a memory, not a state. */
const known = new Map<string, Method>()

/** The working of a figure by its name. Every name of the catalogue has one (tested). */
export function workingOf(id: string, inputs: readonly WorkingValue[], steps: readonly WorkingValue[]): Working {
  const row =
    known.get(id) ??
    rows.find(
      ({ head, tail }) => id.startsWith(head) && (tail.endsWith('*') ? id.includes(tail.slice(0, -1)) : id.endsWith(tail)),
    )
  if (!row) throw new Error(`figure ${id} has no working`)
  known.set(id, row)
  return { method: row.method, formulas: row.formulas, inputs, steps, source: row.source }
}
