import type { Document } from '../document.ts'
import type { Workbench } from '../read-joints.ts'
import type { TappedHole } from './screw.ts'
import type { Thread } from './thread-rows.ts'

interface Turned {
  readonly typed: NonNullable<Document['screws']>[string]
  readonly thread: Thread
  readonly engagement_mm: number
  readonly reading: Workbench['reading']
}

/** The hole that a screw is turned into, as far as it is stated; what cannot be is reported. @param place of the screw */
export function readTapped(place: string, { typed, thread, engagement_mm, reading }: Turned): TappedHole {
  const size = (key: 'tapDepth' | 'drill' | 'drillDepth') => {
    const text = typed[key]
    return text === undefined ? undefined : reading.size(`${place}.${key}`, text)
  }
  const [threadDepth_mm, drill_mm, drillDepth_mm] = [size('tapDepth'), size('drill'), size('drillDepth')]
  if (threadDepth_mm !== undefined && threadDepth_mm < engagement_mm) {
    const [found, needed] = [`a thread ${threadDepth_mm} mm deep`, `at least the ${engagement_mm} mm that are in grip`]
    reading.report({ code: 'too small', place: `${place}.tapDepth`, found, needed })
  }
  if (drillDepth_mm !== undefined && drillDepth_mm < (threadDepth_mm ?? engagement_mm)) {
    const [found, needed] = [`a hole ${drillDepth_mm} mm deep`, `at least its thread, ${threadDepth_mm ?? engagement_mm} mm`]
    reading.report({ code: 'too small', place: `${place}.drillDepth`, found, needed })
  }
  if (drill_mm !== undefined && drill_mm >= thread.diameter_mm) {
    const found = `a drill of ${drill_mm} mm for ${thread.name}`
    reading.report({
      code: 'too large',
      place: `${place}.drill`,
      found,
      needed: `less than ${thread.diameter_mm} mm: nothing is left to tap`,
    })
  }
  return {
    ...(typed.tapClass !== undefined && { class: typed.tapClass }),
    ...(drill_mm !== undefined && { drill_mm }),
    ...(drillDepth_mm !== undefined && { drillDepth_mm }),
    ...(threadDepth_mm !== undefined && { threadDepth_mm }),
  }
}
