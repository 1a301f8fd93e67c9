import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { againstFriction, type DesignSpread, readVariation, spreadDesign } from '../../engine/index.ts'
import { svgText } from '../drawing/svg.ts'
import { drawAgainstFriction } from '../plots/draw-against-friction.ts'
import { drawFigureSets } from '../plots/draw-figure-sets.ts'
import { drawHoldWindow } from '../plots/hold-window.ts'
import { spreadSentence } from '../sentences/spread-sentence.ts'
import { adviceNotes } from './advice-notes.ts'
import { adviceRows, drawnText, frictionLines, offerLines, priceLines } from './advice-rows.ts'
import { againstFrictionLines } from './against-friction-lines.ts'
import { heldLines } from './held-lines.ts'
import { rulerLines } from './ruler-lines.ts'
import { sizeNotes } from './size-notes.ts'
import { spreadDocument } from './spread-document.ts'
import { failureLines, intervalText, shareText, spreadFigureRows, wearerLines, yieldRows } from './spread-rows.ts'
import { surfaceLines } from './surface-lines.ts'
import { unreachedLines } from './unreached-lines.ts'

function heron(): DesignSpread {
  const text = readFileSync(new URL('../../designs/heron.json', import.meta.url), 'utf8')
  const { value } = readVariation(text, 'heron')
  if (!value) throw new Error('heron is refused')
  const run = spreadDesign(value, {
    ...{ seed: 1, samples: 96, target_ratio: 0.96, advice: false },
  })
  for (let step = run.next(); ; step = run.next()) if (step.done === true) return step.value
}

const told = heron()

describe('a share and its interval', () => {
  const counted = (value: number, least: number, most: number) => ({ value, least, most, by: 'replicates', samples: 1 }) as const

  it('has as many digits as its interval deserves', () => {
    // SOURCE hand (a width of 0.8 % is told to two places, one of 8 % to one, one of 0.02 % to three)
    expect(shareText(0.9734, counted(0.9734, 0.969, 0.977))).toBe('97.34 %')
    expect(intervalText(counted(0.97, 0.92, 1))).toBe('92.0 to 100.0 %')
    expect(shareText(0.99934, counted(0.99934, 0.9992, 0.9994))).toBe('99.934 %')
  })
})

describe('the spread of heron', () => {
  it('tells all requirements at once first, then those that fall short most often', () => {
    const rows = yieldRows(told)
    // SOURCE property
    expect(rows).toHaveLength(told.requirements.length + 1)
    expect(rows[0]).toMatchObject({ id: 'all', title: 'Every requirement at once' })
    expect(failureLines(told)).toEqual([])
  })

  it('names what drives a figure, and the shares that it names are those of the whole', () => {
    const rows = spreadFigureRows(told)
    const margin = rows.find(({ id }) => id === 'closed.toggle.distal.deadCentreMargin')
    const shares = margin?.drivers.map((driver) => Number(/(\d+)\u00a0%$/.exec(driver)?.[1])) ?? []
    // SOURCE hand (whole per cents round by half of one each)
    expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 100)).toBeLessThanOrEqual(shares.length / 2)
    expect(rows.some(({ id }) => id === 'motion.closes')).toBe(false)
  })

  it('says in the row of a size what it contributes, both coordinates of a place together', () => {
    const hole = 'parts.middle.holes.dip'
    const margin = told.figures.findIndex(({ id }) => id === 'closed.toggle.distal.deadCentreMargin')
    const shares = told.spread.figures[margin].contributions?.shares ?? []
    const both = ['x', 'y'].map((axis) => shares[told.sources.findIndex(({ id }) => id === `${hole}.position.${axis}`)])
    const notes = sizeNotes(told, ['parts.middle', hole, 'dimensions.middleLength'])
    // SOURCE property (the sum of both shares of the fit)
    expect(notes.get(hole)).toContain(
      `${Math.round(100 * (both[0] + both[1]))}\u00a0% of dead-centre margin of toggle distal, closed`,
    )
    expect(notes.get('parts.middle')).not.toContain('hole')
    expect(notes.has('dimensions.middleLength')).toBe(false)
  })

  it('is one sentence, and claims no more than was counted', () => {
    const sentence = spreadSentence(told)
    expect(sentence).toMatch(/^\d+(\.\d+)? % of sets meet every requirement \(.* from 96 counted\), .*\.$/)
    expect(told.verdict).toBe('undecided')
    expect(sentence).toContain('undecided')
  })

  it('tells what surfaces say where they were made, and why not where they do not serve', () => {
    // SOURCE property: a count of so few sets makes none
    expect(surfaceLines(told)).toEqual([])
    expect(surfaceLines({ ...told, surfaces: { why: 'nothing varies' } })[0].words).toContain('do not serve here: nothing varies')
    const share = { value: 0.9589, least: 0.958, most: 0.9598 }
    const clear = { value: 1, least: 0.9995, most: 1 }
    const strength = told.requirements.findIndex(({ figure }) => figure === 'strength.least')
    const behind = { requirement: strength, words: 'Margin of the shelf', isWhole: true }
    const surfaces = {
      ...{ all: share, judged_count: 272, rows_count: 8192, near: [{ behind, miss: 0.001 }] },
      ...{ clear: [{ behind: { ...behind, words: 'Margin of a pin' }, place: 1, misses: 9.7 }] },
      requirements: told.requirements.map((_, index) => (index === strength ? share : clear)),
    }
    const lines = surfaceLines({ ...told, surfaces }).map(({ words }) => words)
    expect(lines[0]).toMatch(/^95\.89 % of sets meet every requirement \(95\.80 to 95\.98 %\): 272 sets were judged/)
    expect(lines[1]).toBe('Least margin of strength: 95.89 % (95.80 to 95.98 %)')
    expect(lines.join(' ')).toContain('Near its bound: Margin of the shelf.')
    expect(lines.join(' ')).toContain('Margin of a pin by the least: 9 times')
    expect(spreadSentence({ ...told, surfaces })).toContain('surfaces through 272 judged sets say 95.89 % (95.80 to 95.98 %)')
    expect(JSON.stringify(spreadDocument({ ...told, surfaces }, 'engine'))).toContain('"surfaces":{"judged":272')
  })

  it('says where a run was stopped how many sets were counted of those asked for, and what is not told', () => {
    expect(unreachedLines(told)).toEqual([])
    const asked = { ...told.asked, samples: 1024, advice: true, closed: 100, offers: ['link=±0.03 mm'] }
    // SOURCE property (96 sets were counted)
    expect(unreachedLines({ ...told, asked }).map(({ words }) => words)).toEqual([
      'Counted so far: 96 of the 1024 sets asked for. Shares and intervals are those of 96 sets.',
      'Not reached yet: what the shop offers, sets in their closed posture alone, what to change.',
    ])
  })

  it('names what is held as drawn in one line, with the way out that a general tolerance leaves', () => {
    expect(heldLines(told)).toEqual([])
    const [line] = heldLines({ ...told, untolerated: ['pins.a.diameter', 'pins.b.diameter'] })
    expect(line.words).toBe('pins.a.diameter, pins.b.diameter. Give them a tolerance.')
  })

  it('is drawn as a ruler with both lines and the shares outside', () => {
    const drawing = drawHoldWindow(told, { width_px: 760 })
    const svg = drawing ? svgText(drawing) : ''
    expect(svg).toContain('stand inside the jam')
    expect(svg.match(/class="bound"/g)).toHaveLength([told.spread.window?.watched.jam, told.spread.window?.watched.slip].length)
    expect(svg).not.toContain('NaN')
  })

  it('is drawn against the friction that moves its window most, over the whole range of that pair', () => {
    const found = againstFriction(told)
    if (!found) throw new Error('heron has a window and a friction with a range')
    const { pair, slices } = found
    expect(pair.name).toBe('filmed pin in hard-coated hole')
    // SOURCE property (ends of the range as stated; every set in one slice; a larger friction circle jams farther out)
    expect([slices[0].from, slices[slices.length - 1].to]).toEqual([pair.rest.least, pair.rest.most])
    expect(slices.reduce((sum, { sets_count }) => sum + sets_count, 0)).toBe(told.spread.samples.to)
    const jams = slices.map(({ jam }) => jam.middle)
    expect(jams).toEqual(jams.toSorted((one, other) => one - other))
    const drawing = drawAgainstFriction(found, { width_px: 600 })
    const svg = drawing ? svgText(drawing) : ''
    expect(svg.match(/<path/g)).toHaveLength(['jams', 'stands', 'slips'].length)
    expect(svg).not.toContain('NaN')
    expect(againstFrictionLines(found)[0].words).toMatch(
      /^Nearest to their jam .* from 0\.132 to 0\.140 at rest: every counted set at least/,
    )
  })

  it('is drawn figure by figure, as high as there are sets, with the bound that is asked for', () => {
    const index = told.figures.findIndex(({ id }) => id === 'return.margin')
    const { histogram = [], samples } = told.spread.figures[index].counted ?? {}
    const drawing = drawFigureSets(told, { id: 'return.margin', width_px: 600, units: 'metric' })
    const svg = drawing ? svgText(drawing) : ''
    const [, path] = /<path d="([^"]+)" class="part"/.exec(svg) ?? []
    const heights = [...path.matchAll(/[ML]?[\d.]+[ ,]([\d.]+)/g)].map(([, y]) => 84 - Number(y)).slice(1)
    const ofSlice = histogram.map((_, slice) => heights[2 * slice])
    // SOURCE property (heights are to one another as the counts of the sets)
    expect(histogram.reduce((sum, count) => sum + count, 0)).toBe(samples)
    for (const [slice, count] of histogram.entries())
      expect(Math.abs(ofSlice[slice] - (54 * count) / Math.max(...histogram))).toBeLessThan(0.02)
    expect(svg).toContain('asked: 4, farther left')
    expect(drawFigureSets(told, { id: 'motion.closes', width_px: 600, units: 'metric' })).toBeUndefined()
  })

  it('has room for the words of its ruler on a narrow page', () => {
    const drawing = drawHoldWindow(told, { width_px: 340 })
    const svg = drawing ? svgText(drawing) : ''
    const lineOf = (words: string): number => Number(new RegExp(`y="([\\d.]+)"[^>]*>[^<]*${words}`).exec(svg)?.[1])
    // SOURCE property (what has no room beside it stands below)
    expect(lineOf('slip: ')).toBeGreaterThan(lineOf('stand inside'))
    const lines = [...svg.matchAll(/<text[^>]* y="([\d.]+)"/g)].map(([, y]) => Number(y))
    expect(Math.max(...lines)).toBeLessThan(Number(/height="([\d.]+)/.exec(svg)?.[1]))
  })

  it('says what no tolerance mends', () => {
    expect(adviceNotes(told)).toEqual([])
    const { plan } = told.spread
    const verdicts = told.requirements.map(({ figure }) => (figure === 'return.letsGo' ? 'short' : 'met'))
    const steps = { ...plan.steps, middle: { ...plan.steps.middle, verdicts } } as typeof plan.steps
    const advice = { changes: [], friction: [] }
    const jams = { ...told, advice, spread: { ...told.spread, plan: { ...plan, steps } } }
    expect(adviceNotes(jams).map(({ words }) => words)).toEqual([
      'With every size in its middle it falls short already: lets go. No tolerance mends that; change the design.',
      'No place of the stop within a millimetre of its own brings the finger into the middle between jam and slip.',
    ])
    expect(frictionLines(jams)[0].words).toContain('Not told')
  })

  it('is a document without a number that is none', () => {
    const text = JSON.stringify(spreadDocument(told, 'engine'))
    expect(JSON.parse(text)).toMatchObject({ seed: 1, samples: 96, samplesAsked: 96, target: 0.96, verdict: told.verdict })
    expect(text).not.toContain('NaN')
  })
})

it('every number of Spread opens a working whose values can be shown', () => {
  const lines = [...rulerLines(told), ...wearerLines(told), ...yieldRows(told), ...spreadFigureRows(told)]
  const workings = lines.map((line) => line.workings())
  // SOURCE property
  expect(workings.every((of) => of.length > 0)).toBe(true)
  const numbers = workings.flat().flatMap(({ inputs, steps }) => [...inputs, ...steps].map(({ value }) => value))
  expect(numbers.every((value) => typeof value !== 'number' || Number.isFinite(value))).toBe(true)
})

describe('an offer of the shop', () => {
  const size = {
    name: 'link',
    words: 'dimension link',
    kind: 'length',
    isZone: false,
    drawn: { lower: -0.01, upper: 0.01 },
  } as const
  const gain = { value: -0.006, least: -0.015, most: 0.003, before: 0.98, samples: 512 }

  it('is told with what is drawn, what it costs, and of how many sets', () => {
    // SOURCE hand (the shares above in percent)
    expect(offerLines({ ...told, offers: [{ size, typed: '±0.03 mm', gain }] })[0].words).toBe(
      'dimension link at ±0.03 mm instead of ±0.01 mm: the share of sets that meet everything changes by −0.6 % (−1.5 to +0.3 %) from 98.0 %, 512 sets judged both ways',
    )
    expect(spreadDocument({ ...told, offers: [{ size, typed: '±0.03 mm', gain }] }, 'test')).toMatchObject({
      offers: [{ size: 'link', offered: '±0.03 mm', drawn: '±0.01 mm' }],
    })
  })

  it('and each change in words that a shop uses, with its working', () => {
    const groups = [{ id: 'dimensions.link', words: 'dimension link', sources: [0], share: 0.5 }]
    const changes = ([0.5, 2] as const).map(
      (factor) => ({ kind: factor < 1 ? 'tighten' : 'loosen', groups, factor, gain }) as const,
    )
    const rows = adviceRows({ ...told, advice: { changes, friction: [] } })
    expect(rows.map(({ change }) => change)).toEqual([
      'halve the tolerance of dimension link',
      'double the tolerance of dimension link',
    ])
    // SOURCE property (the working carries what the row tells)
    expect(rows[0].workings()[0].steps[0]).toMatchObject({ value: gain.value })
  })

  it('tells uneven sides one by one, and a zone by its width', () => {
    expect(drawnText({ ...size, drawn: { lower: -0.01, upper: 0.02 } })).toBe('+0.02 mm/−0.01 mm')
    expect(drawnText({ ...size, isZone: true, drawn: { lower: 0, upper: 0.02 } })).toBe('a zone of 0.02 mm')
    // SOURCE hand (an inch is 25.4 mm)
    expect(drawnText({ ...size, drawn: { lower: -0.0254, upper: 0.0254 } }, 'inch')).toBe('±0.001 in')
  })
})

it('what tolerances cost is told from the cheapest on, with the cheapest that reaches the target', () => {
  const size = {
    name: 'link',
    words: 'dimension link',
    kind: 'length',
    isZone: false,
    drawn: { lower: -0.01, upper: 0.01 },
    sources: [],
  }
  const point = (price: number, typed: string | undefined, value: number) => {
    const gain = { value, least: value - 0.01, most: value + 0.01, before: 0.98, samples: 512 }
    return { price, choices: [{ size, ...(typed && { typed }) }], gain }
  }
  const prices = [point(8, '±0.02 mm', -0.03), point(11, undefined, 0), point(19, '±0.005 mm', 0.015)]
  const lines = priceLines({
    ...{ ...told, asked: { ...told.asked, target_ratio: 0.99 } },
    advice: { changes: [], friction: [], prices },
  } as unknown as DesignSpread)
  // SOURCE hand (98 % less 3 %, and plus 1.5 %; the target is 99 %)
  expect(lines.map(({ words }) => words)).toEqual([
    '8.00 crowns (invented) a set: dimension link at ±0.02 mm. 95.0 % of the sets meet everything (94.0 to 96.0 %; 512 sets judged both ways)',
    '11.00 crowns (invented) a set: dimension link as drawn. 98.0 % of the sets meet everything (97.0 to 99.0 %; 512 sets judged both ways)',
    '19.00 crowns (invented) a set: dimension link at ±0.005 mm. 99.5 % of the sets meet everything (98.5 to 100.0 %; 512 sets judged both ways)',
    'The cheapest of those judged that comes to 99.0 % on these sets: 19.00 crowns (invented)',
  ])
  expect(priceLines(told)).toEqual([])
})
