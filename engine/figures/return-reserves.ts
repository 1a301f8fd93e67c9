/** The return reserve over the way back, its margin over declared drag, and what friction leaves of the springs. */
import { type FigureSheet, line } from './figure-sheet.ts'
import { driveUnit } from './motion-figures.ts'
import { leastOf, type ReturnFound } from './return-found.ts'
import { frictionLines, NO_REST, springLines } from './return-lines.ts'
import type { Survey } from './survey.ts'

const RESERVES = [
  'return.reserveFromRest',
  'return.reserveMoving',
  'return.letsGo',
  'return.worstAt',
  'return.margin',
  'return.efficiency',
]

/** Reserves, N·mm a pin; where the least of them stands, as the drive; margin and efficiency as ratios. */
export function addReserves(sheet: FigureSheet, survey: Survey, found: ReturnFound): void {
  if (!sheet.asks(...RESERVES)) return
  const { reserves, drive } = survey
  const unit = driveUnit(survey)
  const { fromRest: rest, moving } = found.least
  const place = (index: number): number => drive[Math.min(index, drive.length - 1)]
  const base = [...springLines(survey), line('postures looked at', reserves.length, '1')]
  sheet.add('return.reserveFromRest', {
    value: rest?.value,
    why: NO_REST,
    inputs: [...frictionLines(survey, 'rest'), ...base],
    steps: rest ? [line('least at drive', place(rest.index), unit)] : [],
  })
  sheet.add('return.reserveMoving', {
    value: moving?.value,
    why: NO_REST,
    inputs: [...frictionLines(survey, 'moving'), ...base],
    steps: moving ? [line('least at drive', place(moving.index), unit)] : [],
  })
  sheet.add('return.letsGo', {
    value: rest && rest.value > 0,
    why: NO_REST,
    inputs: rest ? [line('least reserve from rest', rest.value, 'N·mm per pin')] : [],
  })
  sheet.add('return.worstAt', {
    value: rest && place(rest.index),
    why: NO_REST,
    inputs: rest ? [line('least reserve from rest', rest.value, 'N·mm per pin')] : [],
  })
  addMarginAndEfficiency(sheet, survey, rest?.value)
}

function addMarginAndEfficiency(sheet: FigureSheet, { reserves, design }: Survey, restReserve: number | undefined): void {
  const drag = Math.max(0, ...design.pins.map((pin) => pin.drag_Nmm))
  sheet.add('return.margin', {
    value: drag > 0 && restReserve !== undefined ? (restReserve + drag) / drag : undefined,
    why: drag > 0 ? NO_REST : 'no drag is declared at any pin, so there is nothing to compare the reserve with',
    inputs: [line('largest declared drag', drag, 'N·mm')],
  })
  const efficiency = leastOf(
    reserves
      .filter((reserve) => !reserve || reserve.free > 0)
      .map((reserve) => (reserve?.moving === undefined ? undefined : reserve.moving / reserve.free)),
  )
  sheet.add('return.efficiency', {
    value: efficiency?.value,
    why: 'nowhere on the way do the springs open the finger, even without friction',
  })
}
