/** How the figures of Motion come about. */
import type { Method } from './working-method.ts'

/** Rows of open, closed and motion figures, in the order of the catalogue. */
export const workingsOfMotion: readonly Method[] = [
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
    head: 'motion.clearance',
    tail: '',
    method:
      'Least distance between the outlines of two parts that share a slice across the width, at every posture of the travel; below zero the depth of their deepest overlap. Play at the pins is not taken off.',
    formulas: [],
    source: 'nearest corner and edge, docs/theory/motion.md',
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
]
