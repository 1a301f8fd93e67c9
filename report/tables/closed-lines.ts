import {
  type ClosedSpread,
  type CountedShare,
  closedWorking,
  type DesignSpread,
  type FigureSpread,
  type FigureUnit,
  quantileWorking,
  shareWorking,
  type UnitSystem,
} from '../../engine/index.ts'
import { type OpenedLine, plainLine } from './opened-line.ts'
import { intervalText, shareText } from './spread-rows.ts'
import { say, setValue } from './value-text.ts'

/** What many sets show in their closed posture alone; nothing where nobody asked. */
export function closedLines({ closed }: DesignSpread, units: UnitSystem = 'metric'): readonly OpenedLine[] {
  if (!closed) return []
  if ('why' in closed) return [plainLine(`The closed posture alone cannot be looked at: ${closed.why}. Count sets instead.`)]
  const { samples, toggles, without, plainly_count } = closed
  const margins = toggles.map(({ toggle, margin, required }) => {
    const short = required ? `; short of ${say(required.bound_rad, 'rad')}: ${oftenText(required.short)}` : ''
    return {
      words: `Dead-centre margin of toggle ${toggle.id}: ${anglesText(margin)}${short}`,
      workings: () => [
        quantileWorking(margin, 'rad'),
        ...(required ? [shareWorking(required.short, 'Sets whose closed margin lies below what is required.')] : []),
      ],
    }
  })
  return [
    ...margins,
    reserveLine(closed, units),
    ...windowLines(closed),
    ...(without.value > 0 ? [oftenLine('Not at their stop', without)] : []),
    {
      words: `${samples} sets, ${plainly_count === 0 ? 'all' : `all but ${plainly_count}`} by the short way. Letting go is judged over the whole way back, above.`,
      workings: () => [closedWorking(closed)],
    },
  ]
}

function reserveLine({ reserve, jammed }: ClosedSpread, units: UnitSystem): OpenedLine {
  const told = reserve
    ? `Return reserve from rest at that posture: ${rangeText(reserve, { unit: 'N·mm per pin', units })}`
    : 'Return reserve from rest at that posture: not told, because as drawn the finger closes inside its jam, where no number says more than “jammed”'
  return {
    words: `${told}; jammed: ${oftenText(jammed)}`,
    workings: () => [
      ...(reserve ? [quantileWorking(reserve, 'N·mm per pin')] : []),
      shareWorking(
        jammed,
        'Sets that stay jammed: their reserve from rest is not above nothing, or they stand inside their jam.',
      ),
    ],
  }
}

function oftenLine(what: string, share: CountedShare): OpenedLine {
  return {
    words: `${what}: ${oftenText(share)}`,
    workings: () => [shareWorking(share, `${what}, as a share of all sets looked at.`)],
  }
}

function windowLines({ window, samples, untold }: ClosedSpread): readonly OpenedLine[] {
  if (untold.includes('window'))
    return [
      plainLine(
        'Jam and slip: not told, because as drawn the finger jams nowhere. Whether a set jams on its way is for the count above.',
      ),
    ]
  if (!window) return []
  const { jam, slip, never, slipping, inside } = window
  const between = 'Between the two, neither jammed nor slipping'
  return [
    { words: `Jams below: ${anglesText(jam)}`, workings: () => [quantileWorking(jam, 'rad')] },
    slip
      ? {
          words: `Slips from: ${anglesText(slip)}; slipping: ${oftenText(slipping)}`,
          workings: () => [
            quantileWorking(slip, 'rad'),
            shareWorking(slipping, 'Sets that stand at or beyond the margin from which their load slips.'),
          ],
        }
      : plainLine('Slips: no set'),
    ...(never.value > 0 ? [oftenLine('The load never slips, however the finger stands', never)] : []),
    inside.value === 1
      ? { ...oftenLine(between, inside), words: `${between}: all ${samples} (at least ${shareText(inside.least, inside)})` }
      : oftenLine(between, inside),
  ]
}

interface Told {
  readonly unit: FigureUnit
  readonly units: UnitSystem
}

/** `8.7°, all but 1 in 740 a side 8.3° to 9.1°, least 8.1°`. */
function anglesText(spread: FigureSpread): string {
  return rangeText(spread, { unit: 'rad', units: 'metric' })
}

/** A unit in words stands once behind both ends. */
function rangeText({ quantiles, least }: FigureSpread, { unit, units }: Told): string {
  const [low, middle, high] = [quantiles[0], quantiles[Math.floor(quantiles.length / 2)], quantiles[quantiles.length - 1]]
  const said = (value: number): string => say(value, unit, units)
  const from = unit === 'rad' ? said(low) : setValue(low, unit, units).number
  return `${said(middle)}, all but 1 in 740 a side ${from} to ${said(high)}, least ${said(least)}`
}

function oftenText(share: CountedShare): string {
  return share.value === 0
    ? `none of ${share.samples} (at most ${shareText(share.most, share)})`
    : `${shareText(share.value, share)} (${intervalText(share)})`
}
