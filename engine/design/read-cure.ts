import { quoted } from '../numbers/quote.ts'
import type { Coating } from './design.ts'
import type { Reading } from './reading.ts'

/** A temperature is no quantity that can be doubled or halved: it is read by itself and takes no expression. */
const temperaturePattern = /^\s*(-?\d+(?:\.\d+)?)\s*(?:°|deg\s?)?([CF])\s*$/
const timePattern = /^\s*(\d+(?:\.\d+)?)\s*(h|min)\s*$/

/** Water freezes at 32 °F, and 1.8 °F are 1 °C. */
const freezing_F = 32
const fahrenheitOfCelsius = 1.8
const seconds = { h: 3600, min: 60 }

/** No coating of metal is cured above; a furnace for glass is. */
const temperatureMost_C = 1000
/** A week. */
const timeMost_s = 7 * 24 * 3600

interface TypedCure {
  readonly temperature: string
  readonly time: string
}

/** The heat of a cure, in °C and s; NaN for what has been reported. @param place of the cure */
export function readCure(place: string, typed: TypedCure, reading: Reading): NonNullable<Coating['cure']> {
  return {
    temperature_C: within(`${place}.temperature`, typed.temperature, {
      value: celsius(typed.temperature),
      most: temperatureMost_C,
      needed: 'a temperature from 0 °C to 1000 °C, such as "150 °C" or "300 °F"',
      reading,
    }),
    time_s: within(`${place}.time`, typed.time, {
      value: secondsOf(typed.time),
      most: timeMost_s,
      needed: 'a time up to a week, such as "2 h" or "90 min"',
      reading,
    }),
  }
}

function celsius(typed: string): number {
  const [, amount, unit] = temperaturePattern.exec(typed) ?? []
  if (amount === undefined) return Number.NaN
  return unit === 'C' ? Number(amount) : (Number(amount) - freezing_F) / fahrenheitOfCelsius
}

function secondsOf(typed: string): number {
  const [, amount, unit] = timePattern.exec(typed) ?? []
  return amount === undefined ? Number.NaN : Number(amount) * seconds[unit as keyof typeof seconds]
}

interface Bounded {
  readonly value: number
  readonly most: number
  readonly needed: string
  readonly reading: Reading
}

function within(place: string, typed: string, { value, most, needed, reading }: Bounded): number {
  if (value >= 0 && value <= most) return value
  reading.report({ code: Number.isNaN(value) ? 'cannot be read' : 'wrong value', place, found: quoted(typed), needed })
  return Number.NaN
}
