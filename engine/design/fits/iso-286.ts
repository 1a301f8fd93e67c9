/**
 * Zones of ISO 286-1:2010 for holes and shafts up to 50 mm, from its tables: the formulas behind them differ by 1 µm and more in the first
 * band, because the printed values are rounded.
 *
 * A zone is a letter, which says where it begins, and a grade, which says how wide it is. A shaft's zone begins at the tabulated deviation.
 * A hole's zone A to H is the mirror image of the shaft's. From K on the mirror image is shifted by Δ = IT n − IT (n − 1), up to grade 8 for
 * K, M and N and up to grade 7 for P and beyond, so that H7/p6 and P7/h6 are the same fit; above 3 mm only (clause 4.3.2.5, from memory).
 */
import table from '../../../tables/iso-286.json' with { type: 'json' }
import { quoted } from '../../numbers/quote.ts'
import { band, bounds } from './band.ts'
import type { ZoneRead } from './deviations.ts'

interface LetterRow {
  readonly letter: string
  /** Absent: all grades that no other row of the letter has. */
  readonly grades?: readonly number[]
  readonly limit: string
  readonly um: Readonly<Record<string, number | undefined>>
}

const letterRows: readonly LetterRow[] = table.deviations
const gradeRows = new Map<string, Readonly<Record<string, number>>>(table.grades.map(({ grade, um }) => [grade, um]))
const gradeBounds = bounds(table.grades[0].um)
/** The letter h has all bands. */
const letterBounds = bounds(letterRows.find(({ letter }) => letter === 'h')?.um ?? {})
const largest_mm = Number(gradeBounds.at(-1))

const zonePattern = /^([A-Za-z]{1,2})(01|\d{1,2})$/
const micrometre_mm = 1e-3

/** Up to here no Δ is taken, and K and N have their own rule. */
const firstBand_mm = 3
/** Up to here the letters a and b, a coarse N and grades from 14 on are not used. */
const smallest_mm = 1
const grades = { coarse: 14, deltaLeast: 3, deltaMost: 8, deltaMostFromP: 7 }

/** The letters of shafts; those of holes are their capitals. */
const letters: readonly string[] = [...new Set([...letterRows.map(({ letter }) => letter.toLowerCase()), 'js'])]

interface Zone {
  readonly letter: string
  readonly grade: string
  readonly isHole: boolean
  readonly size_mm: number
}

function zoneOf(typed: string, size_mm: number): Zone | undefined {
  const [, letter, grade] = zonePattern.exec(typed) ?? []
  if (letter === undefined || !letters.includes(letter.toLowerCase())) return undefined
  const isHole = letter === letter.toUpperCase()
  return isHole || letter === letter.toLowerCase() ? { letter: letter.toLowerCase(), grade, isHole, size_mm } : undefined
}

/** Whether a text is a zone of a hole (capitals) or of a shaft, whatever its grade; undefined for anything else. */
export function zoneSurface(typed: string): 'hole' | 'shaft' | undefined {
  const zone = zoneOf(typed, firstBand_mm)
  return zone && (zone.isHole ? 'hole' : 'shaft')
}

/**
 * Deviations of a zone such as H7 or h6.
 *
 * @param size_mm nominal diameter, above 0 up to 50 mm
 * @returns a fault where the standard has no such zone at this size; it names those that it has
 */
export function isoDeviations(typed: string, size_mm: number): ZoneRead {
  const zone = zoneOf(typed, size_mm)
  const width = zone && width_um(zone.grade, size_mm)
  if (!zone || width === undefined) return { fault: unknownGrade(typed, size_mm) }
  const begin = beginOf(zone)
  if (!begin) return { fault: unknownLetter(zone) }
  const lower_um = 'lower' in begin ? begin.lower : begin.upper - width
  return { deviations: { lower_mm: lower_um * micrometre_mm, upper_mm: (lower_um + width) * micrometre_mm } }
}

/** Width of a grade; undefined for one that is not there at this size. */
function width_um(grade: string, size_mm: number): number | undefined {
  const at = band(size_mm, gradeBounds)
  if (size_mm <= smallest_mm && Number(grade) >= grades.coarse) return undefined
  return at === undefined ? undefined : gradeRows.get(grade)?.[at]
}

/** The limit of a zone that stands nearer to the nominal. */
type Begin = { readonly lower: number } | { readonly upper: number }

function beginOf(zone: Zone): Begin | undefined {
  const { letter, grade, isHole, size_mm } = zone
  if (letter === 'js') return { lower: -(width_um(grade, size_mm) ?? Number.NaN) / 2 }
  if (size_mm <= smallest_mm && (letter === 'a' || letter === 'b')) return undefined
  if (!isHole) return tabulated(letter, zone)
  return letter === 'j' ? tabulated('J', zone) : holeBegin(zone)
}

function tabulated(letter: string, { grade, size_mm }: Pick<Zone, 'grade' | 'size_mm'>): Begin | undefined {
  const at = band(size_mm, letterBounds)
  const row = letterRows.find((one) => one.letter === letter && (one.grades?.includes(Number(grade)) ?? true))
  const um = at === undefined ? undefined : row?.um[at]
  if (um === undefined) return undefined
  return row?.limit === 'upper' ? { upper: um } : { lower: um }
}

/** The deviation of k that K mirrors is that of its grades 4 to 7. */
const mirrorGrade = '7'

function holeBegin(zone: Zone): Begin | undefined {
  const { letter, grade, size_mm } = zone
  const shaft = tabulated(letter, letter === 'k' ? { grade: mirrorGrade, size_mm } : zone)
  if (!shaft) return undefined
  if ('upper' in shaft) return { lower: 0 - shaft.upper }
  const isNear = letter === 'k' || letter === 'm' || letter === 'n'
  const number = grade === '01' ? -1 : Number(grade)
  if (isNear && number > grades.deltaMost) return coarseBegin(zone, shaft.lower)
  const hasDelta = number <= (isNear ? grades.deltaMost : grades.deltaMostFromP)
  if (hasDelta && number < grades.deltaLeast) return undefined
  return { upper: 0 - shaft.lower + (hasDelta ? delta_um(number, size_mm) : 0) }
}

function delta_um(grade: number, size_mm: number): number {
  if (size_mm <= firstBand_mm) return 0
  return (width_um(`${grade}`, size_mm) ?? Number.NaN) - (width_um(`${grade - 1}`, size_mm) ?? Number.NaN)
}

/** K, M and N above grade 8: K up to 3 mm only, N begins at its size but in the first band, M keeps the mirror image. */
function coarseBegin({ letter, size_mm }: Zone, shaft_um: number): Begin | undefined {
  const isFirst = size_mm <= firstBand_mm
  if (letter === 'k') return isFirst ? { upper: 0 } : undefined
  if (letter === 'n' && size_mm <= smallest_mm) return undefined
  return { upper: letter === 'n' && !isFirst ? 0 : 0 - shaft_um }
}

function unknownGrade(typed: string, size_mm: number) {
  if (size_mm > largest_mm) {
    const found = `the zone ${quoted(typed)} on ${size_mm} mm`
    const wayOut = 'Give plus and minus, or from and to.'
    return { code: 'too large', found, needed: `a size up to ${largest_mm} mm for a zone`, wayOut }
  }
  const known = [...gradeRows.keys()].filter((grade) => width_um(grade, size_mm) !== undefined)
  const needed = `a letter with a grade of ${known[0]} to ${known.at(-1)}, such as H7 for a hole or h6 for a shaft`
  return { code: 'unknown name', found: `${quoted(typed)} on ${size_mm} mm`, needed }
}

/** Names the letters that have this grade at this size. */
function unknownLetter(zone: Zone) {
  const typed = (letter: string) => `${zone.isHole ? letter.toUpperCase() : letter}${zone.grade}`
  const known = letters.filter((letter) => beginOf({ ...zone, letter }) !== undefined).map(typed)
  const found = `${quoted(typed(zone.letter))} on ${zone.size_mm} mm`
  return { code: 'unknown name', found, needed: `a zone that the standard has there: ${known.join(', ')}` }
}
