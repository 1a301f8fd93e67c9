/** The engine's only door. Pure: no files, clock, screen, database or dice. */
export { yearsOf } from './design/closings.ts'
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
export { type PastStep, putBack } from './design/edit/put-back.ts'
export { readField, typedChange } from './design/edit/read-field.ts'
export { type Removal, removalOf } from './design/edit/removal.ts'
export { isThing, renamed } from './design/edit/renamed.ts'
export type { AdditionKind } from './design/edit/section-heads.ts'
export { applySplice, inverseSplice, type Splice, spliceBetween } from './design/edit/splice.ts'
export { type FigureName, type FigureScope, figureNames } from './design/figure-names.ts'
export type { Place } from './design/json-places.ts'
export { isMasked } from './design/masked-faces.ts'
export { type Mass, partMass } from './design/mass.ts'
export type { Checked, Problem } from './design/problem.ts'
export { readDesign } from './design/read-design.ts'
export { readQuantity } from './design/read-quantity.ts'
export type { Screw } from './design/screws/screw.ts'
export { sentence } from './design/sentence.ts'
export { axisUnit, type Shown, showFigure, shownFigure, type UnitSystem } from './design/show.ts'
export { evaluate } from './evaluate.ts'
export { forcesAt, postureAt } from './figures/at-posture.ts'
export { type Broken, type BrokenMember, brokenOf } from './figures/broken.ts'
export type * from './figures/evaluation.ts'
export type { GivesWay, GivesWayStep } from './figures/gives-way.ts'
export { governingFigures } from './figures/governing-figures.ts'
export {
  type FigureMove,
  type FindingMove,
  isMoved,
  type MovedValue,
  type WhatMoved,
  whatMoved,
} from './figures/what-moved.ts'
export { type BenchTest, type ComparedTest, compareBench } from './inspection/bench-comparison.ts'
export { type Capability, CONFIDENCE, capability, type Ratio } from './inspection/capability.ts'
export { type Consequence, consequences, type Disposition, type Outcome } from './inspection/consequence.ts'
export { adoptFriction, type FittedFriction, fitFriction } from './inspection/fit-friction.ts'
export { type GaugeStudy, gaugeStudy, type Study, shareOfTolerance } from './inspection/gauge-study.ts'
export type { Conformity, Found } from './inspection/guard-band.ts'
export { type Characteristic, inspectionPlan } from './inspection/inspection-plan.ts'
export { judgeMeasured, type MeasuredFinger, unmeasuredOf } from './inspection/judge-measured.ts'
export { type LifeAsked, type LifeStudy, lifeStudy, proofStudy, type Run, type ShownShare } from './inspection/life-study.ts'
export { type LotStudy, lotStudy } from './inspection/lot-study.ts'
export { foundOf, limitsFor, type Reading, readingConformity } from './inspection/measured-set.ts'
export { type MeasuredSpread, measuredSpread } from './inspection/measured-spread.ts'
export { type MeasuredPiece, type PairedLot, pairingLot, pairLot } from './inspection/pair-lot.ts'
export { type Piece, piecesOf } from './inspection/piece.ts'
export { type GaugedValue, recalibrated } from './inspection/recalibrated.ts'
export { piecesToPass, reliabilityShown } from './inspection/success-run.ts'
export { type GaugeKind, type Suggested, suggestedGauge } from './inspection/suggested-gauge.ts'
export { outlastShown, type WeibullFit, weibullFit } from './inspection/weibull.ts'
export { type Matter, weighPlan } from './inspection/weigh-plan.ts'
export { gaugeWorking } from './inspection/workings/gauge-working.ts'
export { shownWorking, weibullWorking } from './inspection/workings/life-working.ts'
export { lotWorking } from './inspection/workings/lot-working.ts'
export { guardWorking, yieldWorking } from './inspection/workings/set-working.ts'
export { type BreakEven, breakEven } from './making/break-even.ts'
export { canBeMade } from './making/can-be-made.ts'
export { type BatchCost, batchCost, type CostSource } from './making/cost.ts'
export type { CostInput, CostSort, CostStep, CostWorking } from './making/cost-working.ts'
export { costWorkings } from './making/cost-workings.ts'
export { type CountMove, type CountsMoved, countsMoved } from './making/counts-moved.ts'
export type { MakingDoubt } from './making/doubt.ts'
export {
  type DrawnHole,
  type DrawnPart,
  type DrawnPin,
  type DrawnSize,
  type Limits,
  readShopDesign,
  type ShopDesign,
} from './making/drawn-sizes.ts'
export { type Item, type PartsList, partsList } from './making/parts-list.ts'
export { unpriced } from './making/unpriced.ts'
export { limits } from './numbers/limits.ts'
export { nearestName } from './numbers/nearest.ts'
export type { QuantityKind } from './numbers/quantity.ts'
export type { Vector } from './numbers/vector.ts'
export { type Book, type BookAsKept, bookFor, type FieldEntry, type TestInBook } from './proving/book.ts'
export type { Evidence } from './proving/evidence.ts'
export { type InspectionInterval, inspectionInterval } from './proving/inspection-interval.ts'
export type { Overload } from './proving/overload.ts'
export { type Proof, proofOf } from './proving/proof.ts'
export { isTaken, type RiskRow, riskTable, type SeenInField, type ShareNotMet, stepOfShare } from './proving/risk-table.ts'
export { type StarterSet, starterRequirements, starterRisks } from './proving/starter-set.ts'
export type { TestsInBook } from './proving/tests-in-book.ts'
export { type TraceItem, traceOf, type WayShown } from './proving/trace.ts'
export { BROKEN_POSTURES } from './strength/breakage.ts'
export type { FittingSpring, WantedSpring } from './strength/fitting/wanted-spring.ts'
export type { Addition, Ask, Inputs } from './variation/additions/addition.ts'
export { additions } from './variation/additions/additions.ts'
export type { ClosedSamples } from './variation/closed/closed-samples.ts'
export { type ClosedSpread, closedSampler, closedSpreadOf } from './variation/closed/closed-spread.ts'
export type { NotStraight } from './variation/closed/straight-numbers.ts'
export { type HelpingChange, type HelpingChanges, helpingChanges } from './variation/helping-changes.ts'
export { type FigureChange, type Sensitivity, type SensitivityProgress, sensitivities } from './variation/sensitivities.ts'
export type { SensitivityInput } from './variation/sensitivity-input.ts'
export { momentsOf, quantile, valuesAt } from './variation/sources/law.ts'
export { readVariation } from './variation/sources/read-variation.ts'
export type { Law, SizeBeforeCoating, Source, SourceUnit, Variation } from './variation/sources/source.ts'
export type { SpreadChange, YieldGain } from './variation/spread/advice.ts'
export { designProblem } from './variation/spread/design-problem.ts'
export {
  type Advice,
  adviceFor,
  closedFor,
  type DesignSpread,
  type DesignSpreadAsked,
  type DesignSpreadProgress,
  designSpreadFrom,
  offersFor,
  type SurvivedFriction,
  spreadDesign,
} from './variation/spread/design-spread.ts'
export { type FigureSpread, quantileShares } from './variation/spread/figure-spread.ts'
export type { JudgedOffer } from './variation/spread/judged-offer.ts'
export { type Offer, type OfferedSize, offeredSizes, readOffer } from './variation/spread/offer.ts'
export type { PricePoint } from './variation/spread/price-curve.ts'
export { joinSamples, judgeSamples, type Samples } from './variation/spread/samples.ts'
export type { CountedShare } from './variation/spread/share-interval.ts'
export { planSpread, type Spread, type SpreadFigure, type SpreadPlan } from './variation/spread/spread.ts'
export type { SpreadProblem } from './variation/spread/spread-problem.ts'
export { targetVerdict, type Yield } from './variation/spread/yields.ts'
export { type FittingSprings, fittingSprings } from './variation/springs/fitting-springs.ts'
export type { Trial } from './variation/trials/trial.ts'
export { trials } from './variation/trials/trials.ts'
export { type Life, type LifeFinding, type Lived, lifeOf } from './variation/wear/life-of.ts'
export type * from './variation/wear/wear.ts'
export { wearOf } from './variation/wear/wear-of.ts'
export type { WearLevel } from './variation/wear/wear-rates.ts'
