import type { FigureRow } from './figure-row.ts'

/** Figures that every load case has. */
export const loadCaseRows: readonly FigureRow[] = [
  ['loadCase.<loadCase>.effortToClose', 'effort', 'Effort to close, <loadCase>'],
  ['loadCase.<loadCase>.effortToHold', 'effort', 'Effort to hold, <loadCase>'],
  ['loadCase.<loadCase>.effortFrictionless', 'effort', 'Effort without friction, <loadCase>'],
  ['loadCase.<loadCase>.holdsByItself', 'yes or no', 'Holds by itself, <loadCase>'],
  ['loadCase.<loadCase>.heldBy', 'words', 'Held by, <loadCase>'],
  ['loadCase.<loadCase>.share.stop', '1', 'Share carried by the stop, <loadCase>'],
  ['loadCase.<loadCase>.share.toggle', '1', 'Share carried by the toggle, <loadCase>'],
  ['loadCase.<loadCase>.share.friction', '1', 'Share carried by friction, <loadCase>'],
  ['loadCase.<loadCase>.share.spring', '1', 'Share carried by springs, <loadCase>'],
  ['loadCase.<loadCase>.share.weight', '1', 'Share carried by weight, <loadCase>'],
  ['loadCase.<loadCase>.share.wearer', '1', 'Share carried by the wearer, <loadCase>'],
  ['loadCase.<loadCase>.share.keeper', '1', 'Share carried by the keeper, <loadCase>'],
  ['loadCase.<loadCase>.sustainingLoad', 'keeper', 'Sustaining load on the keeper, <loadCase>'],
  ['loadCase.<loadCase>.keeperRatio', '1', 'Keeper ratio, <loadCase>'],
  ['loadCase.<loadCase>.letGoUnderLoadEffort', 'effort', 'Effort to let go under load, <loadCase>'],
  ['loadCase.<loadCase>.releaseEffort', 'release', 'Release effort under load, <loadCase>'],
  ['loadCase.<loadCase>.slipAngle', 'rad', 'Slip angle, <loadCase>'],
  ['loadCase.<loadCase>.holdWindow', 'rad', 'Hold window, <loadCase>'],
  ['loadCase.<loadCase>.loadedMargin', 'rad', 'Dead-centre margin under load, <loadCase>'],
  ['loadCase.<loadCase>.pinForceMost', 'N', 'Largest pin force, <loadCase>'],
  ['loadCase.<loadCase>.stopForceLeast', 'N', 'Least stop force, <loadCase>'],
  ['loadCase.<loadCase>.stopForceMost', 'N', 'Largest stop force, <loadCase>'],
  ['loadCase.<loadCase>.elasticMarginChange', 'rad', 'Elastic change of the dead-centre margin, <loadCase>'],
]
