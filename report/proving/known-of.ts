import type { Design, DesignSpread, Lived, Proof } from '../../engine/index.ts'
import type { Told } from '../tables/told.ts'

/** What a document is made from: the evaluation, what was counted and worked through, and what a door knows of the design. */
export interface KnownOf {
  readonly evaluation: Told
  readonly proof: Proof
  /** Absent when no sets were counted. */
  readonly spread?: DesignSpread
  readonly lived?: Lived
  /** `heron, revision 3`, or the file that it was read from. */
  readonly revision: string
  /** Name and version of the program. */
  readonly engine: string
  /** As it was given; a document has none of its own, so that the same input gives the same bytes. */
  readonly date?: string
}

/** What stands on every page of a document. */
export interface DocumentHead {
  readonly title: string
  readonly design: string
  readonly foot: string
}

/** @param title of the document */
export function headOf(title: string, { evaluation, revision, engine, date }: KnownOf): DocumentHead {
  const foot = [revision, engine, ...(date === undefined ? [] : [date])].join(' · ')
  return { title: `${title}: ${evaluation.design.title}`, design: evaluation.design.title, foot }
}

/** What has to be asked before any load is released: that the finger lets go, and that it bears its loads. */
const ASKED_OF_ALL = ['return.letsGo', 'strength.least']

/**
 * Whether a load may stand on a card: letting go and strength are asked for and met, and so is everything that is asked of the load itself.
 * What nobody asked for is not known to be met.
 */
export function isReleased({ evaluation }: Pick<KnownOf, 'evaluation'>, loadCase: Design['loadCases'][number]): boolean {
  const isMet = (of: (figure: string) => boolean) =>
    evaluation.findings.filter(({ requirement }) => of(requirement.figure)).every(({ verdict }) => verdict === 'met')
  const asked = new Set(evaluation.findings.map(({ requirement }) => requirement.figure))
  return (
    ASKED_OF_ALL.every((figure) => asked.has(figure)) &&
    isMet((figure) => figure.startsWith(`loadCase.${loadCase.id}.`)) &&
    isMet((figure) => figure.startsWith('strength.') || figure.startsWith('return.'))
  )
}
