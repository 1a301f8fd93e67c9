// SOURCE property (a table of readings is there whole or not at all, whenever the server is killed while it comes in)
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterAll, expect, it } from 'vitest'
import { seeded } from '../engine/sketches/seeded.ts'
import { openStore } from '../records/index.ts'
import { askJson } from '../server/test-support/asked-json.ts'
import { startBuiltServer } from './doors.ts'

const READINGS = 5000
const SETS = 125
const KILLS = 3
/** Once they are being written, readings take this long and longer: kills fall into it, and on a fast machine behind it. */
const WRITTEN_ms = 400

const folder = mkdtempSync(join(tmpdir(), 'fingerwright-readings-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const lots = Array.from({ length: KILLS }, (_, index) => `L${index}`)
const rowsOf = (lot: string) => [
  ['serial', 'characteristic', 'found'],
  ...Array.from({ length: READINGS }, (_, index) => [`${lot}-${index % SETS}`, 'dimensions.topLinkLength', '24.507']),
]
const send = (address: string, lot: string) =>
  askJson(address, ['POST', '/api/designs/heron/readings', { who: 'K1', lot, rows: rowsOf(lot), file: `${lot}.csv` }])
const wait = (time_ms: number) => new Promise((resolve) => setTimeout(resolve, time_ms))

/** Waits until another program writes to the store, for then SQLite lets nobody else begin to, or until it has answered. */
async function written(answer: Promise<unknown>): Promise<void> {
  let isAnswered = false
  void answer.then(() => {
    isAnswered = true
  })
  const database = new Database(join(folder, 'store.sqlite'), { timeout: 0 })
  const isFree = (): boolean => {
    try {
      database.exec('begin immediate')
      database.exec('rollback')
      return true
    } catch (error) {
      if (error instanceof Error && 'code' in error && error.code === 'SQLITE_BUSY') return false
      throw error
    }
  }
  while (!isAnswered && isFree()) await wait(1)
  database.close()
}

const openHere = () => openStore({ folder, now: () => new Date(0) })

it('5,000 readings are there, or none, when the server is killed while they come in', async () => {
  const text = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
  const results = { engine: 'e 1', figures: '{}', findings: '[]', problems: '[]' }
  const first = await openHere()
  first.keepRevision('heron', { text, ...results, who: 'K1', why: 'as drawn' })
  const entries = lots.map((lot) => ({ kind: 'lot', lot, revision: 1 }) as const)
  first.bench.keepEntries('heron', { entries, who: 'K1', engine: 'e 1' })
  first.close()

  let server = await startBuiltServer(folder)
  const dice = seeded(41_207)
  let cut = 0
  for (const [index, lot] of lots.entries()) {
    if (index > 0) server = await startBuiltServer(folder)
    const coming = send(server.address, lot).then(
      ({ status }) => status,
      () => 'cut off' as const,
    )
    await written(coming)
    // One in each stretch of the time that it takes.
    await wait((WRITTEN_ms * (index + dice.between(0, 1))) / KILLS)
    await server.end('SIGKILL')
    const store = await openHere()
    const { length } = store.bench.readings('heron', lot) ?? []
    store.close()
    const answer = await coming
    if (answer === 'cut off') cut++
    expect(answer === 201 ? [READINGS] : [0, READINGS]).toContain(length)
  }
  expect(cut).toBeGreaterThan(0)
  const database = new Database(join(folder, 'store.sqlite'), { readonly: true })
  expect(database.pragma('integrity_check', { simple: true })).toBe('ok')
  expect(database.pragma('foreign_key_check')).toEqual([])
  database.close()
})
