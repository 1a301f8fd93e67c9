import { quoted } from '../numbers/quote.ts'
import type { FrictionPair, PairWear, WearRate } from './design.ts'
import type { Document } from './document.ts'
import type { Reading } from './reading.ts'

type TypedWear = NonNullable<NonNullable<Document['friction']>[string]['wear']>
type Pairs = ReadonlyMap<string, FrictionPair>

/**
 * Friction pairs with how they wear, each leading to the pair that takes over when it is worn through.
 *
 * @param pairs by name, as read without their wear
 */
export function withWear(reading: Reading, { pairs, rates }: { pairs: Pairs; rates: ReadonlyMap<string, WearRate> }): Pairs {
  const done = new Map<string, FrictionPair>()
  const worn = (name: string, above: readonly string[]): FrictionPair | undefined => {
    const pair = done.get(name) ?? pairs.get(name)
    const typed = reading.document.friction?.[name]?.wear
    if (!pair || done.has(name) || !typed) return pair
    const place = `friction.${name}.wear`
    const rate = rates.get(typed.rate)
    if (!rate && !reading.wasTakenOut(`wearRates.${typed.rate}`)) {
      reading.unknownName(`${place}.rate`, { typed: typed.rate, what: 'a rate of wear', known: [...rates.keys()] })
    }
    const film = filmOf(place, typed, { reading, pairs, above: [...above, name], worn })
    if (rate) done.set(name, { ...pair, wear: { rate, ...(film && { film }) } })
    return done.get(name) ?? pair
  }
  return new Map([...pairs].map(([name, pair]) => [name, worn(name, []) ?? pair]))
}

interface Chain {
  readonly reading: Reading
  readonly pairs: Pairs
  /** Names of the pairs that lead here, this one included. */
  readonly above: readonly string[]
  readonly worn: (name: string, above: readonly string[]) => FrictionPair | undefined
}

function filmOf(place: string, typed: TypedWear, { reading, pairs, above, worn }: Chain): PairWear['film'] {
  if (typed.film === undefined && typed.under === undefined) return undefined
  if (typed.film === undefined || typed.under === undefined) {
    const [missing, other] = typed.film === undefined ? ['film', 'under'] : ['under', 'film']
    const needed = missing === 'film' ? 'the depth at which it is worn through' : 'the friction pair that takes over'
    reading.report({ code: 'missing', place: `${place}.${missing}`, found: `${other} without ${missing}`, needed })
    return undefined
  }
  const depth_mm = reading.above0(`${place}.film`, typed.film, 'length')
  if (above.includes(typed.under)) {
    const found = [...above, typed.under].map((name) => quoted(name)).join(', then ')
    reading.report({ code: 'ring', place: `${place}.under`, found, needed: 'pairs that end in one that is not worn through' })
    return undefined
  }
  if (!pairs.has(typed.under) && !reading.wasTakenOut(`friction.${typed.under}`)) {
    reading.unknownName(`${place}.under`, { typed: typed.under, what: 'a pair of friction', known: [...pairs.keys()] })
  }
  const under = worn(typed.under, above)
  return under && { depth_mm, under }
}
