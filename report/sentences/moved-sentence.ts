/** What an edit moved, the most important first, in one plain sentence under the verdict. */
import { type FigureMove, type FindingMove, shownFigure, type UnitSystem, type WhatMoved } from '../../engine/index.ts'
import { marks } from '../tables/marks.ts'
import { figureName } from './figure-name.ts'
import { asSentence } from './words.ts'

/** More moves than this in one sentence are not read; they are counted. */
const MOVES_MOST = 4
/** Digits in which two values are told apart, fewest first. */
const DIGITS = [3, 4, 5, 6]

/** `Margin to dead centre 8.72° → 8.51°; …, now short`; that nothing moved, when nothing did that a workshop could tell. */
export function movedSentence(moved: WhatMoved, units: UnitSystem = 'metric'): string {
  const moves = [
    ...moved.findings.map((move) => findingWords(move, units)),
    ...moved.figures.map((move) => figureWords(move, units)),
  ]
  const gone = moved.gone.length > 0 ? ['what was wrong before is mended'] : []
  const all = [...gone, ...moves]
  if (all.length === 0) return 'Nothing moved that a workshop could tell.'
  const more = all.length > MOVES_MOST ? [`${all.length - MOVES_MOST} more moved`] : []
  return asSentence([...all.slice(0, MOVES_MOST), ...more].join('; '))
}

function findingWords({ before, after, verdictChanged, figure }: FindingMove, units: UnitSystem): string {
  if (after === undefined) return `${figureName({ id: figure.figure, title: figure.title })} is no longer asked for`
  const words = figureWords(figure, units)
  if (before === undefined) return `${words}, newly asked for: ${marks[after.verdict].word}`
  return verdictChanged ? `${words}, now ${marks[after.verdict].word}` : words
}

function figureWords({ figure, title, unit, before, after }: FigureMove, units: UnitSystem): string {
  const name = figureName({ id: figure, title })
  if (before === after) return name
  const [was, is] = told([before, after], { unit, system: units })
  return `${name} ${was} → ${is}`
}

/** Both values with as many digits as it takes to tell them apart. */
function told(
  values: readonly FigureMove['before'][],
  about: { unit: FigureMove['unit']; system: UnitSystem },
): readonly string[] {
  const tries = DIGITS.map((digits) => values.map((value) => valueWords(value, { ...about, digits })))
  return tries.find(([was, is]) => was !== is) ?? tries[tries.length - 1]
}

function valueWords(
  value: FigureMove['before'],
  { unit, system, digits }: { unit: FigureMove['unit']; system: UnitSystem; digits: number },
): string {
  if (value === undefined) return 'none'
  const shown = shownFigure(value, unit, { system, digits })
  return shown.unit === '°' ? `${shown.number}°` : `${shown.number} ${shown.unit}`.trim()
}
