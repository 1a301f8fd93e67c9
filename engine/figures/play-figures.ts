/** Margins of the toggles within the play of the pins, and at let-go. */
import { playBand } from '../forces/states.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import type { WorkingValue } from './evaluation.ts'
import { type FigureSheet, line } from './figure-sheet.ts'
import type { ReturnFound } from './return-found.ts'
import type { Survey } from './survey.ts'

/** Margins, rad, one a toggle. */
export function addPlay(sheet: FigureSheet, survey: Survey, found: ReturnFound): void {
  const { design, path } = survey
  const clearances = path.mechanism.joints.map((joint) =>
    line(`clearance at ${design.pins[joint.pin].id}`, joint.clearance_mm, 'mm', `pins.${design.pins[joint.pin].id}`),
  )
  design.toggles.forEach((toggle, index) => {
    addBand(sheet, survey, { index, inputs: clearances })
    const id = `letGo.toggle.${toggle.id}.deadCentreMargin`
    if (!sheet.asks(id)) return
    const { letGo } = found
    sheet.add(id, {
      value: letGo && toggleMargin(path.toggles[index], letGo.posture),
      why: 'no state of rest was found at let-go',
      inputs: clearances,
      steps: letGo ? [line('rounds of posture and forces', letGo.rounds, '1')] : [],
    })
  })
}

interface Banded {
  /** Of the toggle. */
  readonly index: number
  readonly inputs: readonly WorkingValue[]
}

function addBand(sheet: FigureSheet, { closed, design }: Survey, { index, inputs }: Banded): void {
  const [least, most] = ['least', 'most'].map((end) => `play.toggle.${design.toggles[index].id}.${end}`)
  if (!sheet.asks(least, most)) return
  const band = playBand(closed, index)
  const why = 'the play does not settle at the closed posture'
  sheet.add(least, { value: band?.least_rad, why, inputs })
  sheet.add(most, { value: band?.most_rad, why, inputs })
}
