import type { Part } from '../design.ts'
import type { Document } from '../document.ts'
import type { Reading } from '../reading.ts'
import type { Screw } from './screw.ts'

interface Placed {
  readonly typed: NonNullable<Document['screws']>[string]
  /** That has the thread; undefined where it has been reported. */
  readonly part: Part | undefined
  readonly diameter_mm: number
  readonly screws_count: number
  readonly reading: Reading
}

/** Where screws stand side by side across the finger: each with its whole thread within a slice of the part, none in another. @param place of the screw */
export function readScrewPlaces(
  place: string,
  { typed, part, diameter_mm, screws_count, reading }: Placed,
): Pick<Screw, 'across_mm'> {
  if (typed.across === undefined) return {}
  const here = `${place}.across`
  const across_mm = typed.across.map((text, index) => reading.quantity(`${here}.${index}`, text, 'length'))
  if (across_mm.length !== screws_count && Number.isFinite(screws_count)) {
    const [code, found] = [across_mm.length < screws_count ? 'too few' : 'too many', `${across_mm.length} places`]
    reading.report({ code, place: here, found, needed: `as many as there are screws, ${screws_count}` })
  }
  reportOutside(here, across_mm, { part, diameter_mm, reading })
  for (const [index, at] of across_mm.entries()) {
    const near = across_mm.findIndex((other, before) => before < index && Math.abs(other - at) < diameter_mm)
    if (near < 0) continue
    const found = `${Math.abs(across_mm[near] - at)} mm beside place ${near + 1}`
    reading.report({ code: 'too close', place: `${here}.${index}`, found, needed: `more than a diameter, ${diameter_mm} mm` })
  }
  return { across_mm }
}

function reportOutside(
  here: string,
  across_mm: readonly number[],
  { part, diameter_mm, reading }: Omit<Placed, 'typed' | 'screws_count'>,
): void {
  if (part === undefined) return
  const slices = part.across ?? []
  if (slices.length === 0) {
    const found = `places across the width, and ${part.id} does not say where it lies there`
    reading.report({
      code: 'missing',
      place: `parts.${part.id}.across`,
      found,
      needed: 'from where to where the part lies across the finger',
    })
    return
  }
  const half = diameter_mm / 2
  for (const [index, at] of across_mm.entries()) {
    const isIn = slices.some(({ from_mm, to_mm }) => at - half >= from_mm - ROUNDING_mm && at + half <= to_mm + ROUNDING_mm)
    if (isIn || Number.isNaN(at)) continue
    const found = `a thread from ${millimetres(at - half)} to ${millimetres(at + half)} mm`
    const needed = `within ${slices.map(({ from_mm, to_mm }) => `${millimetres(from_mm)} to ${millimetres(to_mm)} mm`).join(' or ')}, where ${part.id} is`
    reading.report({ code: 'outside', place: `${here}.${index}`, found, needed })
  }
}

/** Typed inches come to millimetres with their rounding. */
const ROUNDING_mm = 1e-9
const DIGITS = 6
const millimetres = (value: number): string => String(Number(value.toPrecision(DIGITS)))
