import type { DesignSpread } from '../../engine/index.ts'
import { type OpenedLine, plainLine } from './opened-line.ts'

/**
 * What was asked for and is not reached, because the run goes on or was stopped: how many sets the shares are those of, and which parts are not
 * told. Nothing once all is told.
 */
export function unreachedLines(told: DesignSpread): readonly OpenedLine[] {
  const { asked, spread } = told
  const counted = spread.samples.to
  const sets =
    counted < asked.samples
      ? [`Counted so far: ${counted} of the ${asked.samples} sets asked for. Shares and intervals are those of ${counted} sets.`]
      : []
  const parts = partsLeft(told)
  return [...sets, ...(parts.length > 0 ? [`Not reached yet: ${parts.join(', ')}.`] : [])].map(plainLine)
}

function partsLeft({ asked, offers, closed, advice }: DesignSpread): readonly string[] {
  const { closed: closedAsked = 0 } = asked
  const lookedAt = closed && 'samples' in closed ? closed.samples : 0
  const isCut = lookedAt > 0 && lookedAt < closedAsked
  return [
    ...((asked.offers ?? []).length > 0 && !offers ? ['what the shop offers'] : []),
    ...(closedAsked > 0 && !closed ? ['sets in their closed posture alone'] : []),
    ...(isCut ? [`${closedAsked - lookedAt} of the ${closedAsked} sets in their closed posture alone`] : []),
    ...(asked.advice && !advice ? ['what to change'] : []),
  ]
}
