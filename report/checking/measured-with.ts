import { gaugeWords, type HistoryReading } from './history.ts'
import { isStanding } from './standing-found.ts'

/** With what and by whom each reading that counts was taken, by its characteristic and visit. */
export type MeasuredWith = ReadonlyMap<string, string>

/** Key of a reading among those of its set. */
export const withKey = (characteristic: string, visit: HistoryReading['visit']): string => `${characteristic} ${visit}`

/** What the first-article sheet says of the gauge: the one that was used, since which calibration, and who read it. */
export function measuredWith(readings: readonly HistoryReading[]): MeasuredWith {
  return new Map(
    readings.filter(isStanding).map((reading) => {
      const { characteristic, visit, by, date, who } = reading
      const day = date === undefined ? '' : ` on ${date}`
      return [withKey(characteristic, visit), `${gaugeWords(reading) ?? 'gauge not said'}; ${by ?? who}${day}`] as const
    }),
  )
}
