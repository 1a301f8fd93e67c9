/** What an edit did: the findings and the governing figures that differ between two evaluations, the most important first. */
import type { Problem } from '../design/problem.ts'
import type { Evaluation, Figure, FigureUnit, Finding, Verdict } from './evaluation.ts'
import { governingFigures } from './governing-figures.ts'

/** A figure's value of one evaluation: undefined with a reason where it does not exist. */
export type MovedValue = Figure['value']

/** One figure before and after. */
export interface FigureMove {
  readonly figure: string
  readonly title: string
  readonly unit: FigureUnit
  readonly before: MovedValue
  readonly after: MovedValue
  /** After less before; absent unless both are numbers. */
  readonly change?: number
}

/** A requirement before and after. `before` or `after` is absent for one that came or went. */
export interface FindingMove {
  /** The requirement's id, by which the two are known to be the same. */
  readonly requirement: string
  readonly before?: Finding
  readonly after?: Finding
  readonly verdictChanged: boolean
  readonly figure: FigureMove
}

/** Everything that moved, by importance: findings whose verdict changed, then findings by their move over their bound, then other figures. */
export interface WhatMoved {
  readonly findings: readonly FindingMove[]
  /** Governing figures that no finding above tells of. */
  readonly figures: readonly FigureMove[]
  /** Problems of the evaluation that were not there before, and those that are gone. */
  readonly came: readonly Problem[]
  readonly gone: readonly Problem[]
}

/** Compares two evaluations. What differs by less than a workshop can tell (`isMoved`) has not moved. */
export function whatMoved(before: Evaluation, after: Evaluation): WhatMoved {
  const findings = findingMoves(before, after).sort((one, other) => importance(other) - importance(one))
  const told = new Set(findings.map(({ figure }) => figure.figure))
  const figures = figureMoves(before, after).filter(({ figure }) => !told.has(figure))
  return { findings, figures, came: missingFrom(before, after), gone: missingFrom(after, before) }
}

function findingMoves(before: Evaluation, after: Evaluation): FindingMove[] {
  const earlier = new Map(before.findings.map((finding) => [finding.requirement.id, finding]))
  const later = new Map(after.findings.map((finding) => [finding.requirement.id, finding]))
  return [...new Set([...earlier.keys(), ...later.keys()])].flatMap((requirement) => {
    const [was, is] = [earlier.get(requirement), later.get(requirement)]
    const figure = figureMove(was?.figure, is?.figure, (is ?? was)?.requirement.figure ?? '')
    const verdictChanged = was?.verdict !== is?.verdict
    const isAsked = was === undefined || is === undefined || !isSameBound(was, is)
    if (!verdictChanged && !isAsked && !isMoved(figure)) return []
    return [{ requirement, ...(was && { before: was }), ...(is && { after: is }), verdictChanged, figure }]
  })
}

function isSameBound({ requirement: one }: Finding, { requirement: other }: Finding): boolean {
  return one.figure === other.figure && one.bound.kind === other.bound.kind && one.bound.value === other.bound.value
}

function figureMoves(before: Evaluation, after: Evaluation): readonly FigureMove[] {
  const governing = [...governingFigures(after), ...governingFigures(before)]
  const earlier = new Map(before.figures.map((figure) => [figure.id, figure]))
  const later = new Map(after.figures.map((figure) => [figure.id, figure]))
  return [...new Set(governing.map(({ id }) => id))].map((id) => figureMove(earlier.get(id), later.get(id), id)).filter(isMoved)
}

function figureMove(before: Figure | undefined, after: Figure | undefined, id: string): FigureMove {
  const [was, is] = [before?.value, after?.value]
  const { title, unit } = after ?? before ?? { title: id, unit: '1' }
  const change = typeof was === 'number' && typeof is === 'number' ? { change: is - was } : {}
  return { figure: id, title, unit, before: was, after: is, ...change }
}

/**
 * Least differences that a workshop can tell, in inside units: a hundredth of a degree, a micrometre, a hundredth of a newton, a tenth of a
 * newton millimetre and of a megapascal, a thousandth of a plain number. Rounding of the calculation is a thousand times smaller.
 */
const least: Readonly<Record<FigureUnit, number>> = {
  rad: (0.01 * Math.PI) / 180,
  mm: 0.001,
  N: 0.01,
  N·mm: 0.1,
  'N·mm per pin': 0.01,
  MPa: 0.1,
  '1': 0.001,
  'yes or no': 0,
  words: 0,
}

/** Of large values a difference counts from this share of them on: more digits are not shown. */
const leastShare = 0.001

/** Whether a figure differs by more than a workshop can tell. */
export function isMoved({ unit, before, after, change }: FigureMove): boolean {
  if (change === undefined) return before !== after
  const size = Math.max(Math.abs(Number(before)), Math.abs(Number(after)))
  return Math.abs(change) >= Math.max(least[unit], leastShare * size)
}

const weightOfVerdict: Readonly<Record<Verdict, number>> = { short: 3, undecided: 2, met: 1 }
/** Above what any move of a value weighs. */
const verdictWeight = 1e6

/** Verdicts first, those that became short before those that became met; then how far a value moved, seen from its bound. */
function importance({ after, verdictChanged, figure }: FindingMove): number {
  if (verdictChanged) return verdictWeight * (after ? weightOfVerdict[after.verdict] : 1)
  const bound = after?.requirement.bound
  const scale = bound === undefined || bound.kind === 'is' ? 1 : Math.abs(bound.value)
  return Math.min(verdictWeight / 2, Math.abs(figure.change ?? 0) / Math.max(scale, least[figure.unit], Number.MIN_VALUE))
}

function missingFrom(one: Evaluation, other: Evaluation): readonly Problem[] {
  const had = new Set(one.problems.map(({ code, place }) => `${code} ${place}`))
  return other.problems.filter(({ code, place }) => !had.has(`${code} ${place}`))
}
