/** Rows of the tables that page, command line and report share: findings with bound and margin, figures with their value. */
import type { Evaluation, Figure, Finding } from '../../engine/index.ts'
import { findingsOf, type QuestionName, questionOf } from './overall-verdict.ts'
import { setValue, type ValueText } from './value-text.ts'

/** A requirement beside what was found for it. */
export interface FindingRow {
  readonly id: string
  readonly verdict: Finding['verdict']
  readonly title: string
  /** Absent where the figure does not exist; `why` then says so. */
  readonly found?: ValueText
  /** `at least 7 deg`, as it was typed. */
  readonly needed: string
  /** Positive when met. Absent for yes or no and when undecided. */
  readonly margin?: ValueText
  readonly why?: string
  readonly reason: string
  readonly source: string
}

/** A figure as a row; `group` is the heading it stands under. */
export interface FigureRow {
  readonly id: string
  readonly group: string
  readonly title: string
  readonly value?: ValueText
  readonly why?: string
  readonly finding?: FindingRow
  readonly figure: Figure
}

/** Findings of one question, or of the whole design when none is named. */
export function findingRows(evaluation: Evaluation, question?: QuestionName): readonly FindingRow[] {
  const findings = question === undefined ? evaluation.findings : findingsOf(evaluation, question)
  return findings.map(findingRow)
}

/** Figures of one question in the engine's order, each with the requirement that watches it. */
export function figureRows(evaluation: Evaluation, question: QuestionName): readonly FigureRow[] {
  return evaluation.figures
    .filter((figure) => questionOf(figure.id) === question)
    .map((figure) => {
      const finding = evaluation.findings.find((one) => one.requirement.figure === figure.id)
      return {
        id: figure.id,
        group: groupOf(evaluation, figure.id),
        title: titleUnder(groupOf(evaluation, figure.id), figure),
        figure,
        ...setOf(figure),
        ...(figure.why === undefined ? {} : { why: figure.why }),
        ...(finding === undefined ? {} : { finding: findingRow(finding) }),
      }
    })
}

/** `at least 7 deg`, `at most 3 N·m`, `yes`. */
export function neededWords({ requirement }: Finding): string {
  const { bound } = requirement
  if (bound.kind === 'is') return bound.value ? 'yes' : 'no'
  return `${bound.kind === 'atLeast' ? 'at least' : 'at most'} ${bound.typed.replaceAll('*', '·')}`
}

function findingRow(finding: Finding): FindingRow {
  const { requirement, figure, verdict, margin, why } = finding
  const found = figure === undefined ? {} : setOf(figure)
  const reason = why ?? figure?.why
  return {
    id: requirement.id,
    verdict,
    title: figure?.title ?? requirement.figure,
    needed: neededWords(finding),
    reason: requirement.reason,
    source: requirement.source,
    ...(found.value === undefined ? {} : { found: found.value }),
    ...(margin === undefined || figure === undefined ? {} : { margin: signed(margin, figure) }),
    ...(reason === undefined ? {} : { why: reason }),
  }
}

function setOf(figure: Figure): { readonly value?: ValueText } {
  return figure.value === undefined ? {} : { value: setValue(figure.value, figure.unit) }
}

/** The margin with its sign, in the unit in which the found value stands beside it. */
function signed(margin: number, figure: Figure): ValueText {
  const text = setLike(margin, figure)
  return margin > 0 ? { number: `+${text.number}`, unit: text.unit } : text
}

function setLike(margin: number, figure: Figure): ValueText {
  const found = figure.value === undefined ? undefined : setValue(figure.value, figure.unit)
  if (figure.unit !== 'N·mm' || found?.unit !== 'N·m') return setValue(margin, figure.unit)
  return { number: setValue(margin / N_MM_PER_N_M, '1').number, unit: found.unit }
}

const N_MM_PER_N_M = 1000
const HEADINGS: Readonly<Record<string, string>> = {
  motion: 'The mechanism',
  open: 'Open',
  closed: 'Closed',
  play: 'With the play of the pins',
  letGo: 'As it lets go',
  return: 'The way back',
  drive: 'What the wearer gives',
  release: 'Release past dead centre',
}

/** Under the heading of its load case a figure need not name it again. */
function titleUnder(group: string, figure: Figure): string {
  return figure.title.endsWith(`, ${group}`) ? figure.title.slice(0, -group.length - 2) : figure.title
}

function groupOf(evaluation: Evaluation, id: string): string {
  const [first, second] = id.split('.')
  if (first === 'loadCase') return evaluation.design.loadCases.find((loadCase) => loadCase.id === second)?.name ?? 'Loads'
  return HEADINGS[first] ?? 'Other figures'
}
