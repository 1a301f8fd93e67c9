/** The report's only door: evaluation in; sentences, tables, drawings and documents out. Pure. */

export { type BrokenRow, brokenDocument, brokenGround, brokenHeads, brokenRows, brokenSentence } from './breakage/broken-rows.ts'
export { brokenWorking } from './breakage/broken-working.ts'
export {
  type BenchColumn,
  benchColumns,
  columnWords,
  guessColumns,
  guessDecimal,
  type NamedColumns,
} from './checking/bench-columns.ts'
export type { BenchRow, GaugeUncertainty, ReadAgainst } from './checking/bench-row.ts'
export { type BenchTable, type ReadBenchTable, readBenchTable } from './checking/bench-table.ts'
export { type CameAlong, cameAlong } from './checking/brought-words.ts'
export { type CheckedSet, checkAsks, checkSentence } from './checking/check-sentence.ts'
export { type OutcomeRow, outcomeRows } from './checking/consequence-rows.ts'
export { balloonFile, drawBalloons } from './checking/draw-balloons.ts'
export { drawRun, drawSteps } from './checking/draw-run.ts'
export type { TypedFields } from './checking/entries/field-reader.ts'
export { type Correcting, readCorrection } from './checking/entries/read-correction.ts'
export { type DecisionAsked, type DecisionEntry, readDecisionEntry, readSignOff } from './checking/entries/read-decision.ts'
export {
  type CertificateEntry,
  type CertificateField,
  type GaugeEntry,
  type GaugeField,
  readCertificateEntry,
  readGaugeEntry,
} from './checking/entries/read-entry.ts'
export {
  readTestEntry,
  type TestAsked,
  type TestEntry,
  type TestField,
  type TestKind,
  type TestOutcome,
  testKinds,
  testOutcomes,
} from './checking/entries/read-test.ts'
export { readWithdrawal, type WithdrawalEntry } from './checking/entries/read-withdrawal.ts'
export { typedCertificate, typedGauge, typedTest } from './checking/entries/typed-entry.ts'
export { farOutside, farOutsideRows } from './checking/far-outside.ts'
export { type FirstArticle, type FirstArticleAsked, type FirstArticleRow, firstArticle } from './checking/first-article.ts'
export { firstArticleFile } from './checking/first-article-file.ts'
export {
  calibrationSaid,
  type History,
  type HistoryLine,
  type HistoryReading,
  type HistoryRow,
  type HistorySort,
  historyLines,
  historyRows,
} from './checking/history.ts'
export { decisionWords, type KeptPapers, paperLines, standingDecisions } from './checking/kept-words.ts'
export { type LotRow, lotRows, type StudiedLot, studiedLots } from './checking/lot-rows.ts'
export { type MeasuredWith, measuredWith } from './checking/measured-with.ts'
export { type MeasuredFigureRow, measuredFigureRows, measuredYieldSentence } from './checking/measured-yield.ts'
export { measuredPieces, type PairRow, pairingSize, pairRows, pairSentence } from './checking/pair-rows.ts'
export { type PlanAdvice, planAdvice } from './checking/plan-advice.ts'
export {
  conformityAnswer,
  conformityText,
  figureUnitOf,
  foundText,
  type PlanRow,
  planRows,
  planSentence,
  readingRow,
  sizeText,
} from './checking/plan-rows.ts'
export { readBenchTests } from './checking/read-bench-tests.ts'
export { type ReadReadings, type ReadSet, readReadings } from './checking/read-readings.ts'
export { type ReadAs, readAs, readAsLines, readSets, type SaidOfTable } from './checking/read-sets.ts'
export { type NamedStudy, readStudy, readTolerance } from './checking/read-study.ts'
export { readingsFile, type TypedFound } from './checking/readings-file.ts'
export { type SerialSheet, serialSheet } from './checking/serial-sheet.ts'
export { isStanding, type KeptCoupons, type KeptFound, standingFound } from './checking/standing-found.ts'
export { type StudyRow, studyRows, studySentence } from './checking/study-rows.ts'
export { fileRows, type TableRows, tableRows } from './checking/table-rows.ts'
export { fittedLines, type TestedRow, testedRows } from './checking/tested-rows.ts'
export {
  figuredTests,
  leastReached,
  measuredTests,
  riggedFigures,
  type SerialTest,
  testRuns,
  unnamedTests,
} from './checking/testing/kept-tests.ts'
export { lifeLines, shownSentence } from './checking/testing/life-lines.ts'
export { readForce, readLifeAsked } from './checking/testing/read-asked.ts'
export { isRunsTable, readRuns } from './checking/testing/read-runs.ts'
export { cautionedFile } from './drawing/cautioned-file.ts'
export { type ComparedFinger, type ComparedFingers, type ComparedOptions, drawCompared } from './drawing/draw-compared.ts'
export { drawFinger, type FingerFileOptions } from './drawing/draw-finger.ts'
export { drawMarked, type MarkedPicture } from './drawing/draw-marked.ts'
export { drawPosture, type FingerDrawing, type PosturePicture, type SheetOptions } from './drawing/draw-posture.ts'
export { drawProposed, type ProposedPicture } from './drawing/draw-proposed.ts'
export { drawingStyle } from './drawing/drawing-style.ts'
export { fileText } from './drawing/file-text.ts'
export { layoutCompared } from './drawing/layout-compared.ts'
export { type FingerSheet, layoutSheet } from './drawing/layout-finger.ts'
export { type StandingPlaces, standingPlaces } from './drawing/standing-places.ts'
export { type Shape, svgText } from './drawing/svg.ts'
export { fromSheet, inMount, intoPart, onSheet, type View } from './drawing/view.ts'
export { type Drawings, type DrawingsAsked, drawingSheets, drawingsJob, usualDrawings } from './drawings/drawing-sheets.ts'
export { type PaperName, paperNames } from './drawings/paper.ts'
export { type Sheet, sheetShape } from './drawings/sheet-file.ts'
export { type Arrow, type Drag, type Grip, type GripRow, type StepSize, steps } from './grips/grip.ts'
export { type GripPicture, gripsOf } from './grips/grips-of.ts'
export { costMovedSentence } from './making/cost-moved-words.ts'
export { costTable, USUAL_BATCHES } from './making/cost-rows.ts'
export { type WrittenCostWorking, writtenCostWorking } from './making/cost-working-rows.ts'
export { type CountedCost, countedCost, countedCostRow, countedCostSentence } from './making/counted-cost.ts'
export { countsSentence } from './making/counts-words.ts'
export { type DoubtRow, doubtRows, doubtText, nothingDoubted } from './making/doubt-rows.ts'
export { type ItemRow, itemRows, massText } from './making/item-rows.ts'
export { makeAsks, makeSentence, setCostWords } from './making/make-sentence.ts'
export { packName } from './making/pack-name.ts'
export { partsFile } from './making/parts-file.ts'
export { type ShopFile, type ShopFiles, type ShopFilesStep, shopFiles } from './making/shop-files.ts'
export { drawAgainstFriction } from './plots/draw-against-friction.ts'
export { drawFigureSets } from './plots/draw-figure-sets.ts'
export { drawPlot, type Plot } from './plots/draw-plot.ts'
export { drawHoldWindow, holdWindowFile } from './plots/hold-window.ts'
export { type PlotGroup, plotGroups } from './plots/plot-groups.ts'
export { axisRange, driveAt, driveMarks, travelEnd } from './plots/travel-axis.ts'
export { drawTravelScale, readTravel, type TravelScale } from './plots/travel-scale.ts'
export { type FieldRow, fieldRows, noRisk } from './proving/field-rows.ts'
export type { KnownOf } from './proving/known-of.ts'
export { localRules } from './proving/model-limits.ts'
export { type OrientationFact, orientation } from './proving/orientation.ts'
export { type ProofDocument, type ProofDocumentName, proofDocuments, proofTemplates } from './proving/proof-documents.ts'
export { proveAsks, proveSentence, proveWords } from './proving/prove-sentence.ts'
export { type RiskTextRow, riskRows, scaleLines } from './proving/risk-rows.ts'
export { starterWords } from './proving/starter-words.ts'
export { type TraceRow, traceRows, traceSays } from './proving/trace-rows.ts'
export { problemsAsked } from './questions/problems-asked.ts'
export { type QuestionName, questionOf } from './questions/question-of.ts'
export { type Question, questionNamed, questions } from './questions/questions.ts'
export { caution } from './sentences/caution.ts'
export { linesApart } from './sentences/lines-apart.ts'
export { movedSentence, moveWords, shownApart } from './sentences/moved-sentence.ts'
export { spreadAsks, spreadSentence, spreadWords } from './sentences/spread-sentence.ts'
export { verdictSentence } from './sentences/verdict-sentence.ts'
export { type SpringRow, springDocument, springHeads, springRows, springSentence } from './springs/spring-rows.ts'
export { adviceNotes } from './tables/advice-notes.ts'
export { type AdviceRow, adviceRows, drawnText, frictionLines, offerLines, priceLines } from './tables/advice-rows.ts'
export { againstFrictionLines } from './tables/against-friction-lines.ts'
export { closedLines } from './tables/closed-lines.ts'
export { heldLines } from './tables/held-lines.ts'
export {
  type HelpingRow,
  helpingDocument,
  helpingGround,
  helpingHeads,
  helpingRows,
  helpingSentence,
} from './tables/helping-rows.ts'
export {
  type KeptFigureRow,
  type KeptFindingRow,
  type KeptReader,
  keptFigureRows,
  keptFindingRows,
} from './tables/kept-rows.ts'
export { type LoadCell, type LoadRow, loadRows } from './tables/load-rows.ts'
export { drawMark, type Mark, marks } from './tables/marks.ts'
export type { OpenedLine } from './tables/opened-line.ts'
export {
  type Answer,
  findingsOf,
  governingFinding,
  overallVerdict,
} from './tables/overall-verdict.ts'
export { type OverlapPlace, type OverlapRow, overlapRows } from './tables/overlap-rows.ts'
export {
  type FigureEntry,
  type FindingEntry,
  type ResultDocument,
  refusedDocument,
  resultDocument,
} from './tables/result-document.ts'
export { type FigureRow, type FindingRow, figureRows, findingRows, neededWords } from './tables/rows.ts'
export { rulerLines } from './tables/ruler-lines.ts'
export { type SensitivityCell, type SensitivityRow, sensitivityRows } from './tables/sensitivity-rows.ts'
export { sizeNotes } from './tables/size-notes.ts'
export { spreadDocument } from './tables/spread-document.ts'
export {
  failureLines,
  type SpreadFigureRow,
  spreadFigureRows,
  wearerLines,
  type YieldRow,
  yieldRows,
} from './tables/spread-rows.ts'
export {
  firstToGive,
  type StrengthRow,
  strengthDocument,
  strengthPlace,
  strengthRows,
} from './tables/strength-rows.ts'
export { surfaceLines, surfaceWords } from './tables/surface-lines.ts'
export { type Told, type ToldTravel, toldIn } from './tables/told.ts'
export { unreachedLines } from './tables/unreached-lines.ts'
export { joined, sayReading, setValue, type ValueText } from './tables/value-text.ts'
export type { TypesetJob } from './typeset/typeset-job.ts'
export { drawWear } from './wear/draw-wear.ts'
export { placeWorking } from './wear/place-working.ts'
export { wearDocument } from './wear/wear-document.ts'
export {
  type CurveRow,
  curveRows,
  type LifeRow,
  lifeHeads,
  lifeRows,
  type PlaceRow,
  placeHeads,
  placeRows,
} from './wear/wear-rows.ts'
export { wearGround, wearSentence } from './wear/wear-sentence.ts'
