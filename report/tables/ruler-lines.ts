import { type CountedShare, type DesignSpread, shareWorking } from '../../engine/index.ts'
import { type OpenedLine, plainLine } from './opened-line.ts'
import { intervalText, shareText } from './spread-rows.ts'

/** The shares of sets on either side of the hold window, as the ruler tells them, with their intervals; or what a ruler takes. */
export function rulerLines({ spread }: DesignSpread): readonly OpenedLine[] {
  const { window } = spread
  if (!window)
    return [plainLine('No hold window: it takes a toggle that stands short of dead centre and a load case with a keeper.')]
  const { jammed, slipped, watched } = window
  return [
    line(
      jammed,
      'stand inside the jam',
      'A set stands inside the jam where its closed margin is no larger than the angle from which it jams.',
    ),
    line(
      slipped,
      `slip: ${watched.loadCase}`,
      'A set slips where its closed margin is no less than the angle from which the kept load slips.',
    ),
  ]
}

function line(share: CountedShare, what: string, counts: string): OpenedLine {
  return {
    words: `${shareText(share.value, share)} of sets ${what} (${intervalText(share)})`,
    workings: () => [shareWorking(share, counts)],
  }
}
