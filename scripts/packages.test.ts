import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { nativePackageLoads, wantedForCompiling } from './native-package.mjs'
import { packagesDiffer } from './packages.mjs'
import { sourceStamp } from './stamp.mjs'

let root: string
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'fingerwright-scripts-'))
})
afterEach(() => rmSync(root, { recursive: true, force: true }))

function write(path: string, content: object | string): void {
  mkdirSync(join(root, path, '..'), { recursive: true })
  writeFileSync(join(root, path), typeof content === 'string' ? content : JSON.stringify(content))
}

const lock = (packages: object) => ({ packages: { '': { name: 'x' }, ...packages } })
const one = { 'node_modules/one': { version: '1.0.0', integrity: 'a' } }

describe('packages', () => {
  const differ = (wanted: object, installed?: object) => {
    write('package-lock.json', lock(wanted))
    if (installed !== undefined) write('node_modules/.package-lock.json', lock(installed))
    return packagesDiffer(root)
  }

  it('are installed when none are', () => expect(differ(one)).toBe('no packages are installed'))

  it('are left alone when they are those of the lock', () => expect(differ(one, one)).toBeUndefined())

  it('are installed when one is missing', () => expect(differ(one, {})).toContain('one is missing'))

  it('are installed when one has another version or content', () => {
    expect(differ(one, { 'node_modules/one': { version: '1.0.1', integrity: 'a' } })).toContain('1.0.1')
    expect(differ(one, { 'node_modules/one': { version: '1.0.0', integrity: 'b' } })).toContain('1.0.0')
  })

  it('of other platforms may be missing', () => {
    expect(differ({ ...one, 'node_modules/other': { version: '2.0.0', optional: true } }, one)).toBeUndefined()
  })
})

describe('the native package', () => {
  it('loads here, and not where it is not installed', () => {
    expect(nativePackageLoads(join(import.meta.dirname, '..'))).toBe(true)
    expect(nativePackageLoads(root)).toBe(false)
  })

  it('wants for the tools that are not on the path, by their names', () => {
    write('bin/python3', '')
    expect(wantedForCompiling([join(root, 'bin')])).toContain('needs make, a C++ compiler, which')
    write('bin/make', '')
    write('bin/clang++', '')
    expect(wantedForCompiling([join(root, 'bin')])).toBe('')
    expect(wantedForCompiling([])).toContain('needs python3, make, a C++ compiler')
  })
})

describe('the stamp of the sources', () => {
  it('changes with a content, a name and a new file, and with nothing else', () => {
    write('engine/a.ts', 'a')
    const first = sourceStamp(root)
    expect(sourceStamp(root)).toBe(first)
    write('engine/a.test.ts', 'a test')
    write('docs/a.md', 'words')
    expect(sourceStamp(root)).toBe(first)
    write('engine/a.ts', 'b')
    const changed = sourceStamp(root)
    write('engine/b.ts', '')
    const added = sourceStamp(root)
    expect(new Set([first, changed, added])).toHaveProperty('size', 3) // SOURCE hand (three different stamps)
  })
})
