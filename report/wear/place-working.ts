import type { Life, Wear, Working, WorkingValue, WornPlace } from '../../engine/index.ts'
import { closingsWords, microns } from './wear-rows.ts'

const METHOD_OF_HOLE =
  'Archard: what two surfaces lose is their rate times force times way. In a hole it goes from the area that the pin presses on, by the side pressed; forces, ways and rates are worked out again at every step of the life.'
const METHOD_OF_STOP =
  'Archard: what two surfaces lose is their rate times force times way. At the stop it is gone from the lens between the round and its edge; force, way and rate are worked out again at every step of the life.'
const SOURCE = 'J. F. Archard 1953, from memory; derived for this project in docs/theory/wear.md. Rates'

/** How the wear of one place comes about, at the most and at the likely rates of its pair. @param index of the place in both lives */
export function placeWorking({ most, likely }: Life, index: number): Working {
  const place = most.places[index]
  const isHole = 'depth_mm' in place.asNew
  return {
    method: isHole ? METHOD_OF_HOLE : METHOD_OF_STOP,
    formulas: isHole
      ? ['h = \\frac{k \\sum |R|\\,s}{d\\,w}']
      : ['V = k\\,N s', 'h = \\sqrt[3]{\\frac{9}{32}\\,\\kappa \\left(\\frac{V}{w}\\right)^2}'],
    inputs: [
      ...ratesOf(place),
      { name: 'a closing rubs as new: force times way', value: NMM_A_NM * place.rubbed_Nm, unit: 'N·mm' },
      ...contactOf(place),
      { name: 'closings looked at, at the most wear', value: closingsWords(most.end_closings), unit: 'words' },
      { name: 'closings looked at, at the likely wear', value: closingsWords(likely.end_closings), unit: 'words' },
    ],
    steps: [...ofLife(most, index), ...ofLife(likely, index)],
    source: `${SOURCE} of ${chainOf(place.pair)
      .map(({ name, wear }) => `${name}: ${wear?.rate.source.replace(/\.$/, '') ?? 'none'}`)
      .join('; ')}`,
  }
}

/** N·mm in a N·m; mm² / N are as many thousand mm³ a N·m. */
const NMM_A_NM = 1000
const THOUSAND = 1000

function chainOf(pair: WornPlace['pair']): readonly WornPlace['pair'][] {
  return pair.wear?.film ? [pair, ...chainOf(pair.wear.film.under)] : [pair]
}

/** Of the pair as new and of those that lie under its films. */
function ratesOf({ pair }: WornPlace): readonly WorkingValue[] {
  return chainOf(pair).flatMap(({ name, wear }): WorkingValue[] => {
    if (!wear) return []
    const { rate, film } = wear
    const from = `friction.${name}.wear`
    return [
      { name: `most rate of ${name}`, value: rateWords(rate.most_mm2_N), unit: 'words', from },
      { name: `likely rate of ${name}`, value: rateWords(rate.likely_mm2_N), unit: 'words', from },
      ...(film ? [{ name: `film of ${name}`, value: film.depth_mm, unit: 'mm', from } as const] : []),
    ]
  })
}

const RATE_digits = 3

function rateWords(rate_mm2_N: number): string {
  const [digits, power] = (NMM_A_NM * rate_mm2_N).toExponential(RATE_digits - 1).split('e')
  return `${Number(digits)}e${power} mm³/N·m`
}

function contactOf({ asNew }: WornPlace): readonly WorkingValue[] {
  if ('depth_mm' in asNew) {
    return [
      { name: 'along the force: diameter of the pin and run of its slot', value: asNew.along_mm, unit: 'mm' },
      { name: 'width of the part', value: asNew.width_mm, unit: 'mm' },
    ]
  }
  return [
    { name: 'length of the contact', value: asNew.width_mm, unit: 'mm' },
    { name: 'radius of the round against its edge', value: 1 / asNew.curvature_1_mm, unit: 'mm' },
  ]
}

function ofLife({ level, places, films }: Wear, index: number): readonly WorkingValue[] {
  const { at, asNew, depth_mm } = places[index]
  const own = films.filter((film) => film.at.kind === at.kind && film.at.id === at.id)
  const taken =
    'depth_mm' in asNew ? microns(THOUSAND * asNew.depth_mm) : `${Number((THOUSAND * asNew.volume_mm3).toPrecision(2))} mm³`
  const inWords = (name: string, value: string): WorkingValue => ({ name: `${name}, at the ${level} wear`, value, unit: 'words' })
  return [
    inWords('a thousand closings take off as new', taken),
    ...own.map(({ closings }) => inWords('film worn through after', `${closingsWords(closings)} closings`)),
    inWords('worn at the end', microns(depth_mm)),
  ]
}
