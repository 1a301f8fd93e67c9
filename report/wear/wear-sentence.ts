import { type Design, figureNames, type Life, type LifeFinding } from '../../engine/index.ts'
import { figureName } from '../sentences/figure-name.ts'
import { closingsWords, yearsWords } from './wear-rows.ts'

/** How long the finger lasts and what ends it, in words. */
export function wearSentence(design: Design, life: Life): string {
  const { most, likely, findings } = life
  const stated = `the stated ${closingsWords(most.life_closings)} closings (${yearsWords(design, most.life_closings)})`
  const first = findings.find(({ untilMost }) => untilMost !== undefined)
  const asNew = findings.filter(
    ({ verdict, untilMost, untilLikely }) => verdict === 'short' && untilMost === undefined && untilLikely === undefined,
  )
  const short = asNew.length === 0 ? '' : ` As new it falls short already: ${asNew.map((one) => nameIn(design, one)).join(', ')}.`
  if (!first?.untilMost)
    return `At the most wear that its pairs may have, whatever is met as new is still met after ${closingsWords(most.end_closings)} closings; ${stated} are asked for.${short}`
  const at = `At the most wear that its pairs may have, ${nameIn(design, first)} is the first that is no longer met, after ${closingsWords(first.untilMost)} closings (${yearsWords(design, first.untilMost)}); ${stated} are asked for.`
  const untilLikely = Math.min(...findings.map((finding) => finding.untilLikely ?? Number.POSITIVE_INFINITY))
  const then = Number.isFinite(untilLikely)
    ? `At the likely wear that comes after ${closingsWords(untilLikely)} closings.`
    : `At the likely wear nothing falls short within ${closingsWords(likely.end_closings)}.`
  return `${at} ${then}${short}`
}

function nameIn(design: Design, { figure }: LifeFinding): string {
  const name = figureNames(design).find(({ id }) => id === figure)
  return name ? figureName(name) : figure
}

/** What the numbers of wear rest on. */
export const wearGround =
  'Rates of wear are known to an order of magnitude. At twice the rates everything happens in half of the closings; measure your pairs on the first prototype.'
