import type { Design, Part } from '../design/design.ts'
import type { Variation } from '../variation/sources/source.ts'

/** What one holds in the hand to measure it, and gives a serial number: a part, a pin; a lot of coated pieces; else the finger as a whole. */
export interface Piece {
  readonly kind: 'part' | 'pin' | 'coating' | 'finger'
  /** In the document; of the finger the name of the design. */
  readonly id: string
  readonly title: string
}

/** All pieces of a finger: parts, pins, the finger itself, coatings. */
export function piecesOf({ parts, pins, name, title }: Design): readonly Piece[] {
  const coated = [...parts, ...pins].flatMap(({ coating }) => (coating ? [coating.name] : []))
  return [
    ...parts.map(({ id, name: own }): Piece => ({ kind: 'part', id, title: own })),
    ...pins.map(({ id }): Piece => ({ kind: 'pin', id, title: `Pin ${id}` })),
    { kind: 'finger', id: name, title },
    ...[...new Set(coated)].map((id): Piece => ({ kind: 'coating', id, title: `Coating: ${id}` })),
  ]
}

/** The piece on which a source is measured: by its place, or the one part that changes with a dimension; else the finger as a whole. */
export function pieceOfSource(variation: Variation, index: number): Piece {
  const pieces = piecesOf(variation.design)
  const { id } = variation.sources[index]
  const [section, name] = id.split('.')
  const changed = section === 'parts' ? [name] : section === 'dimensions' ? partsThatChange(variation, index) : []
  const found = pieces.find((piece) =>
    section === 'coatings'
      ? piece.kind === 'coating' && id === `coatings.${piece.id}.thickness`
      : changed.length === 1 && piece.kind === 'part' && piece.id === changed[0],
  )
  return found ?? (pieces.find(({ kind }) => kind === 'finger') as Piece)
}

/** Ids of the parts that are made otherwise when a size is at the end of its range. Where they are drawn says nothing of how they are made. */
function partsThatChange({ design, sources, setOf }: Variation, index: number): readonly string[] {
  const valuesWith = (value: number): number[] => sources.map(({ nominal }, place) => (place === index ? value : nominal))
  const [drawn, moved] = [sources[index].nominal, sources[index].most].map((value) => setOf(valuesWith(value)).value)
  if (!drawn || !moved) return []
  return design.parts.flatMap(({ id }, part) => (madeWords(drawn.parts[part]) === madeWords(moved.parts[part]) ? [] : [id]))
}

const madeWords = ({ outline, holes, edges, thickness_mm }: Part): string =>
  JSON.stringify({ outline, holes, edges, thickness_mm })
