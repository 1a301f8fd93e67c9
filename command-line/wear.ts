import { writeFile } from 'node:fs/promises'
import type { Command } from 'commander'
import pc from 'picocolors'
import { type Design, type Life, type Lived, lifeOf, type Problem, readDesign, sentence } from '../engine/index.ts'
import {
  caution,
  cautionedFile,
  curveRows,
  drawWear,
  lifeHeads,
  lifeRows,
  placeHeads,
  placeRows,
  wearDocument,
  wearGround,
  wearSentence,
} from '../report/index.ts'
import { documentText, engineName } from '../server/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import { designCommand } from './design-command.ts'
import { asWrongUse } from './design-file.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { refusalText } from './refusal-text.ts'
import type { Ends } from './store-commands.ts'
import type { Terminal } from './terminal.ts'

interface WearOptions extends Omit<DesignNamed, 'path'> {
  readonly json?: boolean
  readonly drawing?: string
}

/** Adds the question how long a finger lasts. */
export function addWear(program: Command, { terminal, end }: Ends): void {
  designCommand(program, {
    name: 'wear',
    asks: 'when is it worn out? every requirement over the closings of its life, and what falls short first',
  })
    .option('--json', 'print one JSON document instead of text; angles are in degrees')
    .option('--drawing <FILE.svg>', 'write the curves over the closings to this file')
    .addHelpText('after', '\nExample\n  fingerwright wear designs/heron.json --drawing wear.svg')
    .action(async (path: string, options: WearOptions) => end(await tellWear({ path, ...options }, terminal)))
}

/** @throws WrongUse when a file cannot be opened or written */
async function tellWear({ json, drawing, ...named }: WearOptions & DesignNamed, terminal: Terminal): Promise<ExitStatus> {
  const file = await findDesign(named, terminal)
  const text = documentText(file.bytes)
  const read = text.problems === undefined ? readDesign(text.value, file.name) : text
  if (read.problems !== undefined) {
    terminal.writeError(refusalText(file.shown, read.problems))
    return exitStatus.refused
  }
  const { life, missing } = lived(read.value)
  if (missing !== undefined) {
    terminal.writeError(unknownText(file.shown, missing))
    return exitStatus.undecided
  }
  if (drawing !== undefined) await writeCurves(drawing, read.value, life)
  const document = { design: file.name, engine: engineName, wear: wearDocument(life) }
  terminal.write(json === true ? `${JSON.stringify(document, null, 2)}\n` : answer(read.value, life, terminal))
  return statusOf(life)
}

/** The design is sound; it does not say enough to judge its wear. */
function unknownText(shown: string, missing: readonly Problem[]): string {
  return `Undecided: ${shown} does not say enough to judge its wear.\n${missing.map((one) => `  ${sentence(shown, one)}\n`).join('')}`
}

/** Works through to the end; Ctrl-C stops it. */
function lived(design: Design): Lived {
  const run = lifeOf(design)
  let step = run.next()
  while (!step.done) step = run.next()
  return step.value
}

function statusOf({ findings }: Life): ExitStatus {
  if (findings.some(({ verdict }) => verdict === 'short')) return exitStatus.short
  return findings.some(({ verdict }) => verdict === 'undecided') ? exitStatus.undecided : exitStatus.met
}

async function writeCurves(file: string, design: Design, life: Life): Promise<void> {
  try {
    await writeFile(file, cautionedFile(drawWear(design, life)))
  } catch (error) {
    throw asWrongUse(error, file)
  }
}

const left = (text: string): Cell => ({ text, side: 'left', most_columns: 44 })
const right = (text: string): Cell => ({ text, side: 'right' })

function answer(design: Design, life: Life, { colour }: Terminal): string {
  const paint = pc.createColors(colour)
  const requirements = [lifeHeads, ...lifeRows(design, life)].map(({ mark, figure, atMost, atLikely }) =>
    [mark, figure, atMost, atLikely].map(left),
  )
  const places = [placeHeads, ...placeRows(life)].map(({ place, rubbed, atMost, atLikely, bareAtMost, bareAtLikely }) => [
    left(place),
    ...[rubbed, atMost, atLikely, bareAtMost, bareAtLikely].map(right),
  ])
  const heads = ['closings', 'years', ...design.toggles.map(({ id }) => `margin of ${id}`), 'return margin', 'play of the tip']
  const curves = [
    heads.map(right),
    ...curveRows(life.most).map(({ closings, years, margins, returnMargin, tipPlay }) =>
      [closings, years, ...margins, returnMargin, tipPlay].map(right),
    ),
  ]
  const blocks = [
    paint.bold(wrapped(wearSentence(design, life))),
    aligned(requirements).join('\n'),
    aligned(places).join('\n'),
    `At the most wear\n${aligned(curves).join('\n')}`,
    wrapped(`Of the closings: ${life.most.loads.join(', ')}.${endWords(life)} ${wearGround}`),
    wrapped(caution),
  ]
  return `${blocks.join('\n\n')}\n`
}

function endWords({ most, likely }: Life): string {
  const words = [most, likely].flatMap(({ endedBy, level }) =>
    endedBy === undefined ? [] : [` At the ${level} wear it was looked no further: ${endedBy}.`],
  )
  return words.join('')
}
