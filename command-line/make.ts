import { type Command, Option } from 'commander'
import pc from 'picocolors'
import { batchCost, breakEven, canBeMade, partsList, readShopDesign, type ShopDesign, unpriced } from '../engine/index.ts'
import {
  type CountedCost,
  caution,
  costMovedSentence,
  costTable,
  countedCost,
  countedCostSentence,
  countsSentence,
  type DrawingsAsked,
  doubtRows,
  doubtText,
  itemRows,
  joined,
  makeAsks,
  makeSentence,
  nothingDoubted,
  type PaperName,
  paperNames,
  USUAL_BATCHES,
  usualDrawings,
} from '../report/index.ts'
import { documentText, engineName } from '../server/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import { designCommand } from './design-command.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { type ComparedCounts, comparedWith } from './make-against.ts'
import { refusalText } from './refusal-text.ts'
import { countSets } from './spread.ts'
import { readSpreadAsked } from './spread-asked.ts'
import type { Ends } from './store-commands.ts'
import { type Terminal, WrongUse } from './terminal.ts'
import { writeShopPack } from './write-shop-pack.ts'

interface MakeOptions extends Omit<DesignNamed, 'path'> {
  readonly json?: boolean
  readonly sets?: string
  readonly out?: string
  readonly against?: string
  readonly counted?: string
  readonly paper: PaperName
  readonly views: DrawingsAsked['projection']
}

/** Adds the question Make: parts list, masses and cost of a design. */
export function addMake(program: Command, { terminal, end }: Ends): void {
  designCommand(program, { name: 'make', asks: makeAsks.charAt(0).toLowerCase() + makeAsks.slice(1) })
    .option('--sets <LIST>', `numbers of sets in a batch, such as 1,10,50; ${USUAL_BATCHES.join(',')} when it is left out`)
    .option('--counted <N>', 'count so many sets as Spread does, and say what a set costs with the scrap that they have')
    .option(
      '--against <N>',
      'say how many pieces and what cost it has more or less than that revision of it in the store, or than another design file',
    )
    .option('--json', 'print one JSON document instead of text')
    .option(
      '--out <FOLDER>',
      'write what goes to the shop into this folder, and as one zip: drawings, solids, parts list, inspection plan, coating note',
    )
    .addOption(new Option('--paper <NAME>', 'of the drawings').choices(paperNames).default(usualDrawings.paper))
    .addOption(
      new Option('--views <WAY>', 'of the drawings').choices(['first-angle', 'third-angle']).default(usualDrawings.projection),
    )
    .addHelpText('after', '\nExample\n  fingerwright make designs/heron.json --sets 1,5,20 --out shop')
    .action(async (path: string, options: MakeOptions) => end(await make({ path, ...options }, terminal)))
}

/**
 * Says what a design is put together from and what it costs.
 *
 * @throws WrongUse when a file cannot be opened or written, or `--sets` is no list of numbers of sets
 */
async function make(
  { sets, json, out, against, counted, paper, views, ...named }: MakeOptions & DesignNamed,
  terminal: Terminal,
): Promise<ExitStatus> {
  const batches = sets === undefined ? USUAL_BATCHES : batchesOf(sets)
  const asked = counted === undefined ? undefined : readSpreadAsked({ samples: counted })
  const file = await findDesign(named, terminal)
  const text = documentText(file.bytes)
  const read = text.problems === undefined ? readShopDesign(text.value, file.name) : text
  if (read.problems !== undefined) {
    terminal.writeError(refusalText(file.shown, read.problems))
    return exitStatus.refused
  }
  if (out !== undefined) {
    const drawings = { paper, projection: views, ...(file.revision !== undefined && { revision: file.revision }) }
    terminal.writeError(
      await writeShopPack({ folder: out, shop: read.value, home: terminal.home, drawings, tellProgress: terminal.tellProgress }),
    )
  }
  const compared = against === undefined ? undefined : await comparedWith(against, { named, shop: read.value, batches }, terminal)
  if (against !== undefined && compared === undefined) return exitStatus.refused
  const { variation } = read.value
  const spread = asked && (await countSets({ variation, text: text.value ?? '', name: file.name, asked }, terminal))
  const scrap = spread && countedCost(variation.design, spread, batches)
  terminal.write(
    json === true
      ? `${JSON.stringify({ ...makingDocument(read.value, batches), ...(scrap && { counted: scrap }), ...compared }, null, 2)}\n`
      : answer({ shop: read.value, batches, compared, scrap }, terminal),
  )
  return exitStatus.met
}

/** The most sets that anybody has asked a price for. */
const SETS_MOST = 10_000

function batchesOf(sets: string): readonly number[] {
  const batches = sets.split(',').map((word) => Number(word.trim()))
  if (batches.every((count) => Number.isInteger(count) && count >= 1 && count <= SETS_MOST)) return batches
  throw new WrongUse(`--sets "${sets}": needs whole numbers from 1 to ${SETS_MOST} with commas between, such as 1,10,50`)
}

function makingDocument(shop: ShopDesign, batches: readonly number[]): object {
  const { design } = shop.variation
  const { making } = design
  const costs = making && { currency: making.currency, batches: batches.map((count) => batchCost(design, making, count)) }
  const pays = making && breakEven(design, making)
  const document = { design: design.name, engine: engineName, partsList: partsList(design), doubts: canBeMade(shop) }
  return { ...document, ...(costs && { costs: { ...costs, unpriced: unpriced(design) } }), ...(pays && { pays }) }
}

interface Answered {
  readonly shop: ShopDesign
  readonly batches: readonly number[]
  readonly compared: ComparedCounts | undefined
  readonly scrap: CountedCost | undefined
}

function answer({ shop, batches, compared, scrap }: Answered, { colour }: Terminal): string {
  const { design } = shop.variation
  const paint = pc.createColors(colour)
  const costs = costTable(design, batches)
  const blocks = [
    paint.dim(design.title),
    paint.bold(wrapped(makeSentence(design))),
    [paint.underline('Parts list'), ...aligned([ITEM_HEADING, ...itemRows(partsList(design)).map(itemCells)])].join('\n'),
    ...(compared === undefined
      ? []
      : [wrapped(`Against ${compared.against}: ${countsSentence(compared.counts)} ${costMovedSentence(compared.costsMoved)}`)]),
    ...(costs === undefined ? [] : costBlocks(costs).map(([title, ...lines]) => [paint.underline(title), ...lines].join('\n'))),
    ...(scrap === undefined ? [] : [wrapped(countedCostSentence(scrap))]),
    ...(costs?.lacks === undefined ? [] : [wrapped(costs.lacks)]),
    [paint.underline('Can it be made?'), ...doubtLines(shop)].join('\n'),
    wrapped(caution),
  ]
  return `${blocks.join('\n\n')}\n`
}

function doubtLines(shop: ShopDesign): readonly string[] {
  const rows = doubtRows(canBeMade(shop))
  return rows.length === 0 ? [wrapped(nothingDoubted, '  ')] : rows.map((row) => wrapped(doubtText(row), '  '))
}

const left = (text: string): Cell => ({ text, side: 'left' })
const right = (text: string): Cell => ({ text, side: 'right' })
const ITEM_HEADING = [
  right('no.'),
  left('item'),
  right('a finger'),
  right('a set'),
  left('material'),
  left('size'),
  right('mass'),
]

function itemCells(row: ReturnType<typeof itemRows>[number]): readonly Cell[] {
  const mass = row.mass === undefined ? '–' : joined(row.mass)
  const counts = [right(String(row.perFinger)), right(String(row.perSet))]
  return [right(String(row.number)), left(row.title), ...counts, left(row.material), left(row.size), right(mass)]
}

function costBlocks({ currency, batches, sources }: NonNullable<ReturnType<typeof costTable>>): readonly (readonly string[])[] {
  const heads = batches.map(({ sets }) => right(sets === 1 ? '1 set' : `${sets} sets`))
  const rows = [
    [left('a set costs'), ...batches.map(({ perSet }) => right(perSet))],
    [left('the batch costs'), ...batches.map(({ total }) => right(total))],
    [left('fingers made'), ...batches.map(({ made }) => right(String(made)))],
  ]
  const shares = sources.map(({ words, perSet }) => [left(words), ...perSet.map(right)])
  const lines = aligned([[left(''), ...heads], ...rows, ...shares])
  return [
    [`Cost in ${currency}`, ...lines.slice(0, 1 + rows.length)],
    ['Where a set’s cost comes from', ...lines.slice(1 + rows.length)],
  ]
}
