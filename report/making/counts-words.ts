/** Two parts lists side by side, in words. */
import type { CountMove, CountsMoved } from '../../engine/index.ts'
import { massText } from './item-rows.ts'

/** `A finger has 21 pieces, 24 before, and weighs 56.7 g, 60.1 g before: thrust washer 4, 6 before; …` */
export function countsSentence({ before_count, after_count, before_kg, after_kg, isAllWeighed, moves }: CountsMoved): string {
  const [was, is] = [before_kg, after_kg].map((mass_kg) => `${massText(mass_kg).number} ${massText(mass_kg).unit}`)
  const known = isAllWeighed ? '' : ', as far as they are weighed'
  const pieces =
    after_count === before_count ? `${after_count} pieces as before` : `${after_count} pieces, ${before_count} before`
  const mass = was === is ? `weighs ${is} as before` : `weighs ${is}, ${was} before`
  const said = moves.length === 0 ? '' : `: ${moves.map(moveWords).join('; ')}`
  return `A finger has ${pieces}, and ${mass}${known}${said}.`
}

function moveWords({ title, before_count, after_count }: CountMove): string {
  if (before_count === 0) return `${title} is new, ${after_count}`
  if (after_count === 0) return `${title} is gone, ${before_count} before`
  return `${title} ${after_count}, ${before_count} before`
}
