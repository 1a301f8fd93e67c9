/** The spread as a document for machines. Angles are in degrees, everything else in mm, N and N·mm; shares are from 0 to 1. */
import {
  type CountedShare,
  type DesignSpread,
  type FigureSpread,
  type FigureUnit,
  quantileShares,
  type SpreadFigure,
  type Yield,
} from '../../engine/index.ts'
import { drawnText } from './advice-rows.ts'
import { documentUnit, documentValue } from './value-text.ts'

type Entry = Readonly<Record<string, unknown>>

/** The whole document. @param engine name and version of the engine that calculated */
export function spreadDocument(told: DesignSpread, engine: string): Entry {
  const { design, asked, spread, sources, figures, requirements, verdict, wearers, untolerated } = told
  const { all, failures } = spread.yields
  return {
    design: { name: design.name, title: design.title },
    engine,
    seed: asked.seed,
    samples: spread.samples.to,
    samplesAsked: asked.samples,
    target: asked.target_ratio,
    verdict,
    yield: yieldEntry(all),
    requirements: Object.fromEntries(requirements.map(({ id }, index) => [id, yieldEntry(spread.yields.requirements[index])])),
    failures: Object.fromEntries(Object.entries(failures).map(([failure, share]) => [failure, shareEntry(share)])),
    ...(wearers && { wearers: yieldEntry(wearers) }),
    figures: Object.fromEntries(
      figures.map(({ id, unit }, index) => [id, figureEntry(spread.figures[index], { unit, sources })]),
    ),
    correlations: correlationEntries(told),
    failurePoints: spread.plan.failurePoints.map(({ requirement, ...point }) => {
      const id = requirements[requirement].id
      return 'why' in point ? { requirement: id, why: point.why } : { requirement: id, deviations: point.distance }
    }),
    untolerated,
    ...offersEntry(told),
    ...surfacesEntry(told),
    ...closedEntry(told),
    ...adviceEntry(told),
  }
}

function shareEntry({ value, least, most, by }: CountedShare): Entry {
  return { value, least, most, by }
}

function yieldEntry({ met, short, undecided, saved_ratio }: Yield): Entry {
  const saved = saved_ratio === undefined ? {} : { samplesSaved: saved_ratio }
  return { met: shareEntry(met), short: shareEntry(short), undecided: shareEntry(undecided), ...saved }
}

interface About {
  readonly unit: FigureUnit
  readonly sources: DesignSpread['sources']
}

function figureEntry({ worst, straight, counted, contributions }: SpreadFigure, { unit, sources }: About): Entry {
  const told = (value: number | undefined): unknown => (value === undefined ? null : documentValue(value, unit).value)
  const ends = (least: number | undefined, most: number | undefined): Entry => ({ least: told(least), most: told(most) })
  return {
    unit: documentUnit(unit),
    worstCase: { ...ends(worst.least.value, worst.most.value), isBounding: worst.isBounding },
    rootSumSquare: straight.kind === 'linear' ? ends(straight.least, straight.most) : { why: straight.why },
    ...(counted && {
      samples: counted.samples,
      without: counted.without,
      mean: told(counted.mean),
      deviation: told(counted.deviation),
      ...ends(counted.least, counted.most),
      quantiles: Object.fromEntries(quantileShares.map((share, index) => [share, told(counted.quantiles[index])])),
      histogram: counted.histogram,
    }),
    ...(contributions && {
      contributions: Object.fromEntries(contributions.shares.map((share, index) => [sources[index].id, share])),
      rest: contributions.rest,
    }),
  }
}

function correlationEntries({ spread, figures }: DesignSpread): Entry {
  const rows = spread.correlations.map((row, index) => {
    const others = row.flatMap((value, other) =>
      other > index && value !== undefined ? [[figures[other].id, value] as const] : [],
    )
    return [figures[index].id, Object.fromEntries(others)] as const
  })
  return Object.fromEntries(rows.filter(([, others]) => Object.keys(others).length > 0))
}

function surfacesEntry({ surfaces, requirements }: DesignSpread): Entry {
  if (!surfaces || 'why' in surfaces) return surfaces ? { surfaces } : {}
  const { all, judged_count, rows_count, near, clear } = surfaces
  return {
    surfaces: {
      ...{ judged: judged_count, rows: rows_count, yield: all },
      requirements: Object.fromEntries(requirements.map(({ id }, index) => [id, surfaces.requirements[index]])),
      near: near.map(({ behind, miss }) => ({ number: behind.words, miss })),
      clear: clear.map(({ behind, misses }) => ({ number: behind.words, misses: Number.isFinite(misses) ? misses : null })),
    },
  }
}

function closedEntry({ closed }: DesignSpread): Entry {
  if (!closed || 'why' in closed) return closed ? { closed } : {}
  const { samples, plainly_count, toggles, reserve, jammed, without, window } = closed
  const spread = ({ least, most, mean, deviation }: FigureSpread, unit: FigureUnit): Entry => {
    const told = (value: number): unknown => documentValue(value, unit).value
    return { unit: documentUnit(unit), least: told(least), most: told(most), mean: told(mean), deviation: told(deviation) }
  }
  return {
    closed: {
      ...{ samples, followed: plainly_count, jammed: shareEntry(jammed), without: shareEntry(without) },
      ...(reserve && { reserve: spread(reserve, 'N·mm per pin') }),
      margins: Object.fromEntries(
        toggles.map(({ toggle, margin, required }) => {
          const short = required && { short: shareEntry(required.short) }
          return [toggle.id, { ...spread(margin, 'rad'), ...short }]
        }),
      ),
      ...(window && {
        window: {
          ...{ jam: spread(window.jam, 'rad'), ...(window.slip && { slip: spread(window.slip, 'rad') }) },
          ...{
            slipping: shareEntry(window.slipping),
            neverSlipping: shareEntry(window.never),
            inside: shareEntry(window.inside),
          },
        },
      }),
    },
  }
}

function offersEntry({ offers }: DesignSpread): Entry {
  if (!offers) return {}
  return { offers: offers.map(({ size, typed, gain }) => ({ size: size.name, offered: typed, drawn: drawnText(size), gain })) }
}

function adviceEntry({ advice }: DesignSpread): Entry {
  if (!advice) return {}
  const changes = advice.changes.map(({ kind, factor, groups, gain }) => ({
    kind,
    factor,
    sources: groups.map(({ id }) => id),
    gain,
  }))
  const { stop } = advice
  const angle = (value_rad: number): unknown => documentValue(value_rad, 'rad').value
  return {
    advice: {
      changes,
      friction: advice.friction,
      ...(advice.prices && {
        prices: advice.prices.map(({ price, choices, gain }) => {
          const tolerances = Object.fromEntries(choices.map(({ size, typed }) => [size.name, typed ?? drawnText(size)]))
          return { price, tolerances, gain }
        }),
      }),
      ...(stop && {
        stop: {
          setBack: { value: stop.setBack_mm, unit: 'mm' },
          margin: { value: angle(stop.margin_rad), unit: 'deg' },
          jam: { value: angle(stop.jam_rad), unit: 'deg' },
          slip: { value: angle(stop.slip_rad), unit: 'deg' },
          gain: stop.gain,
        },
      }),
    },
  }
}
