/** Edges and roughness that are not stated, or that a shop does not reach with its usual tools. */
import type { Part } from '../design/design.ts'
import type { EdgeState } from '../design/sections/surfaces.ts'
import type { MakingDoubt } from './doubt.ts'
import type { DrawnHole, DrawnPart, Limits, ShopDesign } from './drawn-sizes.ts'
import { depthOf } from './part-doubts.ts'
import { shopLimits } from './shop-limits.ts'

/** Doubts of every part, hole, stop edge and pin of a design. */
export function surfaceDoubts(shop: ShopDesign): readonly MakingDoubt[] {
  const { pins, stops } = shop.variation.design
  const running = new Set(
    pins.flatMap(({ joins, fixedIn }) => joins.flatMap(({ part, hole }) => (part === fixedIn ? [] : [`${part}.${hole}`]))),
  )
  const touched = new Set(stops.map(({ against }) => `${against.part}.${against.edge}`))
  return [
    ...shop.parts.flatMap((drawn, index) => [
      ...edgeDoubts(drawn.part),
      ...drawn.holes.flatMap((hole, at) => holeDoubts(drawn, hole, running.has(`${index}.${at}`))),
      ...stopDoubts(drawn.part, (edge) => touched.has(`${index}.${edge}`)),
    ]),
    ...shop.pins.flatMap(({ pin, diameter, beforeCoating }) => [
      ...(pin.edge === undefined ? [noEdge(`pins.${pin.id}.edge`)] : roomDoubts(`pins.${pin.id}.edge`, pin.edge)),
      ...roughDoubts(`pins.${pin.id}.roughness`, pin.roughness_mm, beforeCoating ?? diameter.limits),
    ]),
  ]
}

function edgeDoubts(part: Part): readonly MakingDoubt[] {
  const { id, outsideEdges, insideEdges } = part
  const place = `parts.${id}.outsideEdges`
  const states = [
    ...(outsideEdges === undefined ? [] : [{ place, state: outsideEdges }]),
    ...(insideEdges === undefined ? [] : [{ place: `parts.${id}.insideEdges`, state: insideEdges }]),
  ]
  return [
    ...(outsideEdges === undefined ? [noEdge(place)] : thinDoubts(place, outsideEdges, part)),
    ...states.flatMap((one) => roomDoubts(one.place, one.state)),
  ]
}

function noEdge(place: string): MakingDoubt {
  return {
    place,
    found: 'edges of which nothing is stated',
    needed: 'how far they are broken, such as -0.3 mm (ISO 13715)',
    wayOut: 'Type it, or agree it on the order: an edge that nobody names comes with its burr.',
  }
}

function roomDoubts(place: string, { from_mm, to_mm }: EdgeState): readonly MakingDoubt[] {
  const room_mm = Math.abs(to_mm - from_mm)
  if (room_mm >= shopLimits.edgeRoom_mm - ROUNDING) return []
  return [
    {
      place,
      found: `${text(room_mm)} mm between the bounds of an edge`,
      needed: `at least ${text(shopLimits.edgeRoom_mm)} mm, which a hand or a brush holds`,
      wayOut: 'Widen the bounds, or have the edge cut as a chamfer of its own.',
    },
  ]
}

function thinDoubts(place: string, { to_mm }: EdgeState, part: Part): readonly MakingDoubt[] {
  const slices = part.across?.map((slice) => slice.to_mm - slice.from_mm) ?? []
  const thinnest_mm = slices.length > 0 ? Math.min(...slices) : depthOf(part)
  const most_mm = shopLimits.edgeOfThickness_ratio * (thinnest_mm ?? Number.POSITIVE_INFINITY)
  if (-to_mm <= most_mm + ROUNDING) return []
  return [
    {
      place,
      found: `edges broken by ${text(-to_mm)} mm on metal ${text(thinnest_mm ?? 0)} mm thick`,
      needed: `at most ${text(most_mm)} mm, so that half of it stays`,
      wayOut: 'Break them less, or leave the plate thicker.',
    },
  ]
}

function holeDoubts(
  { part }: DrawnPart,
  { hole, diameter, beforeCoating }: DrawnHole,
  isRunning: boolean,
): readonly MakingDoubt[] {
  const place = `parts.${part.id}.holes.${hole.id}`
  const roughness_mm = hole.roughness_mm ?? part.roughness_mm
  const edge = hole.edge === undefined ? [] : roomDoubts(`${place}.edge`, hole.edge)
  if (!isRunning) return edge
  const rough = { place: `${place}.roughness`, found: `Ra ${micrometres(roughness_mm ?? 0)} µm in a hole that a pin turns in` }
  const tooRough = {
    ...rough,
    needed: `at most ${micrometres(shopLimits.runningRoughness_mm)} µm`,
    wayOut: 'Have it reamed, and state its Ra.',
  }
  const tooFine = {
    ...rough,
    needed: `no finer than ${micrometres(shopLimits.reamedRoughness_mm)} µm, which a reamer leaves`,
    wayOut: 'Allow more, or ask for a price with honing.',
  }
  return [
    ...edge,
    ...roughDoubts(`${place}.roughness`, roughness_mm, beforeCoating ?? diameter.limits),
    ...((roughness_mm ?? 0) > shopLimits.runningRoughness_mm + TINY ? [tooRough] : []),
    ...((roughness_mm ?? 1) < shopLimits.reamedRoughness_mm - TINY ? [tooFine] : []),
  ]
}

function stopDoubts({ id, edges, roughness_mm }: Part, isTouched: (edge: number) => boolean): readonly MakingDoubt[] {
  return edges.flatMap((edge, index) =>
    isTouched(index) ? roughDoubts(`parts.${id}.edges.${edge.id}.roughness`, edge.roughness_mm ?? roughness_mm, undefined) : [],
  )
}

/** Not stated, or too rough for its limits to be told. */
function roughDoubts(place: string, roughness_mm: number | undefined, limits: Limits | undefined): readonly MakingDoubt[] {
  if (roughness_mm === undefined) {
    const wayOut = 'Type it, or agree it on the order: friction and wear hang on it.'
    return [{ place, found: 'a surface that rubs, without Ra', needed: 'its roughness, such as 0.8 um', wayOut }]
  }
  const most_mm =
    shopLimits.roughnessOfLimits_ratio * (limits === undefined ? Number.POSITIVE_INFINITY : limits.most - limits.least)
  if (roughness_mm <= most_mm + TINY) return []
  return [
    {
      place,
      found: `Ra ${micrometres(roughness_mm)} µm within limits of ${micrometres(most_mm / shopLimits.roughnessOfLimits_ratio)} µm`,
      needed: `at most ${micrometres(most_mm)} µm, a tenth of the limits: else the peaks fill them`,
      wayOut: 'Ask for a finer surface, or widen the limits.',
    },
  ]
}

const ROUNDING = 1e-9
/** Of a roughness, mm: a thousandth of a micrometre's hundredth. */
const TINY = 1e-8
const PLACES = 3
const MICROMETRES = 1000
const text = (value_mm: number): string => String(Number(value_mm.toFixed(PLACES)))
const micrometres = (value_mm: number): string => String(Number((value_mm * MICROMETRES).toFixed(2)))
