/**
 * A starting point for what has to be shown of a body-powered finger, and for what may go wrong: rows of two tables, as ordinary edits of a
 * document. Nothing that is there is written over; every row says that it is to be reviewed.
 */

import askedRows from '../../tables/starter-requirements.json' with { type: 'json' }
import riskRows from '../../tables/starter-risks.json' with { type: 'json' }
import type { Design } from '../design/design.ts'
import type { Change, JsonValue } from '../design/edit/change.ts'
import { figureNames } from '../design/figure-names.ts'
import { readDesign } from '../design/read-design.ts'

/** What a starter set adds to a document. */
export interface StarterSet {
  readonly changes: readonly Change[]
  /** How many things go into each section. */
  readonly counts: Readonly<Record<string, number>>
}

type Entries = readonly (readonly [id: string, thing: JsonValue])[]

/** What stands before the source of every row that was taken from the set. */
const TO_REVIEW = 'Starting point, to be reviewed.'

/** Demands, bench tests and requirements that the document does not have. @returns undefined while the document has problems, or has them all */
export function starterRequirements(text: string): StarterSet | undefined {
  const design = readDesign(text).value
  if (!design) return undefined
  const units = new Map(figureNames(design).map(({ id, unit }) => [id, unit]))
  const isWanted = (row: { readonly figure: string; readonly unit?: string }) =>
    units.has(row.figure) &&
    (row.unit === undefined || units.get(row.figure) === row.unit) &&
    !design.requirements.some(({ figure }) => figure === row.figure)
  const requirements = askedRows.requirements.filter(isWanted).map(({ id, unit: _, ...row }) => sourced(id, row))
  return setOf(design, {
    benchTests: askedRows.benchTests.map(({ id, source: _, ...row }) => [id, row] as const),
    requirements,
    demands: askedRows.demands.map(({ id, ...row }) => sourced(id, row)),
  })
}

function sourced(id: string, row: { readonly source: string } & { readonly [key: string]: JsonValue }): Entries[number] {
  return [id, { ...row, source: `${TO_REVIEW} ${row.source}` }]
}

/**
 * Risks that the document does not have, and scales where it has none. What is left of a risk hangs on the document's own requirements where
 * it has some on the figures that the risk watches; elsewhere a probability is suggested, and the workshop judges it.
 *
 * @returns undefined while the document has problems, has them all, or has scales with other steps
 */
export function starterRisks(text: string): StarterSet | undefined {
  const design = readDesign(text).value
  if (!design || !hasTheSteps(design)) return undefined
  const risks = riskRows.risks.map(({ id, watches, source: _, residual, ...row }) => {
    const requirements = design.requirements.filter(({ figure }) => watches.some((name) => isFigure(figure, name)))
    const { severity, probability } = residual
    const left =
      requirements.length > 0
        ? { severity, requirements: requirements.map((one) => one.id), reason: `${TO_REVIEW} ${residual.reason}` }
        : { severity, reason: `${TO_REVIEW} Suggested: ${probability}. ${residual.reason}` }
    return [id, { ...row, residual: left }] as const
  })
  const set = setOf(design, { risks })
  if (!set || design.riskScales) return set
  const scales = { probability: riskRows.probability.map(unsourced), severity: riskRows.severity.map(unsourced) }
  return { ...set, changes: [{ kind: 'set', place: ['riskScales'], value: scales }, ...set.changes] }
}

function unsourced<Row extends { readonly source: string }>({ source: _, ...row }: Row): Omit<Row, 'source'> {
  return row
}

function hasTheSteps({ riskScales }: Design): boolean {
  if (!riskScales) return true
  const has = (own: readonly { readonly name: string }[], wanted: readonly { readonly name: string }[]) =>
    wanted.every(({ name }) => own.some((step) => step.name === name))
  return has(riskScales.probability, riskRows.probability) && has(riskScales.severity, riskRows.severity)
}

/** Whether a figure has a name in which `*` stands for one thing of the design. */
function isFigure(figure: string, name: string): boolean {
  const [steps, wanted] = [figure.split('.'), name.split('.')]
  return steps.length === wanted.length && wanted.every((step, index) => step === '*' || step === steps[index])
}

function setOf(design: Design, sections: Readonly<Record<string, Entries>>): StarterSet | undefined {
  const own = design as unknown as Readonly<Record<string, readonly { readonly id: string }[]>>
  const added = Object.entries(sections).map(([section, entries]) => {
    const there = own[section]
    return { section, there, entries: entries.filter(([id]) => !there.some((one) => one.id === id)) }
  })
  const changes = added.flatMap(({ section, there, entries }): readonly Change[] => {
    if (entries.length === 0) return []
    if (there.length === 0) return [{ kind: 'set', place: [section], value: Object.fromEntries(entries) }]
    return entries.map(([id, value]) => ({ kind: 'set', place: [section, id], value }))
  })
  if (changes.length === 0) return undefined
  return { changes, counts: Object.fromEntries(added.map(({ section, entries }) => [section, entries.length])) }
}
