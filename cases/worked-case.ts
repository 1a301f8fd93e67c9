import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import * as z from 'zod'

/** Folder of the case files. */
const folder = import.meta.dirname

const expected = z.strictObject({
  value: z.union([z.number(), z.boolean(), z.string()]),
  /** As in result documents: degrees for angles, else the inside unit. */
  unit: z.string(),
  /** Either way, in the same unit; numbers only. */
  tolerance: z.number().positive().optional(),
  source: z.string().startsWith('SOURCE '),
})

const worked = z.strictObject({
  title: z.string().min(1),
  /** Design file from the project's root. */
  design: z.string(),
  /** Exit status of `fingerwright verdict`. */
  status: z.union([z.literal(0), z.literal(1), z.literal(2), z.literal(3)]),
  /** Figures by id with what they must be. */
  figures: z.record(z.string(), expected),
  /** Places of the problems of a design that is refused. */
  problems: z.array(z.string()).optional(),
})

/** A worked example: a design and what every door must say of it. */
export type WorkedCase = z.infer<typeof worked>

/** One figure that a case expects. */
export type ExpectedFigure = z.infer<typeof expected>

/** Every case file of this folder. A number without a tolerance or a case that expects nothing is a fault of the file. */
export function workedCases(): readonly WorkedCase[] {
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'))
  return files.sort().map((name) => {
    const found = worked.parse(JSON.parse(readFileSync(join(folder, name), 'utf8')))
    const bare = Object.entries(found.figures).filter(
      ([, figure]) => typeof figure.value === 'number' && figure.tolerance === undefined,
    )
    if (bare.length > 0) throw new Error(`${name}: no tolerance for ${bare.map(([id]) => id).join(', ')}`)
    if (Object.keys(found.figures).length + (found.problems ?? []).length === 0) throw new Error(`${name}: expects nothing`)
    return found
  })
}
