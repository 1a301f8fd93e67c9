/** What the wearer has to give on the way to closed. */
import { type FigureSheet, line } from './figure-sheet.ts'
import { driveUnit } from './motion-figures.ts'
import type { Survey } from './survey.ts'

/** Largest effort to close (N·mm for a turn, N for a cable) and work to close (N·mm), at the most friction moving. */
export function addDriveFigures(sheet: FigureSheet, survey: Survey): void {
  if (sheet.asks('drive.effortMost')) addLargestEffort(sheet, survey)
  if (sheet.asks('drive.workToClose')) sheet.add('drive.workToClose', workToClose(survey))
}

function addLargestEffort(sheet: FigureSheet, survey: Survey): void {
  const { unloaded, cases, drive, design } = survey
  const unit = driveUnit(survey)
  const effortUnit = unit === 'rad' ? 'N·mm' : 'N'
  const runs = [
    { name: 'springs and weight alone', efforts: unloaded },
    ...cases
      .filter(({ loadCase }) => loadCase.acts === 'travel')
      .map(({ loadCase, efforts }) => ({ name: loadCase.id, efforts })),
  ]
  let top: { readonly name: string; readonly effort: number; readonly at: number } | undefined
  for (const { name, efforts } of runs) {
    for (let index = 0; index < efforts.length; index++) {
      const effort = efforts[index]?.close
      if (effort !== undefined && !(top && top.effort >= effort)) top = { name, effort, at: drive[index] }
    }
  }
  const most = design.drive.travel.effortMost
  sheet.add('drive.effortMost', {
    value: top?.effort,
    why: 'no equilibrium was found while closing',
    inputs: most === undefined ? [] : [line('what the wearer can give', most, effortUnit, 'drive.effortMost')],
    steps: top ? [line('largest with', top.name, 'words'), line('at drive', top.at, unit)] : [],
  })
}

function workToClose({ unloaded, drive }: Survey): Parameters<FigureSheet['add']>[1] {
  let work = 0
  for (let index = 1; index < drive.length; index++) {
    const before = unloaded[index - 1]?.close
    const after = unloaded[index]?.close
    if (before === undefined || after === undefined) return { why: 'no equilibrium was found at every posture while closing' }
    work += ((before + after) / 2) * (drive[index] - drive[index - 1])
  }
  return { value: work, inputs: [line('postures looked at', drive.length, '1')] }
}
