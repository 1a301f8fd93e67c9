import { type Command, Option } from 'commander'
import { benchColumns, type NamedColumns, type ReadAs, readAsLines } from '../report/index.ts'
import { type Terminal, WrongUse } from './terminal.ts'

/** How a table is said to be read, as typed. */
export interface ColumnsTyped {
  readonly column?: readonly string[]
  readonly decimal?: 'point' | 'comma'
}

/** What is told of columns in the help of a command that takes a table. */
export const COLUMNS = `Columns are guessed from their headings, and what was guessed is told; --column says otherwise. docs/readings-file.md tells every column.`

/** Adds the options by which a table with other headings is read. */
export function withColumns(command: Command): Command {
  return command
    .option('--column <WHAT=HEADING>', 'which column of the table is what; give it again for another', gathered)
    .addOption(new Option('--decimal <SIGN>', 'sign of its decimals').choices(['point', 'comma']))
}

const gathered = (typed: string, before: readonly string[] = []): readonly string[] => [...before, typed]

/** What was said of the columns. @throws WrongUse for what is no column */
export function columnsSaid(said: readonly string[] = []): NamedColumns {
  const pairs = said.map((typed) => {
    const [what = '', ...heading] = typed.split('=')
    const column = benchColumns.find((one) => one === what.trim())
    if (column === undefined || heading.length === 0)
      throw new WrongUse(
        `--column "${typed}": needs what the column is and its heading, such as found=Value; what is one of ${benchColumns.join(', ')}`,
      )
    return [column, heading.join('=')] as const
  })
  return Object.fromEntries(pairs)
}

/** Tells what was taken for what, where it was guessed or said; nothing where the headings are ours. */
export function tellColumns(
  path: string,
  { as, passedOver }: { readonly as: ReadAs; readonly passedOver: readonly string[] },
  { writeError }: Terminal,
): void {
  for (const line of readAsLines(as)) writeError(`${path}: ${line}\n`)
  for (const heading of passedOver) writeError(`${path}: nothing is taken from the column ${heading}\n`)
}
