import type { Design } from '../design.ts'
import type { Document } from '../document.ts'
import type { Workbench } from '../read-joints.ts'
import { readScrewPlaces } from './read-screw-places.ts'
import { readTapped } from './read-tapped.ts'
import type { Screw } from './screw.ts'
import { type ScrewClass, screwClasses, type Thread, threads } from './thread-rows.ts'

type TypedScrew = NonNullable<Document['screws']>[string]

/** By how much preloads set with a torque wrench differ: common practice (Shigley, section 8-8: about 25 %, from memory). */
const SCATTER_ratio = 0.25

/** Screws in the order of the document; undefined when it states none. */
export function readScrews(bench: Workbench): Design['screws'] {
  const typed = bench.reading.document.screws
  if (!typed) return undefined
  const screws = Object.entries(typed).map(([id, one]) => readScrew(id, one, bench))
  reportAskew(screws, bench)
  return screws
}

function readScrew(id: string, typed: TypedScrew, { reading, find, parts }: Workbench): Screw {
  const place = `screws.${id}`
  const { holdsMount } = typed
  const thread = rowNamed<Thread>(threads, typed.thread)
  const engagement_mm = reading.size(`${place}.engagement`, typed.engagement)
  const part = find.part(`${place}.in`, typed.in)
  const screws_count = typed.screws === undefined ? 1 : readCount(`${place}.screws`, typed.screws, reading)
  const { diameter_mm } = thread
  return {
    id,
    thread,
    class: rowNamed<ScrewClass>(screwClasses, typed.class),
    part,
    engagement_mm,
    tapped: readTapped(place, { typed, thread, engagement_mm, reading }),
    torque_Nmm: reading.above0(`${place}.torque`, typed.torque, 'couple'),
    turning: readTurning(place, typed, reading),
    scatter_ratio: typed.scatter === undefined ? SCATTER_ratio : reading.share(`${place}.scatter`, typed.scatter),
    screws_count,
    ...readScrewPlaces(place, { typed, part: parts.at(part < 0 ? parts.length : part), diameter_mm, screws_count, reading }),
    ...(typed.mass !== undefined && { mass_kg: reading.atLeast(`${place}.mass`, typed.mass, { kind: 'mass', least: 0 }) }),
    ...(typed.each !== undefined && { each: reading.atLeast(`${place}.each`, typed.each, { kind: 'number', least: 0 }) }),
    ...(holdsMount && {
      holdsMount: {
        at: {
          x_mm: reading.quantity(`${place}.holdsMount.x`, holdsMount.x, 'length'),
          y_mm: reading.quantity(`${place}.holdsMount.y`, holdsMount.y, 'length'),
        },
        pulls_rad: reading.quantity(`${place}.holdsMount.pulls`, holdsMount.pulls, 'angle'),
      },
    }),
  }
}

/** The structure lets only names of the table through. */
function rowNamed<Row extends { readonly name: string }>(rows: readonly Row[], name: string): Row {
  const row = rows.find((one) => one.name === name)
  if (!row) throw new Error(`${name} is not in the table of threads`)
  return row
}

function readTurning(place: string, { coefficient, friction }: TypedScrew, reading: Workbench['reading']): Screw['turning'] {
  if ((coefficient === undefined) === (friction === undefined)) {
    const found = coefficient === undefined ? 'neither coefficient nor friction' : 'coefficient and friction'
    const code = coefficient === undefined ? 'missing' : 'too many'
    reading.report({ code, place, found, needed: 'one of the two: by it the torque becomes a preload' })
  }
  if (friction === undefined) {
    const torque_ratio = coefficient === undefined ? Number.NaN : reading.above0(`${place}.coefficient`, coefficient, 'number')
    return { kind: 'coefficient', torque_ratio }
  }
  const of = (key: 'thread' | 'head') => reading.atLeast(`${place}.friction.${key}`, friction[key], { kind: 'number', least: 0 })
  return { kind: 'friction', thread: of('thread'), head: of('head') }
}

function readCount(place: string, typed: string | number, reading: Workbench['reading']): number {
  const count = reading.atLeast(place, typed, { kind: 'number', least: 1 })
  if (!Number.isNaN(count) && !Number.isInteger(count)) {
    reading.report({ code: 'wrong value', place, found: String(typed), needed: 'a whole number' })
  }
  return count
}

/** Angles that are typed in two ways may differ by their rounding. */
const ASKEW_rad = 1e-9

/** Screws that hold the mount share its load only when they all pull one way. */
function reportAskew(screws: readonly Screw[], { reading }: Workbench): void {
  const [first, ...others] = screws.filter(({ holdsMount }) => holdsMount)
  for (const { id, holdsMount } of others) {
    const turn = (holdsMount?.pulls_rad ?? 0) - (first.holdsMount?.pulls_rad ?? 0)
    if (!(Math.abs(Math.sin(turn)) > ASKEW_rad || Math.cos(turn) < 0)) continue
    const found = `another way than that of ${first.id}`
    reading.report({ code: 'wrong value', place: `screws.${id}.holdsMount.pulls`, found, needed: 'screws that all pull one way' })
  }
}
