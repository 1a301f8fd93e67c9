/** How the closings of a life stand in a check and in its working. */
import { harmSum, type SwingUnder, type Together } from './closings-together.ts'
import type { Life } from './life.ts'
import type { Limit } from './margin.ts'
import type { StrengthStep } from './strength.ts'

/** The limit of all closings together. @param factor on every stress */
export function lifeLimit({ strength_MPa, material }: Life, { amplitude_MPa }: Together<SwingUnder>, factor: number): Limit {
  return { says: 'cracks', stress: amplitude_MPa, allowable: strength_MPa, material, factor }
}

/** What is borne, and where shares are stated how the closings add up. */
export function lifeSteps(life: Life, { amplitude_MPa, share_ratio }: Together<SwingUnder>): readonly StrengthStep[] {
  const borne = { name: 'amplitude borne for the closings of its life', value: life.strength_MPa, unit: 'MPa' } as const
  if (!life.shares) return [borne]
  return [
    { name: 'share of the closings under this load case', value: share_ratio, unit: '1' },
    { name: 'sum of harm of all closings, without the factor', value: harmSum(life, amplitude_MPa), unit: '1' },
    borne,
  ]
}
