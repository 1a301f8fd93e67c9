import { type AgainstFriction, againstFrictionWorking, type FrictionSlice } from '../../engine/index.ts'
import type { OpenedLine } from './opened-line.ts'
import { say, setValue } from './value-text.ts'

/** At which friction the sets stand nearest to their jam, and nearest to slipping; none without slices. */
export function againstFrictionLines(found: AgainstFriction | undefined): readonly OpenedLine[] {
  if (!found || found.slices.length === 0) return []
  const workings = () => [againstFrictionWorking(found)]
  return [
    { words: nearest(found, { what: 'their jam', clearOf: ({ margin, jam }) => margin.least - jam.most }), workings },
    {
      words: nearest(found, {
        what: 'slipping',
        clearOf: ({ margin, slip }) => (slip ? slip.least - margin.most : Number.POSITIVE_INFINITY),
      }),
      workings,
    },
  ]
}

interface Asked {
  readonly what: string
  readonly clearOf: (slice: FrictionSlice) => number
}

function nearest({ pair, slices }: AgainstFriction, { what, clearOf }: Asked): string {
  const slice = slices.reduce((least, one) => (clearOf(one) < clearOf(least) ? one : least))
  const [from, to] = [slice.from, slice.to].map((value) => setValue(value, '1').number)
  const clear_rad = clearOf(slice)
  if (!Number.isFinite(clear_rad)) return `With friction of ${pair.name} nothing slips, however the finger stands`
  const far =
    clear_rad > 0
      ? `every counted set at least ${say(clear_rad, 'rad')} away`
      : `some of the counted sets beyond it, by up to ${say(-clear_rad, 'rad')}`
  return `Nearest to ${what} with friction of ${pair.name} from ${from} to ${to} at rest: ${far}`
}
