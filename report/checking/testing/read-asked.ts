import { type LifeAsked, readQuantity } from '../../../engine/index.ts'

const PERCENT = 100

/** A force as it is typed, in N; a number without a unit is in N. @returns undefined for what is none */
export function readForce(typed: string): number | undefined {
  const text = typed.trim()
  if (text === '') return undefined
  const { value } = readQuantity(/^[\d.]+$/.test(text) ? `${text} N` : text, 'force')
  return value !== undefined && value >= 0 ? value : undefined
}

/** What is asked of runs, as it is typed; the confidence in per cent. @returns undefined where it is nothing that can be asked */
export function readLifeAsked(typed: Readonly<Record<keyof LifeAsked, string>>): LifeAsked | undefined {
  const [life, shape, percent] = [typed.life, typed.shape, typed.confidence].map(Number)
  const isAsked = life > 0 && shape > 0 && percent > 0 && percent < PERCENT
  return isAsked ? { life, shape, confidence: percent / PERCENT } : undefined
}
