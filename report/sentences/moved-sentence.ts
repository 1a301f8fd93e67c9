/** What an edit moved, the most important first, in one plain sentence under the verdict. */
import { type FigureMove, type FindingMove, shownFigure, type UnitSystem, type WhatMoved } from '../../engine/index.ts'
import { marks } from '../tables/marks.ts'
import { joined } from '../tables/value-text.ts'
import { figureName } from './figure-name.ts'
import { asSentence, inside } from './words.ts'

/** More moves than this in one sentence are not read; they are counted. */
const MOVES_MOST = 4
/** Digits in which two values are told apart, fewest first. */
const DIGITS = [3, 4, 5, 6]

/** `Dead-centre margin of toggle distal, closed 8.72° → 6.51°, now short; …`; problems that came or went are told first. */
export function movedSentence({ came, gone, findings, figures }: WhatMoved, units: UnitSystem = 'metric'): string {
  const all = [
    ...came.map(({ place, found }) => `at ${place}: ${inside(found)}`),
    ...(gone.length > 0 ? ['what was wrong before is mended'] : []),
    ...findings.map((move) => findingWords(move, units)),
    ...figures.map((move) => moveWords(move, units)),
  ]
  if (all.length === 0) return 'Nothing moved.'
  const more = all.length > MOVES_MOST ? [`and ${all.length - MOVES_MOST} more`] : []
  return asSentence([...all.slice(0, MOVES_MOST), ...more].join('; '))
}

function findingWords({ before, after, verdictChanged, figure }: FindingMove, units: UnitSystem): string {
  if (after === undefined) return `${figureName({ id: figure.figure, title: figure.title })} is no longer asked for`
  const words = moveWords(figure, units)
  if (before === undefined) return `${words}, newly asked for: ${marks[after.verdict].word}`
  return verdictChanged ? `${words}, now ${marks[after.verdict].word}` : words
}

/** `jam angle of toggle distal, from rest 5.06° → 6.10°`; one value where it did not move, `none` where it does not exist. */
export function moveWords({ figure, title, unit, before, after }: FigureMove, units: UnitSystem = 'metric'): string {
  const [was, is] = shownApart({ unit, before, after }, units)
  return `${figureName({ id: figure, title })} ${was === is ? is : `${was} → ${is}`}`
}

/** Both values with as many digits as it takes to tell them apart. */
export function shownApart(
  { unit, before, after }: Pick<FigureMove, 'unit' | 'before' | 'after'>,
  units: UnitSystem = 'metric',
): readonly [string, string] {
  const show = (value: FigureMove['before'], digits: number): string => {
    if (value === undefined) return 'none'
    return joined(shownFigure(value, unit, { system: units, digits }))
  }
  const tries = DIGITS.map((digits) => [show(before, digits), show(after, digits)] as const)
  if (before === after) return tries[0]
  return tries.find(([was, is]) => was !== is) ?? tries[tries.length - 1]
}
