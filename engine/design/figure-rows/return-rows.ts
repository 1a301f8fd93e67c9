import type { FigureRow } from './figure-row.ts'

/** Figures of the jam, the play and the way back. */
export const returnRows: readonly FigureRow[] = [
  ['closed.toggle.<toggle>.jamAngle', 'rad', 'Jam angle of toggle <toggle>, from rest'],
  ['closed.toggle.<toggle>.runJamAngle', 'rad', 'Jam angle of toggle <toggle>, moving'],
  ['play.toggle.<toggle>.least', 'rad', 'Dead-centre margin of toggle <toggle> within its play, least'],
  ['play.toggle.<toggle>.most', 'rad', 'Dead-centre margin of toggle <toggle> within its play, most'],
  ['letGo.toggle.<toggle>.deadCentreMargin', 'rad', 'Dead-centre margin of toggle <toggle> at let-go'],
  ['return.reserveFromRest', 'N·mm per pin', 'Return reserve from rest, least over the way'],
  ['return.reserveMoving', 'N·mm per pin', 'Return reserve moving, least over the way'],
  ['return.letsGo', 'yes or no', 'Lets go'],
  ['return.margin', '1', 'Return margin'],
  ['return.efficiency', '1', 'Return efficiency, least over the way'],
  ['return.worstAt', 'drive', 'Drive where the return is weakest'],
  ['drive.effortMost', 'effort', 'Largest effort on the way to closed'],
  ['drive.workToClose', 'N·mm', 'Work to close'],
  ['release.effort', 'release', 'Release effort past dead centre'],
]
