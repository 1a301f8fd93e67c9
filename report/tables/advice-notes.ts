import type { DesignSpread } from '../../engine/index.ts'
import { figureName } from '../sentences/figure-name.ts'
import { type OpenedLine, plainLine } from './opened-line.ts'

/** What advice cannot mend, and where there is none: nothing where a change was judged for everything. */
export function adviceNotes(told: DesignSpread): readonly OpenedLine[] {
  const { advice, spread, design } = told
  if (!advice) return []
  const short = shortInTheMiddle(told)
  const isOffCentre = spread.window !== undefined && !advice.stop && design.stops.length > 0
  return [
    ...(short.length > 0
      ? [`With every size in its middle it falls short already: ${short.join('; ')}. No tolerance mends that; change the design.`]
      : []),
    ...(isOffCentre
      ? ['No place of the stop within a millimetre of its own brings the finger into the middle between jam and slip.']
      : []),
  ].map(plainLine)
}

/** Requirements that the set in the middle of everything does not meet, in words. */
function shortInTheMiddle({ spread, requirements, figures }: DesignSpread): readonly string[] {
  const { verdicts } = spread.plan.steps.middle
  return requirements.flatMap(({ figure: id }, index) => {
    if (verdicts[index] !== 'short') return []
    return [figureName({ id, title: figures.find((one) => one.id === id)?.title ?? id })]
  })
}
