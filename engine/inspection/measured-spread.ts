/**
 * How likely one measured set holds and lets go: what was measured stands where it was found, within what the gauge leaves open; what was not
 * measured varies as on the drawing; friction varies as it is typed.
 *
 *     yield for this set = share of the ways in which the set may still be, that meet every requirement
 *
 * What a gauge leaves open is taken as even over the interval. Of a stated uncertainty (k = 2) that is a little more than the normal law would
 * give: its deviation is U/√3 instead of U/2.
 */

import type { Variation } from '../variation/sources/source.ts'
import { designProblem } from '../variation/spread/design-problem.ts'
import { type FigureSpread, figureSpread } from '../variation/spread/figure-spread.ts'
import { columnOf, judgeSamples } from '../variation/spread/samples.ts'
import type { WatchedFigure } from '../variation/spread/spread-problem.ts'
import { type Yields, yieldsOf } from '../variation/spread/yields.ts'
import { measuredSet, type Reading, sharesOfZone, standingReadings } from './measured-set.ts'
import { type OwnSource, respread } from './respread.ts'

/** Spread of one set as it was measured. */
export interface MeasuredSpread {
  readonly yields: Yields
  readonly figures: readonly (WatchedFigure & { readonly counted?: FigureSpread })[]
  /** Ids of the sources that still vary: not measured, or left open by the gauge. */
  readonly open: readonly string[]
  readonly asked: { readonly seed: number; readonly samples: number }
}

/** A measured set as a variation: only what is still open varies. */
export function measuredVariation(variation: Variation, readings: readonly Reading[]): Variation {
  const { values, diameters, unmeasured } = measuredSet(variation, readings)
  const covered = new Set(variation.diameters.flatMap(({ place, source }) => (diameters.has(place) ? [source] : [])))
  const isLeft = (source: string): boolean =>
    variation.diameters.some((one) => one.source === source && !diameters.has(one.place))
  // A dimension of which every pin and hole was measured has nothing left to vary.
  const kept = variation.sources.flatMap(({ id, of }, place) => {
    const isOpen = of === 'wearers' || unmeasured.includes(place)
    return isOpen && (!covered.has(id) || isLeft(id)) ? [place] : []
  })
  return respread(variation, { standing: { values, diameters }, kept, own: standingReadings(readings).flatMap(leftOpen) })
}

/** Counts one set as it was measured. The same set and seed give the same numbers. */
export function measuredSpread(
  variation: Variation,
  readings: readonly Reading[],
  asked: { readonly seed: number; readonly samples: number },
): MeasuredSpread {
  const measured = measuredVariation(variation, readings)
  const problem = designProblem(measured)
  const cloud = { dimensions: problem.sources.length, seed: asked.seed }
  const samples = judgeSamples(problem, { cloud, from: 0, to: asked.samples })
  return {
    yields: yieldsOf(problem, samples),
    figures: problem.figures.map((figure, index) => {
      const counted = figureSpread(columnOf(samples, index, problem.figures.length))
      return { ...figure, ...(counted && { counted }) }
    }),
    open: problem.sources.map(({ id }) => id),
    asked,
  }
}

/** What the gauge leaves open of one reading: nothing, an interval, or a square about the place of a hole. */
function leftOpen(reading: Reading): readonly OwnSource[] {
  const { id, words, unit, sources, diameter, place } = reading.characteristic
  const open = { words, unit, law: { kind: 'uniform' }, of: 'sets' } as const
  if ('size' in reading) {
    const { least, most } = reading.size
    if (!(most > least)) return []
    const range = { least, most }
    const source = { ...open, id, nominal: (least + most) / 2, ...range, law: { kind: 'uniform', ...range } } as const
    const visit = reading.visit ?? 'finished'
    if (diameter === undefined)
      return [{ source, put: (value, { values }) => void values.fill(value, sources[0], sources[0] + 1) }]
    return [{ source, put: (value_mm, { diameters }) => void diameters.set(diameter, { value_mm, visit }) }]
  }
  if (!place || reading.uncertainty_mm === 0) return []
  const half = reading.uncertainty_mm / (place.zone_mm / 2)
  return sharesOfZone(reading).map((middle, axis): OwnSource => {
    const range = { least: middle - half, most: middle + half }
    const source = {
      ...open,
      id: `${id}.${axis}`,
      unit: '1',
      nominal: middle,
      ...range,
      law: { kind: 'uniform', ...range },
    } as const
    return { source, put: (value, { values }) => void values.fill(value, sources[axis], sources[axis] + 1) }
  })
}
