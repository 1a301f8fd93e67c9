import type { Design, TolerancePrices, VariationRules } from './design.ts'
import type { Document } from './document.ts'
import type { GeneralClass } from './fits/general-tolerance.ts'
import { sizeLawOf } from './read-tolerance.ts'
import type { Reading } from './reading.ts'

/** Nobody has measured: everything within its limits is as likely as the next. */
export const variationUnstated: VariationRules = {
  sizes: { kind: 'uniform' },
  positions: 'uniform',
  coatings: 'uniform',
  friction: 'uniform',
  springs: 'uniform',
}

/** The rules of the document for what varies, with those that are not stated; undefined when it states none. */
export function readVariationRules(reading: Reading): Design['variation'] {
  const typed = reading.document.variation
  if (!typed) return undefined
  const { positions, coatings, friction, springs, wearers, prices } = typed
  const effort = wearers?.effortMost && effortOf(wearers.effortMost, reading)
  return {
    ...variationUnstated,
    ...(typed.sizes && sizesOf(typed.sizes, reading)),
    ...(positions && { positions }),
    ...(coatings && { coatings }),
    ...(friction && { friction }),
    ...(springs && { springs }),
    ...(effort && { effortOfWearers: effort }),
    ...(prices && { prices: prices.map((one, index) => pricesOf(`variation.prices.${index}`, one, reading)) }),
  }
}

type TypedVariation = NonNullable<Document['variation']>

function sizesOf(typed: NonNullable<TypedVariation['sizes']>, reading: Reading): Pick<VariationRules, 'sizes'> | undefined {
  const law = sizeLawOf('variation.sizes', typed, reading)
  return law && { sizes: law }
}

type TypedEffort = NonNullable<NonNullable<TypedVariation['wearers']>['effortMost']>

function effortOf(typed: TypedEffort, reading: Reading): VariationRules['effortOfWearers'] {
  const { drive } = reading.document
  if (!drive) return undefined
  const place = 'variation.wearers.effortMost'
  if (drive.effortMost === undefined) {
    const needed = 'what this wearer gives, at drive.effortMost'
    reading.report({ code: 'missing', place, found: 'a range of wearers, and no wearer', needed })
  }
  const kind = drive.kind === 'turn' ? 'couple' : 'force'
  const least = reading.above0(`${place}.from`, typed.from, kind)
  const most = reading.above0(`${place}.to`, typed.to, kind)
  if (least > most) {
    const found = `from ${typed.from} to ${typed.to}`
    reading.report({ code: 'wrong order', place, found, needed: 'from no larger than to' })
  }
  return { least, most }
}

type TypedPrices = NonNullable<TypedVariation['prices']>[number]

/** Whether there is such a size, and such a tolerance of it, is seen when what varies is read. */
function pricesOf(place: string, { size, drawn, offers, source }: TypedPrices, reading: Reading): TolerancePrices {
  const price = (at: string, typed: string | number): number => reading.atLeast(at, typed, { kind: 'number', least: 0 })
  return {
    size: reading.text(`${place}.size`, size),
    drawn: price(`${place}.drawn`, drawn),
    offers: offers.map((offer, index) => ({
      tolerance: reading.text(`${place}.offers.${index}.tolerance`, offer.tolerance),
      price: price(`${place}.offers.${index}.price`, offer.price),
    })),
    source: reading.text(`${place}.source`, source),
  }
}

/** The class of ISO 2768-1 that the document names. */
export function readGeneralTolerance({ document }: Reading): GeneralClass | undefined {
  return document.generalTolerance?.at(-1) as GeneralClass | undefined
}
