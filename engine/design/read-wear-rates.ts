import wearRows from '../../tables/wear.json' with { type: 'json' }
import { parseQuantity } from '../numbers/quantity.ts'
import { quoted } from '../numbers/quote.ts'
import type { WearRate } from './design.ts'
import type { Reading } from './reading.ts'

function tableRate(text: string): number {
  const read = parseQuantity(text, 'wearRate')
  if (read.fault) throw new Error(`table of rates of wear: ${text}: ${read.fault.found}`)
  return read.value
}

/** Rows of the table of rates of wear, by name. */
export const tableWearRates: ReadonlyMap<string, WearRate> = new Map(
  wearRows.map(({ name, least, likely, most, source }) => {
    const [least_mm2_N, likely_mm2_N, most_mm2_N] = [least, likely, most].map(tableRate)
    return [name, { name, least_mm2_N, likely_mm2_N, most_mm2_N, source }]
  }),
)

/** Rates of the table and of the document, by name. A row of the table cannot be written over. */
export function readWearRates(reading: Reading): ReadonlyMap<string, WearRate> {
  const own = Object.entries(reading.document.wearRates ?? {}).map(([name, row]): [string, WearRate] => {
    const place = `wearRates.${name}`
    if (tableWearRates.has(name)) {
      reading.report({ code: 'wrong key', place, found: `${quoted(name)}, which the table has`, needed: 'a name of its own' })
    }
    const [least_mm2_N, likely_mm2_N, most_mm2_N] = (['least', 'likely', 'most'] as const).map((key) =>
      reading.above0(`${place}.${key}`, row[key], 'wearRate'),
    )
    if (least_mm2_N > likely_mm2_N || likely_mm2_N > most_mm2_N) {
      reading.report({
        code: 'wrong order',
        place,
        found: `${row.least}, ${row.likely}, ${row.most}`,
        needed: 'least ≤ likely ≤ most',
      })
    }
    const source = reading.text(`${place}.source`, row.source)
    return [name, { name, least_mm2_N, likely_mm2_N, most_mm2_N, source }]
  })
  return new Map([...tableWearRates, ...own])
}
