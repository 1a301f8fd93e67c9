import { limits } from '../numbers/limits.ts'
import { quoted } from '../numbers/quote.ts'
import type { EdgeState, Surface } from './design.ts'
import type { Document } from './document.ts'
import type { Reading } from './reading.ts'

type TypedPart = NonNullable<Document['parts']>[string]
type TypedSurface = Pick<NonNullable<TypedPart['holes']>[string], 'edge' | 'edgeFrom' | 'roughness'>

/** Edge and roughness of a hole or of a pin. @param place of it */
export function readSurface(place: string, { edge, edgeFrom, roughness }: TypedSurface, reading: Reading): Surface {
  const state = readEdgeState(place, { to: ['edge', edge], from: ['edgeFrom', edgeFrom] }, reading)
  return { ...(state && { edge: state }), ...readRoughness(place, roughness, reading) }
}

/** Edges and roughness that hold all over a part. @param place of it */
export function readSurfacesOfPart(place: string, typed: TypedPart, reading: Reading) {
  const { outsideEdges, outsideEdgesFrom, insideEdges, insideEdgesFrom } = typed
  const outside = readEdgeState(
    place,
    { to: ['outsideEdges', outsideEdges], from: ['outsideEdgesFrom', outsideEdgesFrom] },
    reading,
  )
  const inside = readEdgeState(place, { to: ['insideEdges', insideEdges], from: ['insideEdgesFrom', insideEdgesFrom] }, reading)
  return {
    ...(outside && { outsideEdges: outside }),
    ...(inside && { insideEdges: inside }),
    ...readRoughness(place, typed.roughness, reading),
  }
}

/** @param place of what is rough */
export function readRoughness(place: string, typed: string | undefined, reading: Reading): Pick<Surface, 'roughness_mm'> {
  if (typed === undefined) return {}
  const roughness_mm = reading.above0(`${place}.roughness`, typed, 'length')
  if (roughness_mm > limits.roughness_mm) {
    const needed = `at most ${limits.roughness_mm * MICROMETRES} µm, the roughest of the usual grades`
    const wayOut = 'Ra is typed in µm, such as 1.6 um.'
    reading.report({ code: 'too large', place: `${place}.roughness`, found: quoted(typed), needed, wayOut })
  }
  return { roughness_mm }
}

const MICROMETRES = 1000

interface TypedState {
  /** Key and text of each bound. */
  readonly to: readonly [string, string | undefined]
  readonly from: readonly [string, string | undefined]
}

function readEdgeState(place: string, { to, from }: TypedState, reading: Reading): EdgeState | undefined {
  const [[toKey, toTyped], [fromKey, fromTyped]] = [to, from]
  if (toTyped === undefined) {
    if (fromTyped === undefined) return undefined
    const found = `${fromKey} without ${toKey}`
    reading.report({ code: 'missing', place: `${place}.${toKey}`, found, needed: 'how far the edge may go at most' })
    return undefined
  }
  const to_mm = reading.quantity(`${place}.${toKey}`, toTyped, 'length')
  const from_mm = fromTyped === undefined ? 0 : reading.quantity(`${place}.${fromKey}`, fromTyped, 'length')
  if (Math.abs(to_mm - from_mm) < limits.sizeLeast_mm) {
    const found = fromTyped === undefined ? quoted(toTyped) : `from ${fromTyped} to ${toTyped}`
    const wayOut = 'A sharp edge is from -0.05 mm to 0.05 mm.'
    reading.report({ code: 'too small', place: `${place}.${toKey}`, found, needed: 'room between the two bounds', wayOut })
  }
  if (from_mm * to_mm > 0 && Math.abs(from_mm) > Math.abs(to_mm)) {
    const found = `at least ${fromTyped} and at most ${toTyped}`
    reading.report({ code: 'wrong order', place: `${place}.${fromKey}`, found, needed: `no more than ${toKey}` })
  }
  return { from_mm, to_mm }
}
