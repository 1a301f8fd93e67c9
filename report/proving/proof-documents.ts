/** The documents that say whether a design can be stood behind, for every door that makes one of them. */
import type { TypesetJob } from '../typeset/typeset-job.ts'
import { careSheetJob } from './care-sheet-job.ts'
import { checkedJob } from './checked-job.ts'
import type { KnownOf } from './known-of.ts'
import { limitsCardJob } from './limits-card-job.ts'
import { reportJob } from './report-job.ts'

/** A document, for whom it is, and what is worked through for it beside the evaluation. */
export interface ProofDocument {
  readonly title: string
  /** What is in it and who reads it. */
  readonly says: string
  readonly job: (known: KnownOf) => TypesetJob
  /** Whether counted sets go into it. */
  readonly sets: boolean
  /** Whether the life of the finger, as it wears, goes into it. */
  readonly life: boolean
}

/** By the names that they are asked for by. */
export const proofDocuments = {
  report: {
    title: 'Report',
    says: 'what every question answers, figures, spread, what is asked and what shows it, risks, tests, limits of the model, sources',
    job: reportJob,
    sets: true,
    life: true,
  },
  care: {
    title: 'Fitting and care',
    says: 'fitting and care, two pages for the prosthetist',
    job: careSheetJob,
    sets: true,
    life: true,
  },
  card: {
    title: 'Limits card',
    says: 'what the finger carries and what it is never for, one page for the wearer',
    job: limitsCardJob,
    sets: true,
    life: false,
  },
  checked: {
    title: 'How this program was checked',
    says: 'how this program was checked: the published values that its tests meet, which were read and which recalled, two pages',
    job: checkedJob,
    sets: false,
    life: false,
  },
} as const satisfies Readonly<Record<string, ProofDocument>>

/** Name of a document. */
export type ProofDocumentName = keyof typeof proofDocuments

/** Templates of these documents, which are all that a page may have typeset. */
export const proofTemplates = ['proof-report', 'care-sheet', 'limits-card', 'checked'] as const
