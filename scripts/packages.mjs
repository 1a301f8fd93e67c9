import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { nativePackageLoads, rebuildNativePackage, wantedForCompiling } from './native-package.mjs'

/** @typedef {{ version?: string, integrity?: string, optional?: boolean, devOptional?: boolean, peer?: boolean }} LockEntry */

/**
 * Why the installed packages differ from the lock, or undefined when they agree.
 *
 * npm writes `node_modules/.package-lock.json` as the last step of an install, so a broken install counts as none.
 * Optional packages may be absent: they belong to other platforms.
 *
 * @param {string} root folder that holds package-lock.json
 * @returns {string | undefined}
 */
export function packagesDiffer(root) {
  const installedFile = join(root, 'node_modules/.package-lock.json')
  if (!existsSync(installedFile)) return 'no packages are installed'
  const wanted = entriesOf(join(root, 'package-lock.json'))
  const installed = entriesOf(installedFile)
  for (const [path, entry] of Object.entries(wanted)) {
    if (path === '') continue
    const there = installed[path]
    if (there === undefined) {
      if (entry.optional !== true) return `${path} is missing`
    } else if (there.version !== entry.version || there.integrity !== entry.integrity) {
      return `${path} is ${there.version}, the lock asks for ${entry.version}`
    }
  }
  return undefined
}

/**
 * Installs exactly what the lock names when something else, or nothing, is there, and builds the native package anew when it does not fit.
 *
 * @param {string} root
 * @returns {boolean} false when npm failed; npm, and what compiling wants for, have then been printed
 */
export function installPackages(root) {
  if (areInstalled(root)) return true
  process.stderr.write(wantedForCompiling())
  return false
}

/** @param {string} root */
function areInstalled(root) {
  const why = packagesDiffer(root)
  if (why === undefined) return nativePackageLoads(root) || rebuildNativePackage(root)
  process.stdout.write(`Installing packages (${why}) …\n`)
  const npm = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  })
  return npm.status === 0
}

/**
 * @param {string} file
 * @returns {Record<string, LockEntry>}
 */
function entriesOf(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages ?? {}
}
