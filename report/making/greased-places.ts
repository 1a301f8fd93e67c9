import type { Design } from '../../engine/index.ts'

/** Each grease of a design with the places that get it: `spring return: thin grease, a film`; none where the design names none. */
export function greasedPlaces({ grease = [], pins, stops, springs }: Design): readonly string[] {
  return grease.map((point) => {
    const places = [
      ...point.pins.map((index) => `pin ${pins[index].id}`),
      ...point.stops.map((index) => `stop ${stops[index].id}`),
      ...point.springs.map((index) => `spring ${springs[index].id}`),
    ]
    const amount = point.amount === undefined ? '' : `, ${point.amount}`
    return `${places.join(', ')}: ${point.grease}${amount}.`
  })
}
