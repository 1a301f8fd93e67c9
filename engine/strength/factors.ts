/** By how much a strength must exceed its stress. */
export interface Factors {
  /** On yielding. */
  readonly yield: number
  /** On breaking. */
  readonly ultimate: number
}

/**
 * 1.5 on yield and 2 on breaking: common practice without a published source for machined parts whose loads are known only roughly and
 * whose failure does not hurt at once. A finger whose failure can hurt asks for more.
 */
export const USUAL_FACTORS: Factors = { yield: 1.5, ultimate: 2 }
