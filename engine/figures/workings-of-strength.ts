/** How the margins of strength come about. */
import type { Method } from './working-method.ts'
import { workingsOfScrews } from './workings-of-screws.ts'
import { workingsOfSprings } from './workings-of-springs.ts'

const MARGIN = 'm = \\frac{S}{n\\,\\sigma} - 1'
const DERIVED = 'derived for this project in docs/theory/strength.md'

/** Rows of what gives first. */
export const workingsOfStrength: readonly Method[] = [
  {
    head: 'strength.least',
    tail: '',
    method: 'The least of all margins of strength, over every load case at every posture that it acts in. Zero is just enough.',
    formulas: [MARGIN, 'm_{least} = \\min_i m_i'],
    source: DERIVED,
  },
  {
    head: 'strength.givesFirst',
    tail: '',
    method: 'The check with the least margin of strength.',
    formulas: ['m_{least} = \\min_i m_i'],
    source: DERIVED,
  },
  {
    head: 'strength.pin.',
    tail: '.shear',
    method: 'Largest shear force in the pin between its plates, spread over its section.',
    formulas: ['\\tau = \\frac{4\\,V}{\\pi d^2}', MARGIN],
    source: `${DERIVED}; yield in shear by the energy of distortion (von Mises), any text on machine design, from memory`,
  },
  {
    head: 'strength.pin.',
    tail: '.bending',
    method: 'Largest bending moment of the pin, each part pressing it evenly over the slices in which it lies across the finger.',
    formulas: ['V(z) = \\int q\\,dz,\\; M(z) = \\int V\\,dz', '\\sigma = \\frac{32\\,M}{\\pi d^3}', MARGIN],
    source: DERIVED,
  },
  {
    head: 'strength.pin.',
    tail: '.bearing',
    method: 'Pressure of the pin in the holes of its parts; the part with the least margin counts.',
    formulas: ['\\sigma = \\frac{F}{d\\,t}', MARGIN],
    source: 'the common checks of a bolted joint, e.g. Shigley, Mechanical Engineering Design, section 8-12, from memory',
  },
  {
    head: 'strength.pin.',
    tail: '.tearOut',
    method:
      'Two planes from the sides of the hole to the edge that the pin presses towards, measured on the outline in the direction of the force.',
    formulas: ['\\tau = \\frac{F}{2\\,t\\,(e - d/2)}', MARGIN],
    source: 'the common checks of a bolted joint, e.g. Shigley, Mechanical Engineering Design, section 8-12, from memory',
  },
  {
    head: 'strength.pin.',
    tail: '.section',
    method: 'All of the force in the section through the hole across it, measured on the outline from edge to edge.',
    formulas: ['\\sigma = \\frac{F}{(w - d)\\,t}', MARGIN],
    source: 'the common checks of a bolted joint, e.g. Shigley, Mechanical Engineering Design, section 8-12, from memory',
  },
  {
    head: 'strength.link.',
    tail: '.tension',
    method: 'Pull along the line of the pins in the slimmest section between them, measured on the outline.',
    formulas: ['\\sigma = \\frac{T}{b\\,t}', MARGIN],
    source: DERIVED,
  },
  {
    head: 'strength.link.',
    tail: '.buckling',
    method:
      'Pressure along the line of the pins against the critical force of the slimmest section, ends pinned: Euler where the bar is slender, Johnson where it yields first.',
    formulas: [
      'P_E = \\frac{\\pi^2 E A}{\\lambda^2},\\; P_J = A\\left(S_y - \\frac{1}{E}\\left(\\frac{S_y \\lambda}{2\\pi}\\right)^2\\right)',
      'm = \\frac{P}{n\\,F} - 1',
    ],
    source: 'Shigley, Mechanical Engineering Design, sections 4-12 and 4-13, from memory',
  },
  {
    head: 'strength.stop.',
    tail: '.contact',
    method:
      'Line contact of the round on its edge, rubbed as hard as the most friction allows; the largest shear, below the surface or at it, may not make the softer body yield.',
    formulas: [
      'p_0 = \\sqrt{\\frac{F E^*}{\\pi\\,l\\,r}},\\; \\tau = (0.300 + 0.435\\,\\mu^2 + 0.704\\,\\mu^4)\\,p_0\\;(\\mu \\le 0.376),\\; \\tau = \\mu\\,p_0\\;(\\mu > 0.376)',
      'm = \\frac{S_y/2}{n\\,\\tau} - 1',
    ],
    source:
      'line contact after Hertz, e.g. Johnson, Contact Mechanics, sections 4.2 and 7.1, from memory; what friction adds: fitted to the sum over the contact by this project; yield in shear after Tresca',
  },
  ...workingsOfSprings,
  ...workingsOfScrews,
]
