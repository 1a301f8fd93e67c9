/** Rows of the tables that page, command line and report share: findings with bound and margin, figures with their value. */
import { type Figure, type Finding, showFigure, type UnitSystem } from '../../engine/index.ts'
import { type QuestionName, questionOf } from '../questions/question-of.ts'
import { findingsOf } from './overall-verdict.ts'
import type { Told } from './told.ts'
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
}

/** Findings of one question, or of the whole design when none is named. */
export function findingRows(evaluation: Told, question?: QuestionName): readonly FindingRow[] {
  const findings = question === undefined ? evaluation.findings : findingsOf(evaluation, question)
  return findings.map((finding) => findingRow(finding, evaluation.units))
}

/** Figures of one question in the engine's order, each with the requirement that watches it. */
export function figureRows(evaluation: Told, question: QuestionName): readonly FigureRow[] {
  return evaluation.figures
    .filter((figure) => questionOf(figure.id) === question)
    .map((figure) => {
      const finding = evaluation.findings.find((one) => one.requirement.figure === figure.id)
      return {
        id: figure.id,
        group: groupOf(evaluation, figure.id),
        title: titleUnder(groupOf(evaluation, figure.id), figure),
        ...setOf(figure, evaluation.units),
        ...(figure.why === undefined ? {} : { why: figure.why }),
        ...(finding === undefined ? {} : { finding: findingRow(finding, evaluation.units) }),
      }
    })
}

/** `at least 7 deg`, `at most 3 N·m`, `yes`: as it was typed, or in inch units for a reader of those. */
export function neededWords({ requirement, figure }: Finding, units: UnitSystem = 'metric'): string {
  const { bound } = requirement
  if (bound.kind === 'is') return bound.value ? 'yes' : 'no'
  const least = bound.kind === 'atLeast' ? 'at least' : 'at most'
  const isTyped = units === 'metric' || figure === undefined || figure.unit === 'rad' || figure.unit === '1'
  return `${least} ${isTyped ? bound.typed.replaceAll('*', '·') : showFigure(bound.value, figure.unit, units)}`
}

function findingRow(finding: Finding, units?: UnitSystem): FindingRow {
  const { requirement, figure, verdict, margin, why } = finding
  const found = figure === undefined ? {} : setOf(figure, units)
  const reason = why ?? figure?.why
  return {
    id: requirement.id,
    verdict,
    title: figure?.title ?? requirement.figure,
    needed: neededWords(finding, units),
    reason: requirement.reason,
    source: requirement.source,
    ...(found.value === undefined ? {} : { found: found.value }),
    ...(margin === undefined || figure === undefined ? {} : { margin: signed({ margin, figure, units }) }),
    ...(reason === undefined ? {} : { why: reason }),
  }
}

function setOf(figure: Figure, units?: UnitSystem): { readonly value?: ValueText } {
  return figure.value === undefined ? {} : { value: setValue(figure.value, figure.unit, units) }
}

interface FoundMargin {
  readonly margin: number
  readonly figure: Figure
  readonly units: UnitSystem | undefined
}

/** The margin with its sign, in the unit in which the found value stands beside it. */
function signed(found: FoundMargin): ValueText {
  const { margin } = found
  const text = setLike(found)
  return margin > 0 ? { number: `+${text.number}`, unit: text.unit } : text
}

function setLike({ margin, figure, units }: FoundMargin): ValueText {
  const found = figure.value === undefined ? undefined : setValue(figure.value, figure.unit, units)
  if (figure.unit !== 'N·mm' || found?.unit !== 'N·m') return setValue(margin, figure.unit, units)
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
  strength: 'Of all checks',
  'strength.pin': 'Pins and the parts about them',
  'strength.link': 'Links',
  'strength.stop': 'Stops',
  'strength.spring': 'Springs',
  'strength.screw': 'Screws',
}

/** Under the heading of its load case a figure need not name it again. */
function titleUnder(group: string, figure: Figure): string {
  return figure.title.endsWith(`, ${group}`) ? figure.title.slice(0, -group.length - 2) : figure.title
}

function groupOf(evaluation: Told, id: string): string {
  const [first, second] = id.split('.')
  if (first === 'loadCase') return evaluation.design.loadCases.find((loadCase) => loadCase.id === second)?.name ?? 'Loads'
  return HEADINGS[`${first}.${second}`] ?? HEADINGS[first] ?? 'Other figures'
}
