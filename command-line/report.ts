import { writeFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { type Command, Option } from 'commander'
import { evaluate, type Problem, proofOf, readVariation } from '../engine/index.ts'
import {
  type KnownOf,
  type ProofDocumentName,
  proofDocuments,
  proveAsks,
  proveSentence,
  type TypesetJob,
} from '../report/index.ts'
import { documentText, engineName } from '../server/index.ts'
import { TypesetFault, typesetterAt } from '../typesetting/index.ts'
import { bookOf } from './book-of.ts'
import { designCommand } from './design-command.ts'
import { asWrongUse } from './design-file.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { liveThrough } from './live-through.ts'
import { refusalText } from './refusal-text.ts'
import { countSets } from './spread.ts'
import { readSpreadAsked, type SpreadWords, spreadDefaults } from './spread-asked.ts'
import type { Ends } from './store-commands.ts'
import { type Terminal, WrongUse } from './terminal.ts'

interface ReportOptions extends Omit<DesignNamed, 'path'>, Omit<SpreadWords, 'advice'> {
  readonly out: string
  readonly document: ProofDocumentName
  readonly uncounted?: boolean
  readonly date?: string
}

const HELP = `
Documents
${Object.entries(proofDocuments)
  .map(([name, { says }]) => `  ${name.padEnd(9)}${says}`)
  .join('\n')}

The same design and options give the same bytes; a date stands in it only when you give one.
Exit status: 0 everything asked is shown and every risk is taken, 1 something falls short, 2 something is open, 3 refused.

Example
  fingerwright report designs/heron.json --out heron.pdf --date 2026-11-27
  fingerwright report heron --revision 2 --document card --out card.pdf`

/** Adds the question Prove: a typeset document of a design. */
export function addReport(program: Command, { terminal, end }: Ends): void {
  designCommand(program, { name: 'report', asks: proveAsks.charAt(0).toLowerCase() + proveAsks.slice(1) })
    .requiredOption('--out <FILE.pdf>', 'file to write')
    .addOption(new Option('--document <WHICH>', 'which document').choices(Object.keys(proofDocuments)).default('report'))
    .option('--samples <N>', `sets to count; ${spreadDefaults.samples} when it is left out`)
    .option('--seed <N>', `which samples are drawn; ${spreadDefaults.seed} when it is left out`)
    .option(
      '--target <SHARE>',
      `share of sets that has to meet every requirement; "${spreadDefaults.target}" when it is left out`,
    )
    .option('--uncounted', 'count no sets: faster, and what hangs on them stays open')
    .option('--date <DAY>', 'day that stands on every page, such as 2026-11-27')
    .addHelpText('after', HELP)
    .action(async (path: string, options: ReportOptions) => end(await report({ path, ...options }, terminal)))
}

/**
 * Writes one document of a design, and says in a sentence what is shown and what is open.
 *
 * @throws WrongUse when a file cannot be opened or written, an option cannot be read, or nothing can be typeset on this machine
 */
async function report(options: ReportOptions & DesignNamed, terminal: Terminal): Promise<ExitStatus> {
  const { out, document, date } = options
  const asked = readSpreadAsked(options)
  if (date !== undefined && !/^\d{4}-\d{2}-\d{2}$/.test(date))
    throw new WrongUse(`--date ${date}: needs a day such as 2026-11-27`)
  const file = await findDesign(options, terminal)
  const text = documentText(file.bytes)
  const read = text.problems === undefined ? readVariation(text.value, file.name) : text
  if (read.problems !== undefined) return refused(file.shown, read.problems, terminal)
  const variation = read.value
  const evaluation = evaluate(variation.design)
  const sets = { variation, text: text.value ?? '', name: file.name, asked }
  const wanted = proofDocuments[document]
  const spread = options.uncounted === true || !wanted.sets ? undefined : await countSets(sets, terminal)
  const lived = wanted.life ? await liveThrough(variation.design, terminal) : undefined
  const book = await bookOf(file, { store: options.store, terminal })
  const proof = proofOf({ evaluation, ...(spread && { spread }), ...(lived && { lived }), ...(book && { book }) })
  const known: KnownOf = {
    // The folder of a file tells whoever reads the report nothing, and is another on each machine.
    ...{ evaluation, proof, revision: basename(file.shown), engine: engineName },
    ...(spread && { spread }),
    ...(lived && { lived }),
    ...(date !== undefined && { date }),
  }
  await writePdf(out, await typesetOne(wanted.job(known), terminal))
  if (!wanted.sets) return written(out, terminal)
  terminal.write(`${proveSentence(proof)}\n`)
  written(out, terminal)
  return exitStatus[proof.verdict ?? 'met']
}

function written(out: string, terminal: Terminal): ExitStatus {
  terminal.write(`${out} is written.\n`)
  return exitStatus.met
}

function refused(shown: string, problems: readonly Problem[], terminal: Terminal): ExitStatus {
  terminal.writeError(refusalText(shown, problems))
  return exitStatus.refused
}

async function typesetOne(job: TypesetJob, { home }: Terminal): Promise<Uint8Array> {
  try {
    const [pdf] = await typesetterAt(home)([job])
    return pdf
  } catch (error) {
    if (error instanceof TypesetFault) throw new WrongUse(error.message)
    throw error
  }
}

async function writePdf(path: string, bytes: Uint8Array): Promise<void> {
  try {
    await writeFile(path, bytes)
  } catch (error) {
    throw asWrongUse(error, path)
  }
}
