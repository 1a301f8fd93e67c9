import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'

/** Everything that a build is made from. */
const SOURCES = [
  'engine',
  'report',
  'records',
  'typesetting',
  'server',
  'command-line',
  'page',
  'tables',
  'scripts/build.mjs',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'tsconfig.base.json',
  'vite.config.ts',
]

const TEST_FILE = /\.test\.tsx?$/

/**
 * A hash of names and contents of all sources. Contents, because a clone or a branch change moves every file time.
 *
 * @param {string} root
 * @returns {string}
 */
export function sourceStamp(root) {
  const hash = createHash('sha256')
  for (const file of SOURCES.flatMap((source) => filesUnder(root, source))) {
    hash
      .update(`${file}\0`)
      .update(readFileSync(join(root, file)))
      .update('\0')
  }
  return hash.digest('hex')
}

/**
 * @param {string} root
 * @param {string} path relative to root
 * @returns {string[]} files below `path` in a fixed order, tests left out
 */
function filesUnder(root, path) {
  const full = join(root, path)
  if (!existsSync(full)) return []
  if (!statSync(full).isDirectory()) return TEST_FILE.test(path) ? [] : [path]
  return readdirSync(full)
    .sort()
    .flatMap((name) => filesUnder(root, `${path}/${name}`))
}
