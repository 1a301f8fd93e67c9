/** Sizes for which there is no tool and no pin on the shelf. Before a coating counts what the shop works to. */
import { isoDeviations } from '../design/fits/iso-286.ts'
import type { MakingDoubt } from './doubt.ts'
import type { DrawnHole, DrawnPart, DrawnPin, Limits } from './drawn-sizes.ts'
import { shopLimits, stockPins } from './shop-limits.ts'

/** Holes whose limits no reamer of the usual steps lies within. */
export function reamerDoubts({ part, holes }: DrawnPart): readonly MakingDoubt[] {
  return holes.flatMap((drawn): readonly MakingDoubt[] => {
    const limits = worked(drawn)
    if (limits === undefined || hasReamer(limits)) return []
    return [
      {
        place: `parts.${part.id}.holes.${drawn.hole.id}.diameter`,
        found: `${said(limits)} to be reamed`,
        needed: `a multiple of ${shopLimits.reamerStep_mm} mm within the limits: reamers come in such steps`,
        wayOut: 'Move or widen the limits until one lies within, or have a reamer ground.',
      },
    ]
  })
}

/** A hole comes out a little larger than its reamer, never smaller; what lies on a limit counts. */
function hasReamer({ least, most }: Limits): boolean {
  const step = shopLimits.reamerStep_mm
  return Math.ceil(least / step - ROUNDING) * step <= most + ROUNDING
}

const ROUNDING = 1e-9

/** Pins that cannot be bought as they are. */
export function pinDoubts(drawn: DrawnPin): readonly MakingDoubt[] {
  const { pin } = drawn
  const place = `pins.${pin.id}.diameter`
  const row = stockPins.find(({ diameters_mm }) => diameters_mm.some((size) => Math.abs(size - pin.diameter_mm) < ROUNDING))
  if (row === undefined) {
    const sizes = stockPins.flatMap(({ diameters_mm }) => diameters_mm)
    const nearest = sizes.toSorted((one, other) => Math.abs(one - pin.diameter_mm) - Math.abs(other - pin.diameter_mm))[0]
    const found = `a pin of ${number(pin.diameter_mm)} mm, which is not bought from a shelf`
    return [
      {
        place,
        found,
        needed: `a usual diameter; the nearest is ${number(nearest)} mm`,
        wayOut: 'Take the nearest, or have pins ground.',
      },
    ]
  }
  const limits = worked(drawn)
  if (limits === undefined) return []
  const offered = row.zones.map((zone) => stock(zone, pin.diameter_mm))
  if (offered.some((own) => own.least >= limits.least - ROUNDING && own.most <= limits.most + ROUNDING)) return []
  const shelf = row.zones.map((zone, index) => `${zone} is ${said(offered[index])}`).join(', ')
  return [
    {
      place,
      found: `${said(limits)}${drawn.beforeCoating === undefined ? '' : ' before its coating'}, while a pin from the shelf in ${shelf}`,
      needed: 'limits that hold all of a zone that is sold',
      wayOut: 'Have pins ground to size, sort bought ones, or let the holes give the clearance.',
    },
  ]
}

function stock(zone: string, diameter_mm: number): Limits {
  const { deviations } = isoDeviations(zone, diameter_mm)
  if (!deviations) throw new Error(`no zone ${zone} at ${diameter_mm} mm for a pin from the shelf`)
  return { least: diameter_mm + deviations.lower_mm, most: diameter_mm + deviations.upper_mm }
}

function worked({ diameter, beforeCoating }: Pick<DrawnHole, 'diameter' | 'beforeCoating'>): Limits | undefined {
  return beforeCoating ?? diameter.limits
}

const PLACES = 4
const number = (value_mm: number): string => String(Number(value_mm.toFixed(PLACES)))
const said = ({ least, most }: Limits): string => `${number(least)} to ${number(most)} mm`
