/** Whether the things that are to give way under too much load do so in the order that the document states. */
import type { Design, Member } from '../design/design.ts'
import { memberWords } from '../strength/breakage.ts'
import type { RankedStrength, StrengthList, Verdict } from './evaluation.ts'

/** A member of the stated order with its least margin of strength. */
export interface GivesWayStep {
  readonly member: Member
  readonly words: string
  /** Absent where no check of it has a margin. */
  readonly margin?: number
  /** The check, in words. */
  readonly says?: string
}

/** The stated order against the margins. */
export interface GivesWay {
  readonly verdict: Verdict
  readonly steps: readonly GivesWayStep[]
  /** Why it is short or undecided, in words. */
  readonly why?: string
}

/** @returns undefined where the document states no order */
export function givesWayOf(design: Design, strength: StrengthList): GivesWay | undefined {
  if (!design.givesWay) return undefined
  const steps = design.givesWay.map((member): GivesWayStep => {
    const weakest = weakestOf(design, member, strength)
    const words = memberWords(design, member)
    return { member, words, ...(weakest && { margin: weakest.margin, says: weakest.words }) }
  })
  return { ...judged(steps, strength), steps }
}

/** The check of a member with the least margin; undefined where none has a margin. */
export function weakestOf(design: Design, member: Member, { ranked }: StrengthList): RankedStrength | undefined {
  return ranked.find((check) => isOf(design, member, check))
}

/** Checks of a hole belong to its part, those of a pin to the pin alone. A dent at a stop breaks nothing in two. */
function isOf({ pins, parts, springs }: Design, { kind, index }: Member, { pin, part, stop, figure }: RankedStrength): boolean {
  if (stop !== undefined) return false
  if (kind === 'pin') return pin === pins[index].id && part === undefined
  if (kind === 'part') return part === parts[index].id
  return figure.startsWith(`strength.spring.${springs[index].id}.`)
}

function judged(steps: readonly GivesWayStep[], { ranked }: StrengthList): Pick<GivesWay, 'verdict' | 'why'> {
  const unknown = steps.find(({ margin }) => margin === undefined)
  if (unknown) return { verdict: 'undecided', why: `nothing is known of the strength of ${unknown.words}` }
  const late = steps.findIndex((step, index) => index > 0 && (step.margin ?? 0) < (steps[index - 1].margin ?? 0))
  if (late > 0) return { verdict: 'short', why: `${steps[late].words} gives way before ${steps[late - 1].words}` }
  const [first] = steps
  const before = first && ranked.find(({ margin, stop }) => stop === undefined && margin < (first.margin ?? 0))
  return before ? { verdict: 'short', why: `${before.words} comes before ${first.words}` } : { verdict: 'met' }
}
