// The store's database comes as a package with a part in machine code. Where no finished build of it can be fetched, it is compiled at
// install, which takes about a minute.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

const PACKAGE = 'better-sqlite3'

/** What compiling needs, each under any of its names. */
const TOOLS = {
  python3: ['python3', 'python', 'python.exe'],
  make: ['make', 'gmake', 'msbuild.exe'],
  'a C++ compiler': ['c++', 'g++', 'clang++', 'cl.exe'],
}

/**
 * Whether the native part fits this machine and this version of Node: a change of either leaves an old one behind.
 *
 * @param {string} root
 */
export function nativePackageLoads(root) {
  const words = ['-e', `new (require('${PACKAGE}'))(':memory:').close()`]
  return spawnSync(process.execPath, words, { cwd: root, stdio: 'ignore' }).status === 0
}

/**
 * Builds the native part anew.
 *
 * @param {string} root
 * @returns {boolean} false when it still does not load; npm has then said why
 */
export function rebuildNativePackage(root) {
  process.stdout.write(`Building ${PACKAGE} for this version of Node (about a minute) …\n`)
  spawnSync('npm', ['rebuild', PACKAGE], { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' })
  return nativePackageLoads(root)
}

/**
 * What a failed install may want for, in words; empty when everything that compiling needs is there.
 *
 * @param {readonly string[]} folders that are looked through for the tools
 * @returns {string}
 */
export function wantedForCompiling(folders = (process.env.PATH ?? '').split(delimiter)) {
  const missing = Object.entries(TOOLS)
    .filter(([, names]) => !names.some((name) => folders.some((folder) => existsSync(join(folder, name)))))
    .map(([tool]) => tool)
  if (missing.length === 0) return ''
  return (
    `${PACKAGE}, the database of the store, is compiled here when no finished build can be fetched. ` +
    `That needs ${missing.join(', ')}, which this machine does not have.\n` +
    'On Debian or Ubuntu: apt-get install build-essential python3. On macOS: xcode-select --install.\n'
  )
}
