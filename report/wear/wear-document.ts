import type { Life, Wear, WearPoint, WornPlace } from '../../engine/index.ts'
import { documentValue } from '../tables/value-text.ts'

/** The life of a finger for machines: closings are whole lives of numbers, angles in degrees. */
export function wearDocument({ findings, most, likely }: Life): object {
  return { life: most.life_closings, findings, most: runOf(most), likely: runOf(likely) }
}

function runOf({ end_closings, endedBy, loads, films, places, points }: Wear): object {
  return {
    end: end_closings,
    ...(endedBy !== undefined && { endedBy }),
    loads,
    films,
    places: places.map(placeOf),
    points: points.map(pointOf),
  }
}

function placeOf({ at, part, depth_mm, rubbed_Nm }: WornPlace): object {
  return { at, ...(part !== undefined && { part }), depth_mm, rubbed_Nm }
}

function pointOf({ margins_rad, ...point }: WearPoint): object {
  const margins_deg = margins_rad.map((margin) => (margin === undefined ? null : documentValue(margin, 'rad').value))
  return { ...point, margins_deg }
}
