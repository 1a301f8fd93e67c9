// SOURCE hand (exit statuses: 0 all met, 64 wrong use, as `fingerwright --help` states them)
import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'

const root = join(import.meta.dirname, '..')
let home: string

/** The built command as it stands where its native package could not be built. */
beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), 'fingerwright-bare-'))
  mkdirSync(join(home, 'build'))
  for (const path of ['build/command', 'designs', 'package.json']) cpSync(join(root, path), join(home, path), { recursive: true })
})
afterAll(() => rmSync(home, { recursive: true, force: true }))

const run = (...words: readonly string[]) =>
  spawnSync(process.execPath, ['build/command/fingerwright.mjs', ...words], {
    cwd: home,
    encoding: 'utf8',
    env: { ...process.env, FINGERWRIGHT_STORE: join(home, 'store') },
  })

it('a verdict on a file needs no database', () => {
  expect(run('verdict', 'designs/heron.json').status).toBe(0)
})

it('a command that needs the database says what is missing and what to do', () => {
  const { status, stderr } = run('keep', 'designs/heron.json', '--who', 'K1', '--why', 'as drawn')
  expect(status).toBe(64)
  expect(stderr).toContain('better-sqlite3: a package that does not load')
  expect(stderr).toContain('C++ compiler')
  expect(stderr).toContain('npm rebuild better-sqlite3')
})
