import type { FigureRow } from './figure-row.ts'

/** Figures of how the finger moves and stands. */
export const motionRows: readonly FigureRow[] = [
  ['motion.mobility', '1', 'Mobility'],
  ['motion.closes', 'yes or no', 'Closes'],
  ['motion.collides', 'yes or no', 'Parts run into each other'],
  ['motion.collisionDepth', 'mm', 'Deepest overlap of two parts'],
  ['motion.clearance', 'mm', 'Least distance between parts'],
  ['open.drive', 'drive', 'Drive, open'],
  ['closed.drive', 'drive', 'Drive, closed'],
  ['open.joint.<pin>.flexion', 'rad', 'Flexion at <pin>, open'],
  ['closed.joint.<pin>.flexion', 'rad', 'Flexion at <pin>, closed'],
  ['closed.tip.x', 'mm', 'Tip, x, closed'],
  ['closed.tip.y', 'mm', 'Tip, y, closed'],
  ['motion.transmissionAngle.<link>.least', 'rad', 'Least transmission angle of <link>'],
  ['closed.toggle.<toggle>.deadCentreMargin', 'rad', 'Dead-centre margin of toggle <toggle>, closed'],
]
