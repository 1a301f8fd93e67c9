import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { designFilesIn, shelve } from './design-shelf.ts'

const folder = mkdtempSync(join(tmpdir(), 'fingerwright-shelf-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
for (const name of ['heron.json', 'heron-jams.json', 'crane.json', 'notes.txt']) writeFileSync(join(folder, name), name)

it('design files are listed by name, a plain name before its variants', () => {
  expect(designFilesIn(folder).map((path) => basename(path))).toEqual(['crane.json', 'heron.json', 'heron-jams.json'])
  expect(designFilesIn(join(folder, 'nowhere'))).toEqual([])
})

it('two files of one name are both kept', async () => {
  const shelf = shelve([join(folder, 'heron.json'), join(folder, 'heron.json')])
  expect(shelf.names).toEqual(['heron', 'heron-2'])
  expect(Buffer.from((await shelf.read('heron-2')) ?? []).toString()).toBe('heron.json')
})

it('nothing else is on the shelf, and a file that has gone is not there', async () => {
  const shelf = shelve([join(folder, 'gone.json')])
  expect(await shelf.read('gone')).toBeUndefined()
  expect(await shelf.read('crane')).toBeUndefined()
  expect(await shelf.read('__proto__')).toBeUndefined()
})
