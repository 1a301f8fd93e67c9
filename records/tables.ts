/** The tables of the newest schema as types. The migrations make them. */
import type { Generated } from 'kysely'
import type { BenchTables, BenchViews } from './bench/bench-tables.ts'

interface Designs {
  readonly id: Generated<number>
  readonly name: string
  readonly made: string
}

interface Revisions {
  readonly design: number
  readonly number: number
  readonly text: string
  readonly engine: string
  readonly figures: string
  readonly findings: string
  readonly problems: string
  readonly who: string
  readonly why: string
  readonly saved: string
}

interface Drafts {
  readonly design: number
  readonly version: number
  readonly base: string
  readonly text: string
  readonly position: number
  readonly given: string | null
  readonly saved: string
}

interface DraftSteps {
  readonly design: number
  readonly number: number
  /** JSON, because half a character may stand in it, which UTF-8 cannot hold. */
  readonly splice: string
  readonly said: string
}

export interface Tables extends BenchTables, BenchViews {
  readonly designs: Designs
  readonly revisions: Revisions
  readonly drafts: Drafts
  readonly draft_steps: DraftSteps
}
