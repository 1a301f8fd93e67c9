import { judgeApart } from './judge-apart.ts'
import { readTableFile } from './read-table-file.ts'

/** Has a file of readings judged against a design. @param text of the design */
export async function judgeFile(text: string, file: File): Promise<void> {
  judgeApart({ opened: { file: file.name, text }, from: { bytes: await readTableFile(file) } })
}
