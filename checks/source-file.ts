import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'

/** A file of the project: its place from the root with forward slashes, and its text. */
export interface SourceFile {
  readonly path: string
  readonly text: string
}

/** The project's root folder. */
export const root = join(import.meta.dirname, '..')

const LEFT_OUT: ReadonlySet<string> = new Set(['node_modules', 'build', '.git', '.cache', 'package-lock.json'])
const TEXT = /\.(tsx?|mjs|json|md|css|html|svg|yml|txt|typ)$|^(LICENSE|run|\.npmrc|\.gitignore)$/

/** Every text file that belongs to the project. */
export function projectFiles(): readonly SourceFile[] {
  return pathsUnder('').map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }))
}

function pathsUnder(folder: string): string[] {
  return readdirSync(join(root, folder))
    .filter((name) => !LEFT_OUT.has(name))
    .flatMap((name) => {
      const path = folder === '' ? name : `${folder}/${name}`
      if (statSync(join(root, path)).isDirectory()) return pathsUnder(path)
      return TEXT.test(name) ? [path] : []
    })
}
