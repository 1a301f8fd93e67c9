/**
 * How far the stretch of the links moves the dead-centre margin under a load, and whether that is known well enough.
 *
 * Where a link's stiffness is not stated, the slimmest link that one would make is taken: a strip of its thickness, one pin
 * diameter wide, E t d / L. If even that moves the margin by less than a tenth of its distance from the jam, nothing is at
 * stake; if not, the change is not known and what depends on it is undecided.
 */
import { type Loaded, statedStiffness } from '../forces/states.ts'
import { postureUnder } from '../forces/take-up.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { type TwoPinLink, twoPinLinks } from '../motion/two-pin-link.ts'
import { type FigureEntry, line } from './figure-sheet.ts'
import type { Survey } from './survey.ts'

/** Margin with links stretched less margin with rigid links under the same forces, rad, of the first toggle; or why it is not known. */
export function elasticChange(survey: Survey, loaded: Loaded | undefined): FigureEntry {
  const { path, design } = survey
  const toggle = path.toggles[0]
  if (!toggle) return { why: 'the design watches no toggle' }
  if (!loaded) return { why: 'the play does not settle under this load' }
  const links = stretchingLinks(survey)
  const unknown = links.filter(
    (link) => design.parts[link.part].stiffness_N_mm === undefined && slimmest(survey, link) === undefined,
  )
  if (unknown.length > 0) {
    const names = unknown.map((link) => design.parts[link.part].id).join(', ')
    return { why: `neither stiffness nor material and thickness of ${names} is stated` }
  }
  const stated = statedStiffness(path)
  const stiffnessOf = (part: number): number | undefined => {
    const link = links.find((candidate) => candidate.part === part)
    return stated(part) ?? (link && slimmest(survey, link))
  }
  const marginWith = (stiffness: (part: number) => number | undefined): number | undefined => {
    const asked = { bench: path.bench, held: survey.closed.held, clearance: true, stiffnessOf: stiffness }
    const posture = postureUnder(asked, loaded.state.balance, loaded.posture)
    return posture && toggleMargin(toggle, posture)
  }
  const soft = marginWith(stiffnessOf)
  const rigid = marginWith(() => undefined)
  if (soft === undefined || rigid === undefined) return { why: 'the play does not settle under this load' }
  return {
    value: soft - rigid,
    inputs: links.map((link) => stiffnessLine(survey, link)),
  }
}

function stiffnessLine(survey: Survey, link: TwoPinLink): ReturnType<typeof line> {
  const part = survey.design.parts[link.part]
  const stated = part.stiffness_N_mm
  const value = `${(stated ?? slimmest(survey, link) ?? 0).toPrecision(4)} N/mm${stated === undefined ? ', slimmest strip of its material' : ''}`
  return line(`stiffness of ${part.id}`, value, 'words', `parts.${part.id}.stiffness`)
}

/** Stiffness of a strip one pin diameter wide, N/mm. */
function slimmest({ design, path }: Survey, link: TwoPinLink): number | undefined {
  const { material, thickness_mm } = design.parts[link.part]
  if (!material || thickness_mm === undefined) return undefined
  const radius = path.mechanism.joints[link.ends[0].joint].radius_mm
  return (material.modulus_MPa * thickness_mm * 2 * radius) / link.length_mm
}

/** Links, and whatever other part between two pins has a stated stiffness. Phalanges count as rigid until somebody states theirs. */
function stretchingLinks({ design, path }: Survey): TwoPinLink[] {
  return twoPinLinks(path.mechanism).filter(({ part }) => {
    const { role, stiffness_N_mm } = design.parts[part]
    return role === 'link' || stiffness_N_mm !== undefined
  })
}

/** Links whose stiffness is not stated. */
export function unstatedLinks(survey: Survey): string[] {
  const { design } = survey
  return stretchingLinks(survey)
    .filter((link) => design.parts[link.part].stiffness_N_mm === undefined)
    .map((link) => design.parts[link.part].id)
}
