import type { Command } from 'commander'
import { type Characteristic, inspectionPlan, type Problem, readVariation, type Variation } from '../engine/index.ts'
import type { SetOfLot } from '../records/index.ts'
import {
  type MeasuredWith,
  measuredWith,
  paperLines,
  type ReadSet,
  readSets,
  standingDecisions,
  standingFound,
} from '../report/index.ts'
import { documentText } from '../server/index.ts'
import { type DesignNamed, findDesign, findStored, refuseUnknown } from './find-design.ts'
import { readTable } from './read-table.ts'
import { refusalText } from './refusal-text.ts'
import { type ColumnsTyped, columnsSaid, tellColumns, withColumns } from './table-columns.ts'
import { type Terminal, WrongUse } from './terminal.ts'
import { lookInStore } from './use-store.ts'

/** Where measured sets come from, as typed. */
export interface SetsTyped extends ColumnsTyped {
  readonly readings?: string
  readonly lot?: string
}

/** A design and its plan. */
export interface Planned {
  readonly variation: Variation
  readonly plan: readonly Characteristic[]
}

/** What was decided and signed off of a set, and with what it was measured. */
export interface SetPapers {
  readonly papers: readonly string[]
  readonly decided: SetOfLot['decisions']
  readonly measuredWith: MeasuredWith
}

/** Measured sets with the design that they are judged by. */
export interface MeasuredSets extends Planned {
  readonly sets: readonly ReadSet[]
  /** What goes on the first-article sheet beside, by serial number; of sets that are kept. */
  readonly papers: ReadonlyMap<string, SetPapers>
}

/** Adds the options that name measured sets: a table, or a lot of the store. */
export function withSets(command: Command, readings: string): Command {
  return withColumns(command.option('--readings <FILE.csv>', readings)).option(
    '--lot <LOT>',
    'a lot of the bench book in the place of a table, by the revision that it was made to',
  )
}

/** The sets that were named. @returns undefined when they or the design were refused, which is told. @throws WrongUse for neither, and for both */
export async function measuredSets(asked: SetsTyped & DesignNamed, terminal: Terminal): Promise<MeasuredSets | undefined> {
  const { readings, lot } = asked
  if ((readings === undefined) === (lot === undefined))
    throw new WrongUse('give either --readings FILE.csv or --lot LOT, where the design is one of the store')
  return lot === undefined ? ofTable({ ...asked, readings: readings ?? '' }, terminal) : ofLot({ ...asked, lot }, terminal)
}

/** The design that was named, with its plan. @returns undefined when it was refused, which is told */
export async function planned(named: DesignNamed, terminal: Terminal): Promise<Planned | undefined> {
  const file = await findDesign(named, terminal)
  return plannedText(file, terminal)
}

function plannedText(
  file: { readonly bytes: Uint8Array; readonly name: string; readonly shown: string },
  terminal: Terminal,
): Planned | undefined {
  const text = documentText(file.bytes)
  const read = text.problems === undefined ? readVariation(text.value, file.name) : text
  if (read.problems !== undefined) return refused(file.shown, read.problems, terminal)
  return { variation: read.value, plan: inspectionPlan(read.value) }
}

function refused(shown: string, problems: readonly Problem[], terminal: Terminal): undefined {
  terminal.writeError(refusalText(shown, problems))
  return undefined
}

type OfTable = SetsTyped & DesignNamed & { readonly readings: string }

async function ofTable({ readings, column, decimal, ...named }: OfTable, terminal: Terminal): Promise<MeasuredSets | undefined> {
  const about = await planned(named, terminal)
  if (about === undefined) return undefined
  const read = readSets({ rows: await readTable(readings), plan: about.plan }, { named: columnsSaid(column), decimal })
  tellColumns(readings, { as: read.as, passedOver: read.sets === undefined ? [] : read.passedOver }, terminal)
  return read.sets === undefined ? refused(readings, read.problems, terminal) : { ...about, sets: read.sets, papers: new Map() }
}

type OfLot = SetsTyped & DesignNamed & { readonly lot: string }

async function ofLot({ lot, ...named }: OfLot, terminal: Terminal): Promise<MeasuredSets | undefined> {
  const { path: name, store } = named
  const found = await lookInStore({ store, terminal }, (opened) => {
    refuseUnknown(opened, name)
    const begun = opened.bench.lots(name).find((one) => one.lot === lot)
    return begun && { revision: begun.revision, kept: opened.bench.sets(name, lot) ?? [] }
  })
  if (found === undefined) throw new WrongUse(`${lot}: there is no such lot; fingerwright lots ${name} lists them`)
  const about = plannedText(await findStored({ ...named, revision: String(found.revision) }, terminal), terminal)
  if (about === undefined) return undefined
  const all = found.kept.map((one) => ({ serial: one.serial, readings: standingFound(about.plan, one) }))
  const sets = all.filter(({ readings }) => readings.some(({ characteristic: { kind } }) => kind !== 'film'))
  if (sets.length === 0) throw new WrongUse(`${lot}: nothing was measured of it yet`)
  return { ...about, sets, papers: new Map(found.kept.map((one) => [one.serial, papersOf(one)])) }
}

const papersOf = (kept: SetOfLot): SetPapers => ({
  papers: paperLines(kept),
  decided: standingDecisions(kept.decisions),
  measuredWith: measuredWith(kept.readings),
})
