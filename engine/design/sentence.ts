import { printablePlace } from '../numbers/quote.ts'
import type { Problem } from './problem.ts'

const withStop = (text: string): string => (/[.?!]$/.test(text) ? text : `${text}.`)

/**
 * One problem as a line for people: file:line › place: what was found. What is needed. A way out.
 * For example `designs/heron.json:52 › pins.mcp.diameter: “3”, at column 1 a plain number. Needed: a length, such as 3 mm.`
 * This is the only place where problems become sentences.
 *
 * @param file as the reader knows it, or empty
 */
export function sentence(file: string, { place, line, found, needed, wayOut }: Problem): string {
  const at = line === undefined ? file : file === '' ? `line ${line}` : `${file}:${line}`
  const where = [at, printablePlace(place)].filter((step) => step !== '').join(' › ')
  const said = [withStop(found), withStop(`Needed: ${needed}`), ...(wayOut ? [withStop(wayOut)] : [])].join(' ')
  return where === '' ? said : `${where}: ${said}`
}
