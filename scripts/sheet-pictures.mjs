// Pages of what is typeset, as pictures: they are looked at before a sheet is called done. Poppler's pdftoppm draws them, where it is installed.
import { spawnSync } from 'node:child_process'
import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'

/** Enough to read the smallest lettering. */
const DPI = 70

/** What is typeset of the example, by the name of its pictures. @type {Record<string, string[]>} */
const SHEETS = {
  report: ['--uncounted'],
  care: ['--document', 'care'],
  card: ['--document', 'card'],
  checked: ['--document', 'checked'],
}

/**
 * @param {{ root: string, folder: string, scratch: string }} where the project, where pictures are kept, and a folder for what is drawn from
 * @returns {boolean} whether there is a pdftoppm
 */
export function sheetPictures({ root, folder, scratch }) {
  if (spawnSync('pdftoppm', ['-v']).error !== undefined) return false
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  const command = join(root, 'build/command/fingerwright.mjs')
  const ran = (/** @type {string[]} */ ...words) =>
    spawnSync(process.execPath, [command, ...words], { cwd: root, stdio: 'ignore' })
  for (const [name, words] of Object.entries(SHEETS)) {
    const file = join(scratch, `${name}.pdf`)
    ran('report', 'designs/heron.json', ...words, '--out', file)
    drawn(file, join(folder, name))
  }
  ran('make', 'designs/heron.json', '--out', join(scratch, 'shop'))
  drawn(join(scratch, 'shop/drawings.pdf'), join(folder, 'drawings'))
  return true
}

/** @param {string} file @param {string} to begin of the names of its pages */
function drawn(file, to) {
  const { status, stderr } = spawnSync('pdftoppm', ['-png', '-gray', '-r', String(DPI), file, to], { encoding: 'utf8' })
  if (status !== 0) throw new Error(`no pictures of ${file}: ${stderr}`)
}
