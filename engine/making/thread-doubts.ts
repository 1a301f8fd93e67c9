/**
 * Threads that tear out, that a tap breaks in, or that are drilled too wide or too narrow.
 *
 *     basic minor diameter  D₁ = d − 1.0825 P     (ISO 724, from memory; √3 × 5/8 = 1.0825)
 *     a drill lies between D₁ and the largest minor diameter of the nut's limits
 */
import type { Design, Part } from '../design/design.ts'
import type { Screw } from '../design/screws/screw.ts'
import type { MakingDoubt } from './doubt.ts'
import { shopLimits } from './shop-limits.ts'

/** Doubts of the tapped holes of a design, screw by screw. That a thread is a usual one is seen to by the table it is named from. */
export function threadDoubts({ screws = [], parts }: Design): readonly MakingDoubt[] {
  return screws.flatMap((screw) => [
    ...unstated(screw),
    ...gripDoubts(screw, parts[screw.part]),
    ...drillDoubts(screw),
    ...depthDoubts(screw),
  ])
}

function unstated({ id, tapped }: Screw): readonly MakingDoubt[] {
  const { class: grade, drill_mm, threadDepth_mm } = tapped
  const missing = [
    ...(grade === undefined ? ['tapClass'] : []),
    ...(threadDepth_mm === undefined ? ['tapDepth'] : []),
    ...(drill_mm === undefined ? ['drill'] : []),
  ]
  if (missing.length === 0) return []
  return [
    {
      place: `screws.${id}`,
      found: `a tapped hole without ${missing.join(', ')}`,
      needed: 'the class of the thread, its depth and the drill before tapping',
      wayOut: 'Type them, or agree them on the order.',
    },
  ]
}

function gripDoubts({ id, thread, engagement_mm }: Screw, { material }: Part): readonly MakingDoubt[] {
  if (material === undefined) return []
  const isLight = material.modulus_MPa < shopLimits.lightBelow_MPa
  const ratio = isLight ? shopLimits.gripInLight_ratio : shopLimits.gripInSteel_ratio
  if (engagement_mm >= ratio * thread.diameter_mm) return []
  return [
    {
      place: `screws.${id}.engagement`,
      found: `${text(engagement_mm)} mm of ${thread.name} in grip in ${material.name}`,
      needed: `at least ${ratio} diameters, ${text(ratio * thread.diameter_mm)} mm`,
      wayOut: 'Turn it in deeper, take a smaller screw, or put an insert in; Strength tells what strips.',
    },
  ]
}

const MINOR_pitches = (5 / 8) * Math.sqrt(3)

function drillDoubts({ id, thread, tapped }: Screw): readonly MakingDoubt[] {
  const { drill_mm } = tapped
  if (drill_mm === undefined) return []
  const place = `screws.${id}.drill`
  const least_mm = thread.diameter_mm - MINOR_pitches * thread.pitch_mm
  const found = `a drill of ${text(drill_mm)} mm before ${thread.name}`
  if (drill_mm < least_mm || drill_mm > thread.minorMost_mm) {
    const needed = `from ${text(least_mm)} to ${text(thread.minorMost_mm)} mm: less breaks the tap, more leaves too little thread`
    return [
      {
        place,
        found,
        needed,
        wayOut: `The usual drill is diameter less pitch, ${text(thread.diameter_mm - thread.pitch_mm)} mm.`,
      },
    ]
  }
  const steps = drill_mm / shopLimits.tapDrillStep_mm
  const isMetric = thread.name.startsWith('M')
  if (!isMetric || Math.abs(steps - Math.round(steps)) < ROUNDING) return []
  const needed = `a multiple of ${shopLimits.tapDrillStep_mm} mm: such drills are sold`
  return [{ place, found, needed, wayOut: 'Take the nearest that lies between the same bounds.' }]
}

const ROUNDING = 1e-6

function depthDoubts({ id, thread, tapped }: Screw): readonly MakingDoubt[] {
  const { threadDepth_mm, drillDepth_mm } = tapped
  if (threadDepth_mm === undefined || drillDepth_mm === undefined) return []
  const most_mm = shopLimits.threadDepth_ratio * thread.diameter_mm
  const room_mm = shopLimits.tapRunOut_pitches * thread.pitch_mm
  const tooDeep: MakingDoubt = {
    place: `screws.${id}.tapDepth`,
    found: `${thread.name} tapped ${text(threadDepth_mm)} mm deep into a blind hole`,
    needed: `at most ${shopLimits.threadDepth_ratio} diameters, ${text(most_mm)} mm`,
    wayOut: 'Tap less deep, or drill through.',
  }
  const tooShort: MakingDoubt = {
    place: `screws.${id}.drillDepth`,
    found: `${text(drillDepth_mm - threadDepth_mm)} mm of hole below the thread`,
    needed: `at least ${shopLimits.tapRunOut_pitches} pitches, ${text(room_mm)} mm, for the lead of the tap`,
    wayOut: `Drill ${text(threadDepth_mm + room_mm)} mm deep, or tap less deep.`,
  }
  const isTooShort = drillDepth_mm - threadDepth_mm < room_mm - ROUNDING
  return [...(threadDepth_mm > most_mm ? [tooDeep] : []), ...(isTooShort ? [tooShort] : [])]
}

const PLACES = 3
const text = (value_mm: number): string => String(Number(value_mm.toFixed(PLACES)))
