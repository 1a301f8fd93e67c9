/** The card of limits for the wearer: what the finger carries, in plain words from the figures, and what it is never for. */
import { type Design, showFigure } from '../../engine/index.ts'
import { caution } from '../sentences/caution.ts'
import { yieldRows } from '../tables/spread-rows.ts'
import type { TypesetJob } from '../typeset/typeset-job.ts'
import { headOf, isReleased, type KnownOf } from './known-of.ts'

/** N that a kilogram weighs, standard gravity (ISO 80000-3). */
const WEIGHT_N_kg = 9.80665

const NEVER: readonly string[] = [
  'Never hang by it, climb with it or trust your body’s weight to it.',
  'Never tie the hand to anything that moves, and never work at an open machine with it.',
  'Never carry anything hot with it, and nothing sharp or heavy above people.',
  'Never use it with a part that is bent, cracked, loose or missing, or when it does not open by itself.',
  'Never drive with it unless your prosthetist and the law where you live agree.',
]

/** One page for the wearer. Loads that the design does not hold with its requirements met are named as not released. */
export function limitsCardJob(known: KnownOf): TypesetJob {
  const { design } = known.evaluation
  const loads = design.loadCases.map((loadCase) => loadRow(loadCase, known))
  return {
    template: 'limits-card',
    data: {
      ...headOf('Limits card', known),
      caution,
      ground: groundWords(known),
      released: loads.filter(({ isReleased }) => isReleased).map(({ words, carries }) => ({ words, carries })),
      held: loads.filter(({ isReleased }) => !isReleased).map(({ words }) => words),
      never: NEVER,
    },
  }
}

/** What the loads rest on: the finger as drawn, and how many sets are like it. */
function groundWords({ spread }: KnownOf): string {
  const [all] = spread === undefined ? [] : yieldRows(spread)
  const sets =
    all === undefined
      ? 'how other sets behave is not counted'
      : `of the sets that were counted ${all.met} meet all that is asked (${all.interval})`
  return `By calculation, for a finger as drawn; ${sets}. Your prosthetist says which of these you may use, and from when.`
}

/** Words of the figure, for a reader who has never seen it. */
const HELD_BY: Readonly<Record<string, string>> = {
  wearer: 'You carry it: keep pulling for as long as you hold it.',
  keeper: 'The finger carries it while something keeps it closed',
  stop: 'The finger carries it by itself, on its stop.',
  hinges: 'The hinges carry it.',
}

interface LoadRow {
  readonly words: string
  readonly carries: string
  readonly isReleased: boolean
}

function loadRow(loadCase: Design['loadCases'][number], known: KnownOf): LoadRow {
  const forces = [...loadCase.forces, ...loadCase.sideways].map(({ force_N }) => Math.abs(force_N))
  const force_N = forces.reduce((sum, one) => sum + one, 0)
  const units = known.evaluation.units
  const size = forces.length === 0 ? '' : `: up to ${showFigure(force_N, 'N', units)}${weightWords(force_N)}`
  return { words: `${loadCase.name}${size}`, carries: carriesWords(loadCase, known), isReleased: isReleased(known, loadCase) }
}

/** Rounded down: a card never promises more than was calculated. */
function weightWords(force_N: number): string {
  const tenths = Math.floor((10 * force_N) / WEIGHT_N_kg) / 10
  return `, as much as ${tenths} kg weigh`
}

function carriesWords({ id, name, keeper }: Design['loadCases'][number], { evaluation }: KnownOf): string {
  const found = (what: string) => evaluation.figures.find((figure) => figure.id === `loadCase.${id}.${what}`)
  const heldBy = found('heldBy')?.value
  const by = heldBy === undefined ? `who carries it is not known (${name})` : (HELD_BY[String(heldBy)] ?? `carried by: ${heldBy}`)
  const sustaining = found('sustainingLoad')
  if (keeper === undefined || typeof sustaining?.value !== 'number' || sustaining.value <= 0) return by
  return `${by}: ${keeper.port.kind === 'force' ? 'a finger or thumb laid on it, with at least' : 'with at least'} ${showFigure(sustaining.value, sustaining.unit, evaluation.units)}`
}
