/**
 * The result as a document for machines, the same at the command line (`--json`) and at the server. Angles are in degrees, everything
 * else in mm, N and N·mm; every value has its unit beside it.
 */
import type { Evaluation, Figure, Finding, Problem } from '../../engine/index.ts'
import { documentUnit, documentValue } from './value-text.ts'

type DocumentValue = number | boolean | string | null

/** One figure; `value` is null where it does not exist, and `why` then says so. */
export interface FigureEntry {
  readonly value: DocumentValue
  readonly unit: string
  readonly why?: string
}

/** One requirement with what was found for it. `margin` is positive when met, in `unit`; null where there is no number. */
export interface FindingEntry {
  readonly requirement: string
  readonly figure: string
  readonly found: DocumentValue
  readonly needed: { readonly atLeast: number } | { readonly atMost: number } | { readonly is: boolean }
  readonly unit: string
  readonly verdict: 'met' | 'short' | 'undecided'
  readonly margin: number | null
  readonly why?: string
}

/** The whole document. A refused design has no figures and no findings, only problems. */
export interface ResultDocument {
  readonly design: { readonly name: string; readonly title: string }
  readonly engine: string
  readonly figures: Readonly<Record<string, FigureEntry>>
  readonly findings: readonly FindingEntry[]
  readonly problems: readonly Problem[]
}

/** @param engine name and version of the engine that calculated, e.g. `fingerwright 0.1.0` */
export function resultDocument(evaluation: Evaluation, engine: string): ResultDocument {
  return {
    design: { name: evaluation.design.name, title: evaluation.design.title },
    engine,
    figures: Object.fromEntries(evaluation.figures.map((figure) => [figure.id, figureEntry(figure)])),
    findings: evaluation.findings.map(findingEntry),
    problems: evaluation.problems,
  }
}

/** The document of a design that was refused when it was read. */
export function refusedDocument(
  refused: { readonly name: string; readonly problems: readonly Problem[] },
  engine: string,
): ResultDocument {
  return { design: { name: refused.name, title: '' }, engine, figures: {}, findings: [], problems: refused.problems }
}

function figureEntry(figure: Figure): FigureEntry {
  if (figure.value === undefined) return { value: null, unit: documentUnit(figure.unit), ...reason(figure.why) }
  return { ...documentValue(figure.value, figure.unit), ...reason(figure.why) }
}

function findingEntry(finding: Finding): FindingEntry {
  const { requirement, figure, verdict, margin } = finding
  const found = figure === undefined ? { value: null, unit: '' } : figureEntry(figure)
  return {
    requirement: requirement.id,
    figure: requirement.figure,
    found: found.value,
    needed: neededOf(finding),
    unit: found.unit,
    verdict,
    margin: margin === undefined || figure === undefined ? null : (documentValue(margin, figure.unit).value as number),
    ...reason(finding.why),
  }
}

function neededOf({ requirement, figure }: Finding): FindingEntry['needed'] {
  const bound = requirement.bound
  if (bound.kind === 'is') return { is: bound.value }
  const value = figure === undefined ? bound.value : (documentValue(bound.value, figure.unit).value as number)
  return bound.kind === 'atLeast' ? { atLeast: value } : { atMost: value }
}

function reason(why: string | undefined): { readonly why?: string } {
  return why === undefined ? {} : { why }
}
