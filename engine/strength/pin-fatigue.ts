/** A pin that is bent to and fro over its life: it cracks from use. */
import type { Design } from '../design/design.ts'
import { amplitudeAlone, fatigueLimit } from './fatigue.ts'
import { life } from './life.ts'
import { pinPerNewton } from './pin-stress.ts'
import { type Bending, worstSwing } from './pin-swing.ts'
import { foundAt, type Strength, UNPRESSED } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

/** Stress in tension that is as bad as the shear stress in the middle of a round section: 4/3 of the mean, times √3 (von Mises). */
const SHEAR_AS_TENSION_ratio = (4 / 3) * Math.sqrt(3)

/**
 * Margin of a pin against a crack, for the closings of its stated life, all of them under the load case that is worst. Its skin is taken as
 * ground; where it is clamped it may fret, which is not counted.
 */
export function pinFatigue({ mechanism, states, factors }: StrengthBench, pin: number): Strength {
  const { design, joints } = mechanism
  const { material, diameter_mm } = design.pins[pin]
  const missing = missingOf(design, pin)
  if (missing !== undefined || !material) return { why: missing ?? '' }
  const borne = life(design, material, { how: 'bent', finish: 'ground', diameter_mm })
  if ('missing' in borne) return { why: borne.missing }
  const bent = joints.flatMap((joint, index): Bending[] => {
    const per = joint.pin === pin ? pinPerNewton(design, { pin, part: joint.b }) : undefined
    return per ? [{ joint: index, perN_MPa: Math.max(per.bending, SHEAR_AS_TENSION_ratio * per.shear) }] : []
  })
  if (bent.length === 0) return { why: 'its parts do not lie so that the pin could be fixed between them' }
  const worst = worstSwing({ mechanism, states }, bent, (swing) => amplitudeAlone(swing, borne))
  if (!worst) return UNPRESSED
  const { swing, state } = worst
  const steps = [
    { name: 'largest stress of a fibre', value: swing.most_MPa, unit: 'MPa' },
    { name: 'its least stress', value: swing.least_MPa, unit: 'MPa' },
    { name: 'amplitude borne for the closings of its life', value: borne.strength_MPa, unit: 'MPa' },
  ] as const
  return foundAt({ limits: [fatigueLimit(swing, borne, factors.yield)], steps }, { state }, '')
}

function missingOf({ parts, pins }: Design, pin: number): string | undefined {
  const { material, joins, id } = pins[pin]
  if (!material) return `pins.${id} states no material`
  const unplaced = joins.find(({ part }) => (parts[part].across?.length ?? 0) === 0)
  return unplaced && `parts.${parts[unplaced.part].id}.across does not say where it lies across the finger`
}
