/** Springs as bought, and what wearers give. */
import type { Design, Spring } from '../../design/design.ts'
import { placeWords } from '../../design/edit/field-words.ts'
import { variationUnstated } from '../../design/read-variation-rules.ts'
import { lawOfRange } from './law-of.ts'
import type { Source, SourceUnit } from './source.ts'
import { addShift, type Varying } from './varying.ts'

interface Property {
  readonly key: string
  readonly unit: SourceUnit
  readonly nominal: number
  readonly share: number | undefined
  readonly set: (spring: Spring, value: number) => Spring
}

/** A source for every property of a spring that may be off. */
export function springSources(design: Design): readonly Varying[] {
  const { springs, variation = variationUnstated } = design
  return springs.flatMap((spring, index) =>
    propertiesOf(spring).flatMap(({ key, unit, nominal, share = 0, set }) => {
      const half = Math.abs(nominal) * share
      if (half === 0) return []
      const range = { least: nominal - half, most: nominal + half }
      const steps = ['springs', spring.id]
      const words = `${placeWords(steps)}: ${key}`
      const law = lawOfRange(range, variation.springs)
      const source: Source = { id: `${steps.join('.')}.${key}`, words, unit, nominal, law, ...range, of: 'sets' }
      return [
        {
          sources: [source],
          put: ([value], sizes) => {
            const before = sizes.springs.get(index)
            sizes.springs.set(index, (one) => set(before ? before(one) : one, value))
          },
        },
      ]
    }),
  )
}

function propertiesOf(spring: Spring): readonly Property[] {
  if (spring.kind === 'torsion') {
    const { within, rate_Nmm_rad, preload_Nmm } = spring
    return [
      {
        key: 'rate',
        unit: 'N·mm/rad',
        nominal: rate_Nmm_rad,
        share: within?.rate_ratio,
        set: (one, value) => (one.kind === 'torsion' ? { ...one, rate_Nmm_rad: value } : one),
      },
      {
        key: 'preload',
        unit: 'N·mm',
        nominal: preload_Nmm,
        share: within?.preload_ratio,
        set: (one, value) => (one.kind === 'torsion' ? { ...one, preload_Nmm: value } : one),
      },
    ]
  }
  const { within, rate_N_mm, initial_N } = spring
  return [
    {
      key: 'rate',
      unit: 'N/mm',
      nominal: rate_N_mm,
      share: within?.rate_ratio,
      set: (one, value) => (one.kind === 'torsion' ? one : { ...one, rate_N_mm: value }),
    },
    {
      key: 'initial',
      unit: 'N',
      nominal: initial_N,
      share: within?.initial_ratio,
      set: (one, value) => (one.kind === 'torsion' ? one : { ...one, initial_N: value }),
    },
  ]
}

/** What wearers give at the drive, when a range of wearers is stated. */
export function wearerSources({ drive, variation }: Design): readonly Varying[] {
  const range = variation?.effortOfWearers
  const nominal = drive.travel.effortMost
  if (!range || nominal === undefined || range.most <= range.least) return []
  const place = 'drive.effortMost'
  const source: Source = {
    id: place,
    words: 'what a wearer gives at the drive',
    unit: drive.kind === 'turn' ? 'N·mm' : 'N',
    nominal,
    law: lawOfRange(range, 'uniform'),
    ...range,
    of: 'wearers',
  }
  return [{ sources: [source], put: ([value], sizes) => addShift(sizes, place, value - nominal) }]
}
