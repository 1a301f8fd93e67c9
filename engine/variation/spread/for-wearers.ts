/** Wearers are judged by what they give: the figure that each of them has to come up to is the effort of the finger. */
import type { Design, Requirement } from '../../design/design.ts'
import type { Variation } from '../sources/source.ts'

const EFFORT = 'drive.effortMost'

/**
 * The same variation with another requirement on the effort: no more than what the wearer gives, in the place of what is required for the
 * wearer as stated. A design that requires nothing of the effort has it required.
 */
export function forWearers(variation: Variation): Variation {
  return {
    ...variation,
    design: byWhatIsGiven(variation.design),
    setOf: (values, made) => {
      const set = variation.setOf(values, made)
      return set.value ? { value: byWhatIsGiven(set.value) } : set
    },
  }
}

function byWhatIsGiven(design: Design): Design {
  const given = design.drive.travel.effortMost
  if (given === undefined) return design
  const others = design.requirements.filter(({ figure, bound }) => figure !== EFFORT || bound.kind !== 'atMost')
  const unit = design.drive.kind === 'turn' ? 'N·mm' : 'N'
  const ownEffort: Requirement = {
    id: EFFORT,
    figure: EFFORT,
    bound: { kind: 'atMost', value: given, unit, typed: `${given} ${unit}` },
    reason: 'A wearer who gives less cannot close the finger.',
    source: 'variation.wearers',
  }
  return { ...design, requirements: [...others, ownEffort] }
}
