import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import {
  type Characteristic,
  type Consequence,
  consequences,
  judgeMeasured,
  limits,
  type Matter,
  type MeasuredSpread,
  measuredSpread,
  type Variation,
  weighPlan,
} from '../engine/index.ts'
import { balloonFile, type CheckedSet, firstArticleFile, type ReadSet } from '../report/index.ts'
import { asWrongUse } from './design-file.ts'
import type { SetPapers } from './measured-sets.ts'
import { WrongUse } from './terminal.ts'

/** The plan with what each characteristic matters to. */
export interface WeighedPlan {
  readonly plan: readonly Characteristic[]
  readonly matters: readonly (Matter | undefined)[]
}

/** One set judged as it was measured; counted where that was asked for. */
export interface JudgedSet {
  readonly set: CheckedSet
  readonly spread?: MeasuredSpread
  readonly decisions: readonly Consequence[]
}

/** Weighs the plan of a design: two evaluations for every size. */
export function weighedPlan(variation: Variation, plan: readonly Characteristic[]): WeighedPlan {
  const weighing = weighPlan(variation, plan)
  for (let step = weighing.next(); ; step = weighing.next()) if (step.done === true) return { plan, matters: step.value }
}

/** Ways to count, as typed; 0 for none. @throws WrongUse for what is no whole number in its range */
export function countedWords(typed = '0'): number {
  const count = /^\d+$/.test(typed) ? Number(typed) : Number.NaN
  if (count <= limits.spreadSamples) return count
  throw new WrongUse(`--samples takes a whole number up to ${limits.spreadSamples}, not ${typed}`)
}

interface Judging {
  readonly variation: Variation
  readonly plan: readonly Characteristic[]
  readonly samples: number
}

/** The same readings give the same counts. */
const SEED = 1

/** Judges every set of a file. */
export function judgedSets({ variation, plan, samples }: Judging, sets: readonly ReadSet[]): readonly JudgedSet[] {
  return sets.map(({ serial, readings }) => ({
    set: { serial, ...judgeMeasured(variation, plan, readings) },
    ...(samples > 0 && { spread: measuredSpread(variation, readings, { seed: SEED, samples }) }),
    decisions: consequences(variation, plan, readings),
  }))
}

interface Written {
  readonly variation: Variation
  readonly weighed: WeighedPlan
  readonly sets: readonly JudgedSet[]
  /** What goes on the sheet beside, by serial number. */
  readonly papers: ReadonlyMap<string, SetPapers>
}

/** Writes numbered drawings and first-article sheets. @returns what was written. @throws WrongUse when it cannot be */
export async function writeSheets(
  folder: string,
  { variation: { design }, weighed: { plan, matters }, sets, papers }: Written,
): Promise<string> {
  const drawings = design.parts.flatMap((part) => {
    const text = balloonFile(part, plan)
    return text === undefined ? [] : [{ name: `numbered-${part.id}.svg`, text }]
  })
  const sheets = sets.map(({ set, spread, decisions }) => ({
    name: `first-article-${set.serial.replaceAll(/[^\p{L}\p{N}._-]/gu, '_')}.html`,
    text: firstArticleFile({
      ...{ design, plan, matters, set, consequences: decisions },
      ...(spread && { spread }),
      ...papers.get(set.serial),
    }),
  }))
  try {
    await mkdir(folder, { recursive: true })
    for (const { name, text } of [...drawings, ...sheets]) await writeFile(join(folder, name), text)
  } catch (error) {
    throw asWrongUse(error, folder)
  }
  return `${drawings.length + sheets.length} files are written to ${folder}.\n`
}
