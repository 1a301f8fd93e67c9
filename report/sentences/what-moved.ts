/** What an edit did, in one line: verdicts that changed first, then the figures that moved furthest. */
import { type FigureMove, type FindingMove, shownFigure, type UnitSystem, type WhatMoved } from '../../engine/index.ts'
import { marks } from '../tables/marks.ts'
import { setValue } from '../tables/value-text.ts'
import { asSentence, inside } from './words.ts'

/** Clauses in the line; the table has the rest. */
const clausesMost = 4

/** `Dead-centre margin of toggle distal, closed 8.72° → 8.51°; …`, or that nothing moved. */
export function whatMovedSentence(moved: WhatMoved, units: UnitSystem = 'metric'): string {
  const clauses = [
    ...moved.came.map(({ place, found }) => `at ${place}: ${inside(found)}`),
    ...moved.findings.map((finding) => findingClause(finding, units)),
    ...moved.figures.map((figure) => moveWords(figure, units)),
    ...(moved.gone.length > 0 ? [`${moved.gone.length === 1 ? 'a problem is' : `${moved.gone.length} problems are`} gone`] : []),
  ]
  if (clauses.length === 0) return 'Nothing moved.'
  const rest = clauses.length - clausesMost
  const more = rest > 0 ? [`and ${rest} more`] : []
  return asSentence([...clauses.slice(0, clausesMost).map(inside), ...more].join('; '))
}

function findingClause({ before, after, verdictChanged, figure }: FindingMove, units: UnitSystem): string {
  const words = moveWords(figure, units)
  if (after === undefined) return `${words}, no longer asked for`
  if (before === undefined) return `${words}, now asked for: ${marks[after.verdict].word}`
  return verdictChanged ? `${words}, ${marks[before.verdict].word} → ${marks[after.verdict].word}` : words
}

/** `Jam angle of toggle distal, from rest 5.06° → 6.1°`; one value where it did not move, `none` where it does not exist. */
export function moveWords({ title, unit, before, after }: FigureMove, units: UnitSystem = 'metric'): string {
  const [was, is] = shownApart({ unit, before, after }, units)
  return was === is ? `${title} ${is}` : `${title} ${was} → ${is}`
}

/** Digits that are tried until two values that differ look different. */
const digitsMost = 6

/** Both values with as many digits as it takes to tell them apart, three at least. */
export function shownApart(
  { unit, before, after }: Pick<FigureMove, 'unit' | 'before' | 'after'>,
  units: UnitSystem = 'metric',
): readonly [string, string] {
  const show = (value: FigureMove['before'], digits: number): string => {
    if (value === undefined) return 'none'
    const { number, unit: name } = setValue(value, unit, units)
    const shown = digits === 3 || typeof value !== 'number' ? number : shownFigure(value, unit, { system: units, digits }).number
    return name === '°' ? `${shown}°` : [shown, name].filter((text) => text !== '').join(' ')
  }
  let [was, is] = [show(before, 3), show(after, 3)]
  for (let digits = 4; before !== after && was === is && digits <= digitsMost; digits++)
    [was, is] = [show(before, digits), show(after, digits)]
  return [was, is]
}
