import { type LifeStudy, piecesToPass, type ShownShare } from '../../../engine/index.ts'
import { asSentence } from '../../sentences/words.ts'

const PERCENT = 100
const DIGITS = 3
const percent = (share: number): string => `${Number((PERCENT * share).toPrecision(DIGITS))} %`
const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`

/** Shares that are commonly asked for. SOURCE trade. */
const ASKED_OFTEN = [0.9, 0.95, 0.99] as const

/** `2 passed and 1 failed at 60 N: at least 13.5 % of such pieces do it, 95 % sure.` @param at what was asked, in words */
export function shownSentence(
  { passed, failed, silent, share }: ShownShare,
  about: { readonly at: string; readonly confidence: number },
): string {
  const { at, confidence } = about
  const left = silent === 0 ? '' : `; ${counted(silent, 'run says', 'runs say')} nothing of it`
  if (share === undefined) return asSentence(`no run says anything of ${at}`)
  const head = `${passed} of ${passed + failed} pieces passed ${at}`
  const little = failed > 0 ? '' : `; ${neededWords(confidence)}`
  return asSentence(`${head}: at least ${percent(share)} of such pieces do so, ${percent(confidence)} sure${left}${little}`)
}

/** How little passed tests show. */
function neededWords(confidence: number): string {
  const each = ASKED_OFTEN.map((reliability) => `${piecesToPass({ reliability, confidence })} for ${percent(reliability)}`)
  return `without a failure it takes ${each.join(', ')}`
}

/** What runs show at a life, a line each. */
export function lifeLines({ asked, runs, shown, byShape, likeliest }: LifeStudy): readonly string[] {
  const { life, shape, confidence } = asked
  if (runs.length === 0) return ['Nothing was run.']
  const shaped =
    byShape === undefined
      ? []
      : [
          `Nothing failed; of lives with the shape ${shape} the runs, each by its length, show that at least ${percent(byShape)} outlast ${life}, ${percent(confidence)} sure.`,
        ]
  const likely =
    likeliest === undefined
      ? []
      : [
          `The likeliest law of lives has the shape ${short(likeliest.shape)} and the scale ${short(likeliest.scale)}: by it ${percent(likeliest.outlast)} outlast ${life}. Of few failures it claims no confidence.`,
        ]
  return [shownSentence(shown, { at: `${life}`, confidence }), ...shaped, ...likely]
}

const SHAPE_digits = 4
const short = (value: number): string => String(Number(value.toPrecision(SHAPE_digits)))
