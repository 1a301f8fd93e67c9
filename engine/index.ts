/** The engine's only door. Pure: no files, clock, screen, database or dice. */
export type * from './design/design.ts'
export { designSchema } from './design/document.ts'
export type { Change, JsonValue } from './design/edit/change.ts'
export { changeDocument } from './design/edit/change-document.ts'
export { changedValues, type ValueChange } from './design/edit/changed-values.ts'
export { type Dependent, dependents } from './design/edit/dependents.ts'
export { type DocumentDifference, documentDifferences, type TypedValue } from './design/edit/document-differences.ts'
export { editSheet, type Row, type Section, type Sheet } from './design/edit/edit-sheet.ts'
export type { Field, FieldReading } from './design/edit/field.ts'
export { type Bound, type Handle, type Lever, leversOf, pulled } from './design/edit/levers.ts'
export { readField, typedChange } from './design/edit/read-field.ts'
export { type Removal, removalOf } from './design/edit/removal.ts'
export { isThing, renamed } from './design/edit/renamed.ts'
export type { AdditionKind } from './design/edit/section-heads.ts'
export { applySplice, inverseSplice, type Splice, spliceBetween } from './design/edit/splice.ts'
export { type FigureName, type FigureScope, figureNames } from './design/figure-names.ts'
export type { Place } from './design/json-places.ts'
export { type Mass, partMass } from './design/mass.ts'
export type { Checked, Problem } from './design/problem.ts'
export { readDesign } from './design/read-design.ts'
export { readQuantity } from './design/read-quantity.ts'
export { sentence } from './design/sentence.ts'
export { axisUnit, type Shown, showFigure, shownFigure, type UnitSystem } from './design/show.ts'
export { evaluate } from './evaluate.ts'
export { forcesAt, postureAt } from './figures/at-posture.ts'
export type * from './figures/evaluation.ts'
export { governingFigures } from './figures/governing-figures.ts'
export {
  type FigureMove,
  type FindingMove,
  isMoved,
  type MovedValue,
  type WhatMoved,
  whatMoved,
} from './figures/what-moved.ts'
export { limits } from './numbers/limits.ts'
export { nearestName } from './numbers/nearest.ts'
export type { QuantityKind } from './numbers/quantity.ts'
export type { Vector } from './numbers/vector.ts'
export type { Addition, Ask, Inputs } from './variation/additions/addition.ts'
export { additions } from './variation/additions/additions.ts'
export type { Trial } from './variation/trials/trial.ts'
export { trials } from './variation/trials/trials.ts'
