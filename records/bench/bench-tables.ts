/** The tables of the bench book as types. */
import type { Generated } from 'kysely'

interface Signed {
  readonly who: string
  readonly made: string
}

interface Numbered {
  readonly id: Generated<number>
}

interface Corrects {
  readonly corrects: number | null
  readonly reason: string | null
}

/** The bench book as the migrations make it. */
export interface BenchTables {
  readonly plans: {
    readonly design: number
    readonly revision: number
    readonly characteristics: string
    readonly engine: string
    readonly made: string
  }
  readonly gauges: Numbered &
    Signed &
    Corrects & {
      readonly name: string
      readonly resolution_mm: number
      readonly uncertainty_mm: number
      readonly calibrated: string
    }
  readonly lots: Numbered &
    Signed & { readonly design: number; readonly revision: number; readonly name: string; readonly note: string | null }
  readonly articles: Numbered &
    Signed & { readonly design: number; readonly lot: number; readonly serial: string; readonly piece: string | null }
  readonly imports: Numbered & Signed & { readonly lot: number; readonly file: string; readonly digest: string }
  readonly withdrawals: Numbered & Signed & { readonly import: number; readonly reason: string }
  readonly readings: Numbered & Signed & Corrects & ReadingColumns
  readonly certificates: Numbered &
    Signed &
    Corrects & {
      readonly lot: number
      readonly coating: string
      /** JSON: a list of thicknesses. */
      readonly coupons_mm: string
      readonly cure_degC: number | null
      readonly cure_min: number | null
      readonly issued: string
      readonly note: string | null
    }
  readonly bench_tests: Numbered & Signed & Corrects & TestColumns
  readonly decisions: Numbered &
    Signed &
    Corrects & {
      readonly article: number
      readonly characteristic: string | null
      readonly decision: 'use as is' | 'rework' | 'scrap'
      readonly why: string
      readonly consequence: string
    }
  readonly field_log: Numbered & Signed & Corrects & FieldColumns
  readonly sign_offs: Numbered & Signed & { readonly lot: number; readonly article: number | null; readonly statement: string }
}

/** What stands after corrections, as the views say it. */
export interface BenchViews {
  /** Of a reading that was corrected the first correction that was not withdrawn. */
  readonly reading_corrections: { readonly reading: number; readonly correction: number }
  /** Of each entry of a gauge the calibration that it is of, by its first entry, and the entry that stands for it. */
  readonly calibrations: { readonly id: number; readonly first: number; readonly stands: number }
}

interface ReadingColumns {
  readonly article: number
  /** Its place in the design, as the frozen plan names it. */
  readonly characteristic: string
  readonly visit: 'before coating' | 'finished'
  readonly found: string | null
  readonly x: string | null
  readonly y: string | null
  readonly uncertainty: string | null
  readonly least: number | null
  readonly most: number | null
  readonly at_x_mm: number | null
  readonly at_y_mm: number | null
  readonly uncertainty_mm: number | null
  readonly gauge: number | null
  readonly import: number | null
  readonly measured_by: string | null
  readonly measured_on: string | null
}

interface TestColumns {
  readonly article: number
  readonly test: 'load to hold' | 'return after load' | 'cycles' | 'pinch force'
  readonly value: number
  readonly unit: 'N' | 'cycles'
  readonly outcome: 'did' | 'did not' | 'measured'
  readonly tested: string
  readonly rig: string
  readonly note: string | null
  readonly photo: string | null
  readonly photo_type: string | null
  readonly photo_bytes: Buffer | null
  readonly figure: string | null
  readonly uncertainty: number | null
}

interface FieldColumns {
  readonly article: number
  readonly sort: 'return' | 'complaint'
  readonly came: string
  readonly told: string
  readonly found: string | null
  readonly harm: 'nobody hurt' | 'somebody hurt' | 'not known'
  /** JSON: a list of ids of risks. */
  readonly risks: string
  readonly contact: string
  readonly contacts_in: string
}
