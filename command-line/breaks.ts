import type { Command } from 'commander'
import pc from 'picocolors'
import { type Broken, brokenOf, type Design } from '../engine/index.ts'
import {
  type BrokenRow,
  brokenDocument,
  brokenGround,
  brokenHeads,
  brokenRows,
  brokenSentence,
  caution,
} from '../report/index.ts'
import { answerDesign, engineName } from '../server/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import { designCommand } from './design-command.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { refusalText } from './refusal-text.ts'
import type { Ends } from './store-commands.ts'
import type { Terminal } from './terminal.ts'

interface BreaksOptions extends Omit<DesignNamed, 'path'> {
  readonly json?: boolean
}

/** Adds the question what a finger does when something of it breaks. */
export function addBreaks(program: Command, { terminal, end }: Ends): void {
  designCommand(program, {
    name: 'breaks',
    asks: 'what does the finger do when a pin, a part or a spring gives way, and do they give way in the stated order?',
  })
    .option('--json', 'print one JSON document instead of text')
    .addHelpText('after', '\nExample\n  fingerwright breaks designs/heron.json')
    .action(async (path: string, options: BreaksOptions) => end(await tellBreaks({ path, ...options }, terminal)))
}

/** @throws WrongUse when a file cannot be opened */
async function tellBreaks({ json, ...named }: BreaksOptions & DesignNamed, terminal: Terminal): Promise<ExitStatus> {
  const file = await findDesign(named, terminal)
  const found = answerDesign(file.bytes, file.name)
  const { evaluation } = found
  const broken = evaluation && brokenOf(evaluation)
  if (!broken) {
    terminal.writeError(refusalText(file.shown, evaluation === undefined ? found.problems : evaluation.problems))
    return exitStatus.refused
  }
  const document = { design: file.name, engine: engineName, breaks: brokenDocument(evaluation.design, broken) }
  terminal.write(json === true ? `${JSON.stringify(document, null, 2)}\n` : answer(evaluation.design, broken, terminal))
  return exitStatus[broken.order?.verdict ?? 'met']
}

function cellsOf({ what, margin, says, finger, loose, limp }: BrokenRow): readonly Cell[] {
  const left = (text: string): Cell => ({ text, side: 'left', most_columns: 34 })
  return [left(what), { text: margin, side: 'right' }, ...[says, finger, loose, limp].map(left)]
}

function answer(design: Design, broken: Broken, { colour }: Terminal): string {
  const paint = pc.createColors(colour)
  const blocks = [
    paint.bold(wrapped(brokenSentence(broken))),
    aligned([brokenHeads, ...brokenRows(design, broken)].map(cellsOf)).join('\n'),
    wrapped(brokenGround),
    wrapped(caution),
  ]
  return `${blocks.join('\n\n')}\n`
}
