/** A pin that is bent to and fro over its life: it cracks from use. */
import type { Design } from '../design/design.ts'
import { closingsTogether, type Together } from './closings-together.ts'
import { type Life, life } from './life.ts'
import { lifeLimit, lifeSteps } from './life-limit.ts'
import { pinPerNewton } from './pin-stress.ts'
import { type Bending, fibreSwings, type PinSwing } from './pin-swing.ts'
import { type Checked, foundAt, type Strength, type StrengthStep, UNPRESSED } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

/** Stress in tension that is as bad as the shear stress in the middle of a round section: 4/3 of the mean, times √3 (von Mises). */
const SHEAR_AS_TENSION_ratio = (4 / 3) * Math.sqrt(3)

/**
 * Margin of a pin against a crack, for the closings of its stated life, under the load cases in the shares that the document states. Its skin
 * is taken as ground; where it is clamped it may fret, which is not counted.
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
  const worst = worstFibre(fibreSwings({ mechanism, states }, bent), borne)
  return worst ? foundAt(checkedFibre(worst, borne, factors.yield), { state: worst.worst.state }, '') : UNPRESSED
}

/** The fibre that all closings together bring nearest to a crack; undefined where nothing bends the pin. */
function worstFibre(fibres: readonly (readonly PinSwing[])[], borne: Life): Together<PinSwing> | undefined {
  let worst: Together<PinSwing> | undefined
  for (const swings of fibres) {
    const found = swings.length === 0 ? undefined : closingsTogether(borne, swings)
    if (found && found.amplitude_MPa > (worst?.amplitude_MPa ?? 0)) worst = found
  }
  return worst
}

function checkedFibre(fibre: Together<PinSwing>, borne: Life, factor: number): Checked {
  const { most_MPa, least_MPa } = fibre.worst.swing
  const steps: readonly StrengthStep[] = [
    { name: 'largest stress of a fibre', value: most_MPa, unit: 'MPa' },
    { name: 'its least stress', value: least_MPa, unit: 'MPa' },
    ...lifeSteps(borne, fibre),
  ]
  return { limits: [lifeLimit(borne, fibre, factor)], steps }
}

function missingOf({ parts, pins }: Design, pin: number): string | undefined {
  const { material, joins, id } = pins[pin]
  if (!material) return `pins.${id} states no material`
  const unplaced = joins.find(({ part }) => (parts[part].across?.length ?? 0) === 0)
  return unplaced && `parts.${parts[unplaced.part].id}.across does not say where it lies across the finger`
}
