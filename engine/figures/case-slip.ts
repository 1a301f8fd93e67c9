/** How far outward the keeper still holds, and the window between there and the jam. */
import type { LoadCase } from '../design/design.ts'
import { findSlip, type Slip } from '../forces/slip.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import type { AddToCase } from './case-sheet.ts'
import { line } from './figure-sheet.ts'
import type { ReturnFound } from './return-found.ts'
import type { Survey } from './survey.ts'

const SLIP_WORDS: Record<Exclude<Slip['kind'], 'at'>, string> = {
  noWindow: 'already at the jam the keeper needs more than it is allowed: there is no window',
  never: 'the keeper never needs more than it is allowed',
  unknown: 'no equilibrium was found on the way outward',
}

/** Slip angle and hold window, rad. @param found jam of the finger, where the way outward begins */
export function addSlip(at: AddToCase, survey: Survey, loadCase: LoadCase, { jam }: ReturnFound): Slip | undefined {
  const { path } = survey
  const noKeeper = 'this case has no keeper, so nothing is allowed that could be exceeded'
  const noToggle = 'the design watches no toggle'
  if (!loadCase.keeper || path.toggles.length === 0 || jam.kind === 'everywhere' || jam.kind === 'unknown') {
    const why = !loadCase.keeper ? noKeeper : path.toggles.length === 0 ? noToggle : 'there is no jam angle to go outward from'
    at('slipAngle', { why })
    at('holdWindow', { why })
    return undefined
  }
  const from = jam.kind === 'never' ? path.beyond[path.beyond.length - 1] : jam.node
  const slip = findSlip(survey.bench, path, loadCase, from)
  const margin = slip.kind === 'at' ? toggleMargin(path.toggles[0], slip.node.posture) : undefined
  const why = slip.kind === 'at' ? '' : SLIP_WORDS[slip.kind]
  const allowed = line('allowed on the keeper', loadCase.keeper.allowed, loadCase.keeper.port.kind === 'force' ? 'N' : 'N·mm')
  const name = line('margin of toggle', survey.design.toggles[0].id, 'words')
  at('slipAngle', { value: margin, why, ...(slip.kind === 'never' && { beyond: 'above any' as const }), inputs: [allowed, name] })
  const jamMargin = jam.kind === 'at' ? toggleMargin(path.toggles[0], jam.node.posture) : undefined
  const window = slip.kind === 'noWindow' ? 0 : margin !== undefined && jamMargin !== undefined ? margin - jamMargin : undefined
  at('holdWindow', { value: window, why: why || 'without a jam the window has one side only', inputs: [allowed, name] })
  return slip
}
