import type { ClosedSpread, CountedShare, DesignSpread, FigureSpread, FigureUnit } from '../../engine/index.ts'
import { intervalText, shareText } from './spread-rows.ts'
import { say } from './value-text.ts'

/** What many sets show in their closed posture alone; nothing where nobody asked. */
export function closedLines({ closed }: DesignSpread): readonly string[] {
  if (!closed) return []
  if ('why' in closed) return [`The closed posture alone cannot be looked at: ${closed.why}. Count sets instead.`]
  const { samples, toggles, without, plainly_count } = closed
  const margins = toggles.map(({ toggle, margin, required }) => {
    const short = required ? `; short of ${say(required.bound_rad, 'rad')}: ${oftenText(required.short)}` : ''
    return `Dead-centre margin of toggle ${toggle.id}: ${rangeText(margin, 'rad')}${short}`
  })
  return [
    ...margins,
    reserveLine(closed),
    ...windowLines(closed),
    ...(without.value > 0 ? [`Not at their stop: ${oftenText(without)}`] : []),
    `${samples} sets, ${plainly_count === 0 ? 'all' : `all but ${plainly_count}`} by the short way. Letting go is judged over the whole way back, above.`,
  ]
}

function reserveLine({ reserve, jammed }: ClosedSpread): string {
  const told = reserve
    ? `Return reserve from rest at that posture: ${rangeText(reserve, 'N·mm per pin')}`
    : 'Return reserve from rest at that posture: not told, because as drawn the finger closes inside its jam, where no number says more than “jammed”'
  return `${told}; jammed: ${oftenText(jammed)}`
}

function windowLines({ window, samples, untold }: ClosedSpread): readonly string[] {
  if (untold.includes('window'))
    return [
      'Jam and slip: not told, because as drawn the finger jams nowhere. Whether a set jams on its way is for the count above.',
    ]
  if (!window) return []
  const { jam, slip, never, slipping, inside } = window
  const slips = slip ? `Slips from: ${rangeText(slip, 'rad')}; slipping: ${oftenText(slipping)}` : 'Slips: no set'
  return [
    `Jams below: ${rangeText(jam, 'rad')}`,
    never.value > 0 ? `${slips}; the load never slips, however the finger stands: ${oftenText(never)}` : slips,
    `Between the two, neither jammed nor slipping: ${inside.value === 1 ? `all ${samples} (at least ${shareText(inside.least, inside)})` : oftenText(inside)}`,
  ]
}

/** `8.7°, all but 1 in 740 a side 8.3° to 9.1°, least 8.1°`. */
function rangeText({ quantiles, least }: FigureSpread, unit: FigureUnit): string {
  const [low, middle, high] = [quantiles[0], quantiles[Math.floor(quantiles.length / 2)], quantiles[quantiles.length - 1]]
  const said = (value: number): string => say(value, unit)
  return `${said(middle)}, all but 1 in 740 a side ${said(low)} to ${said(high)}, least ${said(least)}`
}

function oftenText(share: CountedShare): string {
  return share.value === 0
    ? `none of ${share.samples} (at most ${shareText(share.most, share)})`
    : `${shareText(share.value, share)} (${intervalText(share)})`
}
