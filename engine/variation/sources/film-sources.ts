/** Thickness of coatings: one source a coating, because one batch coats all surfaces of a set that carry it. */
import type { Coating, Design, FaceName, Part } from '../../design/design.ts'
import type { CoatedFeature } from '../../design/fits/coated-features.ts'
import { changePerThickness } from '../../design/fits/coated-size.ts'
import { isMasked } from '../../design/masked-faces.ts'
import { variationUnstated } from '../../design/read-variation-rules.ts'
import { lawOfRange } from './law-of.ts'
import { addShift, type Varying } from './varying.ts'

/** A size that follows the thickness of one coating. */
interface Follower {
  readonly coating: Coating
  readonly place: string
  /** Change of the size over that of the thickness. */
  readonly per: number
}

/** Diameters, radii of round stops, and edges with their gap. */
export function filmSources(design: Design, coated: readonly CoatedFeature[]): readonly Varying[] {
  const followers = [...coated.map(ofDiameter), ...ofStops(design)]
  const names = [...new Set(followers.map(({ coating }) => coating.name))]
  return names.flatMap((name) =>
    filmVarying(
      design,
      followers.filter(({ coating }) => coating.name === name),
    ),
  )
}

const ofDiameter = ({ coating, place, surface }: CoatedFeature): Follower => ({
  coating,
  place: `${place}.diameter`,
  per: changePerThickness(coating, surface),
})

function ofStops({ stops, parts }: Design): readonly Follower[] {
  return stops.flatMap(({ id, round, against, coating }) => {
    const place = `stops.${id}`
    const end = coating ?? coatingOf(parts[round.part], 'edges')
    const owner = parts[against.part]
    const edge = coatingOf(owner, `edges.${owner.edges[against.edge].id}`)
    return [
      ...(end ? [{ coating: end, place: `${place}.round.radius`, per: 1 - end.inward_ratio }] : []),
      ...(edge ? [{ coating: edge, place: `${place}.gap`, per: edge.inward_ratio - 1 }] : []),
    ]
  })
}

/** What a face carries; nothing where it is masked. */
function coatingOf(part: Part, face: FaceName): Coating | undefined {
  return isMasked(part, face) ? undefined : part.coating
}

function filmVarying({ variation = variationUnstated }: Design, followers: readonly Follower[]): readonly Varying[] {
  const { name, thickness } = followers[0].coating
  const range = { least: thickness.least_mm, most: thickness.most_mm }
  const nominal = (range.least + range.most) / 2
  if (range.most <= range.least) return []
  const law = lawOfRange(range, variation.coatings)
  const source = {
    id: `coatings.${name}.thickness`,
    words: `thickness of ${name}`,
    unit: 'mm',
    nominal,
    law,
    ...range,
    of: 'sets',
  } as const
  return [
    {
      sources: [source],
      put: ([thickness_mm], sizes) => {
        for (const { place, per } of followers) addShift(sizes, place, per * (thickness_mm - nominal))
      },
    },
  ]
}
