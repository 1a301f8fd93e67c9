/** The engine's only door. Pure: no files, clock, screen, database or dice. */
export type * from './design/design.ts'
export type { Checked, Problem } from './design/problem.ts'
export type * from './figures/evaluation.ts'
export type { Vector } from './numbers/vector.ts'
