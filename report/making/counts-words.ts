/** Two parts lists side by side, in words. */
import type { CountMove, CountsMoved } from '../../engine/index.ts'
import { massText } from './item-rows.ts'

/** `A finger has 21 pieces, 24 before, and weighs 56.7 g, 3.40 g less: thrust washer 4, 6 before; …` */
export function countsSentence({ before_count, after_count, before_kg, after_kg, isAllWeighed, moves }: CountsMoved): string {
  const known = isAllWeighed ? '' : ', as far as they are weighed'
  const pieces =
    after_count === before_count ? `${after_count} pieces as before` : `${after_count} pieces, ${before_count} before`
  const mass = `weighs ${grams(after_kg)}${changeWords(after_kg - before_kg)}`
  const said = moves.length === 0 ? '' : `: ${moves.map(moveWords).join('; ')}`
  return `A finger has ${pieces}, and ${mass}${known}${said}.`
}

const grams = (mass_kg: number): string => `${massText(mass_kg).number} ${massText(mass_kg).unit}`

/** Sums of the same masses differ by their rounding. */
const SAME_kg = 1e-12

function changeWords(more_kg: number): string {
  if (Math.abs(more_kg) < SAME_kg) return ' as before'
  return `, ${grams(Math.abs(more_kg))} ${more_kg > 0 ? 'more' : 'less'}`
}

function moveWords({ title, before_count, after_count }: CountMove): string {
  if (before_count === 0) return `${title} is new, ${after_count}`
  if (after_count === 0) return `${title} is gone, ${before_count} before`
  return `${title} ${after_count}, ${before_count} before`
}
