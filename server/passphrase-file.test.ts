// SOURCE hand (0600: read and write for the owner, nothing for others; 0700 for a folder)
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { keepPassphrase } from './passphrase.ts'
import { passphraseFile, readPassphrase, UnfitPassphrase, writePassphrase } from './passphrase-file.ts'
import { cheap, passphrase } from './test-support/example-sign-in.ts'

const folder = mkdtempSync(join(tmpdir(), 'fingerwright-passphrase-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const kept = await keepPassphrase(passphrase, cheap)
let number = 0
function storeWith(text?: string): string {
  const store = join(folder, `store-${number++}`)
  writePassphrase(store, kept)
  if (text !== undefined) writeFileSync(passphraseFile(store), text)
  return store
}

it('no passphrase is set in a folder that has none, or is not there', () => {
  expect(readPassphrase(folder)).toBeUndefined()
  expect(readPassphrase(join(folder, 'nowhere'))).toBeUndefined()
})

it('a kept passphrase comes back, from a file and a folder for its owner alone', () => {
  const store = storeWith()
  expect(readPassphrase(store)).toEqual(kept)
  expect(statSync(passphraseFile(store)).mode & 0o777).toBe(0o600)
  expect(statSync(store).mode & 0o777).toBe(0o700)
})

it('a later passphrase replaces the first, closed again to others, and leaves nothing beside it', async () => {
  const store = storeWith()
  chmodSync(passphraseFile(store), 0o644)
  writeFileSync(`${passphraseFile(store)}.new`, 'broken off', { mode: 0o644 })
  const later = await keepPassphrase('another four plain words', cheap)
  writePassphrase(store, later)
  expect(readPassphrase(store)).toEqual(later)
  expect(readdirSync(store)).toEqual(['passphrase.json'])
})

it.each([0o640, 0o604, 0o620, 0o601])('a file that others can reach (mode %o) is not relied on', (mode) => {
  const store = storeWith()
  chmodSync(passphraseFile(store), mode)
  expect(() => readPassphrase(store)).toThrow(UnfitPassphrase)
  expect(() => readPassphrase(store)).toThrow('chmod 600')
})

it.each(['', '{', 'null', '{}', '{ "__proto__": {} }', JSON.stringify({ ...kept, hash: 'AAAA' })])(
  'a file that holds %s is not relied on, and stays as it is',
  (text) => {
    const store = storeWith(text)
    expect(() => readPassphrase(store)).toThrow(UnfitPassphrase)
    expect(readFileSync(passphraseFile(store), 'utf8')).toBe(text)
  },
)
