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

/** The verdict on one load case: short or open where a requirement on one of its figures, or on strength, is. */
export function loadVerdict({ evaluation }: Pick<KnownOf, 'evaluation'>, loadCase: Design['loadCases'][number]): boolean {
  const own = evaluation.findings.filter(({ requirement: { figure } }) => {
    return figure.startsWith(`loadCase.${loadCase.id}.`) || figure.startsWith('strength.') || figure === 'return.letsGo'
  })
  return own.every(({ verdict }) => verdict === 'met')
}
