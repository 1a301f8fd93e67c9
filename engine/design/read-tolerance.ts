import { kindWords, type QuantityKind } from '../numbers/quantity.ts'
import { quoted } from '../numbers/quote.ts'
import type { SizeLaw, Tolerance } from './design.ts'
import type { Document } from './document.ts'
import { fitClassDeviations, isFitClass } from './fits/fit-class.ts'
import { isoDeviations, zoneSurface } from './fits/iso-286.ts'
import type { Problem } from './problem.ts'
import type { Reading } from './reading.ts'

type TypedTolerance = NonNullable<NonNullable<Document['pins']>[string]['tolerance']>
type TypedLaw = Extract<TypedTolerance, object>

interface Toleranced {
  readonly place: string
  readonly kind: QuantityKind
  /** In the inside unit of `kind`. */
  readonly nominal: number
  /** A dimension may be that of a hole or of a shaft: its zone says which. */
  readonly surface: 'hole' | 'shaft' | 'any'
  readonly reading: Reading
}

/** Tolerance of a size as deviations from the nominal, in the inside unit of its kind; a zone is looked up in its table. */
export function readTolerance(typed: TypedTolerance, sized: Toleranced): Tolerance {
  if (typeof typed === 'string') return readZone(typed, sized)
  const law = readLaw(typed, sized)
  return { ...limitsOf(typed, sized), ...(law && { law }) }
}

function limitsOf(typed: TypedLaw, sized: Toleranced): Tolerance {
  if ('zone' in typed) return readZone(typed.zone, { ...sized, place: `${sized.place}.zone` })
  const { place, kind, nominal, reading } = sized
  if ('plus' in typed) {
    const plus = reading.atLeast(`${place}.plus`, typed.plus, { kind, least: 0 })
    const minus = reading.atLeast(`${place}.minus`, typed.minus, { kind, least: 0 })
    return { kind: 'limits', lower: 0 - minus, upper: plus }
  }
  const from = reading.quantity(`${place}.from`, typed.from, kind)
  const to = reading.quantity(`${place}.to`, typed.to, kind)
  if (from > to) {
    reading.report({ code: 'wrong order', place, found: `from ${typed.from} to ${typed.to}`, needed: 'from no larger than to' })
  }
  return { kind: 'limits', lower: from - nominal, upper: to - nominal }
}

function readZone(zone: string, { place, kind, nominal, surface, reading }: Toleranced): Tolerance {
  const fault = kind === 'length' ? zoneOnSurface(zone, surface) : onOtherKind(zone, kind)
  if (fault || Number.isNaN(nominal)) {
    if (fault) reading.report({ place, ...fault })
    return { kind: 'zone', zone, lower: Number.NaN, upper: Number.NaN }
  }
  const side = zoneSurface(zone) ?? (surface === 'hole' ? 'hole' : 'shaft')
  const read = isFitClass(zone) ? fitClassDeviations(zone, { size_mm: nominal, surface: side }) : isoDeviations(zone, nominal)
  if (read.fault) reading.report({ place, ...read.fault })
  return {
    kind: 'zone',
    zone,
    lower: read.deviations?.lower_mm ?? Number.NaN,
    upper: read.deviations?.upper_mm ?? Number.NaN,
  }
}

type Fault = Omit<Problem, 'place'>

const onOtherKind = (zone: string, kind: QuantityKind): Fault => ({
  code: 'wrong unit',
  found: `the zone ${quoted(zone)} on ${kindWords(kind)}`,
  needed: 'a zone only on a length',
})

function zoneOnSurface(zone: string, surface: Toleranced['surface']): Fault | undefined {
  if (isFitClass(zone)) return surface === 'any' ? classOfNeither(zone) : undefined
  const of = zoneSurface(zone)
  if (of === undefined) {
    const needed = 'an ISO 286 zone: H7 for a hole, h6 for a shaft; or a class of fit such as RC4'
    return { code: 'unknown name', found: quoted(zone), needed }
  }
  if (surface === 'any' || surface === of) return undefined
  if (surface === 'hole') {
    const found = `the shaft’s zone ${quoted(zone)} on a hole`
    return { code: 'wrong value', found, needed: 'a zone in capitals, such as H7' }
  }
  return { code: 'wrong value', found: `the hole’s zone ${quoted(zone)} on a pin`, needed: 'a zone in small letters, such as h6' }
}

const classOfNeither = (zone: string): Fault => ({
  code: 'wrong value',
  found: `the class of fit ${quoted(zone)} on a dimension`,
  needed: 'a size that is a hole’s or a shaft’s',
  wayOut: 'Give the class as tolerance of the hole and of the pin.',
})

function readLaw(typed: TypedLaw, { place, kind, reading }: Toleranced): SizeLaw | undefined {
  const { law, capability, measured } = typed
  if (measured === undefined) return sizeLawOf(place, { law, capability }, reading)
  if (law !== undefined || capability !== undefined) {
    const found = 'measured sizes beside a law'
    reading.report({ code: 'key too many', place, found, needed: 'one without the other', wayOut: 'Delete one of them.' })
  }
  const values = measured.map((size, index) => reading.quantity(`${place}.measured.${index}`, size, kind))
  return { kind: 'sample', values: [...values].sort((one, other) => one - other) }
}

interface TypedSizeLaw {
  readonly law?: 'uniform' | 'normal' | 'truncated' | undefined
  readonly capability?: string | number | undefined
}

/** A law that is stated, with a capability of 1 where none is; undefined for none. @param place of the law and its capability */
export function sizeLawOf(place: string, { law, capability }: TypedSizeLaw, reading: Reading): SizeLaw | undefined {
  if (capability !== undefined && law !== 'normal' && law !== 'truncated') {
    const found = `a capability with ${law === undefined ? 'no law' : `the law ${law}`}`
    reading.report({ code: 'wrong value', place: `${place}.capability`, found, needed: 'the law normal or truncated beside it' })
  }
  if (law === undefined || law === 'uniform') return law && { kind: law }
  return { kind: law, capability: capability === undefined ? 1 : readCapability(`${place}.capability`, capability, reading) }
}

/** Beyond these nobody has measured: a tenth is sorted scrap, ten are limits that no part comes near. */
const capabilities = { least: 0.1, most: 10 }

function readCapability(place: string, typed: string | number, reading: Reading): number {
  const value = reading.quantity(place, typed, 'number')
  if (value < capabilities.least || value > capabilities.most) {
    const needed = `from ${capabilities.least} to ${capabilities.most}`
    reading.report({ code: 'wrong value', place, found: quoted(String(typed)), needed })
  }
  return value
}
