/**
 * Parts that bear load and do not say how thick they are: no stress can be told in them, so a question about strength is refused.
 *
 * A design of motion alone states no thickness and is sound. It is refused as it is read where a requirement asks a margin of a part, and
 * where somebody asks about strength although no requirement does.
 */
import type { Design } from './design.ts'
import type { Problem } from './problem.ts'
import type { Reading } from './reading.ts'

type Drawn = Pick<Design, 'parts' | 'pins' | 'stops' | 'loadCases'>

/** One problem a part that a pin goes through without thickness; none without a load case, which asks for no strength. */
export function missingThickness(design: Drawn): readonly Problem[] {
  return design.loadCases.length === 0 ? [] : thinProblems(design, borneBy(design, 'strength.least'))
}

/** Reports every part whose thickness a required margin of strength needs. */
export function reportMissingThickness(reading: Reading, design: Drawn & Pick<Design, 'requirements'>): void {
  const asked = design.requirements.flatMap(({ figure }) => borneBy(design, figure))
  const isWhole = (part: number): boolean => !reading.hasBrokenIn(`parts.${design.parts[part]?.id}`)
  for (const problem of thinProblems(design, asked.filter(isWhole))) reading.report(problem)
}

/** Parts whose thickness a figure needs; none for what is no margin of theirs. Those of all pins for the least margin. */
function borneBy({ parts, pins, stops }: Drawn, figure: string): readonly number[] {
  const [question, kind, id] = figure.split('.')
  if (question !== 'strength') return []
  if (kind === 'part' || kind === 'link') return parts.flatMap((part, index) => (part.id === id ? [index] : []))
  if (kind === 'stop') return stops.flatMap((stop) => (stop.id === id ? [stop.round.part, stop.against.part] : []))
  if (kind === 'pin') return pins.flatMap((pin) => (pin.id === id ? pin.joins.map(({ part }) => part) : []))
  return kind === 'least' ? pins.flatMap(({ joins }) => joins.map(({ part }) => part)) : []
}

function thinProblems({ parts }: Drawn, indices: readonly number[]): readonly Problem[] {
  return parts.flatMap(({ id, across = [], thickness_mm }, index) => {
    if (thickness_mm !== undefined || across.length > 0 || !indices.includes(index)) return []
    return {
      code: 'missing',
      place: `parts.${id}.thickness`,
      found: 'nothing, and a load goes through the part',
      needed: 'how thick it is, for its margins of strength',
      wayOut: 'State it, or in across where the part lies across the finger.',
    }
  })
}
