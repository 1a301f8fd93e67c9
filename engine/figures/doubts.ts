/**
 * Figures that hang on a stiffness nobody has stated: where the stretch of the links moves the margin by more than a tenth of its
 * distance from the jam, what is judged under load is undecided.
 */
import type { Design } from '../design/design.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import type { CaseFound } from './case-figures.ts'
import { unstatedLinks } from './elastic-change.ts'
import type { Figure } from './evaluation.ts'
import type { Doubts } from './findings.ts'
import type { Survey } from './survey.ts'

const JUDGED_UNDER_LOAD = ['holdsByItself', 'sustainingLoad', 'keeperRatio', 'loadedMargin', 'letGoUnderLoadEffort', 'heldBy']

/**
 * Further figures that may put a figure in doubt, so that a finding on it needs them as well: those of a load case in a design with a link
 * whose stiffness nobody has stated.
 */
export function decidesDoubtOf(design: Design, figure: string): readonly string[] {
  const [head, id, tail] = figure.split('.')
  const isSure = design.parts.every(({ role, stiffness_N_mm }) => role !== 'link' || stiffness_N_mm !== undefined)
  if (isSure || head !== 'loadCase' || !JUDGED_UNDER_LOAD.includes(tail)) return []
  return [
    `loadCase.${id}.elasticMarginChange`,
    ...design.toggles.slice(0, 1).map((toggle) => `closed.toggle.${toggle.id}.jamAngle`),
  ]
}

/** A tenth of the distance to the jam may go to elasticity without anybody asking for a stiffness. */
const TOLERABLE_SHARE = 0.1

/** @returns reasons by figure name, for figures that must not decide anything; empty when every stiffness that matters is known */
export function doubtsOf(survey: Survey, figures: readonly Figure[], cases: readonly CaseFound[]): Doubts {
  const doubts = new Map<string, string>()
  const links = unstatedLinks(survey)
  const toggle = survey.path.toggles[0]
  if (links.length === 0 || !toggle) return doubts
  const byId = new Map(figures.map((figure) => [figure.id, figure]))
  const jam = byId.get(`closed.toggle.${survey.design.toggles[0].id}.jamAngle`)?.value
  const margin = toggleMargin(toggle, survey.closed.node.posture)
  const distance = Math.abs(margin - (typeof jam === 'number' ? jam : 0))
  for (const { loadCase } of cases) {
    const change = byId.get(`loadCase.${loadCase.id}.elasticMarginChange`)
    if (typeof change?.value === 'number' && Math.abs(change.value) <= TOLERABLE_SHARE * distance) continue
    const how =
      typeof change?.value === 'number'
        ? 'could move the margin by more than a tenth of its distance from the jam'
        : 'is not known'
    const why = `the stretch of ${links.join(' and ')} ${how}: state its stiffness, or its material and thickness`
    for (const tail of JUDGED_UNDER_LOAD) doubts.set(`loadCase.${loadCase.id}.${tail}`, why)
  }
  return doubts
}
