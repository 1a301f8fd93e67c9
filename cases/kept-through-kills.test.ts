// SOURCE property (an acknowledged save is there whatever happens afterwards; a save without an answer is there whole or not at all)
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterAll, expect, it } from 'vitest'
import { seeded } from '../engine/sketches/seeded.ts'
import { openStore } from '../records/index.ts'
import { type BuiltServer, startBuiltServer } from './doors.ts'
import { KeptWork } from './kept-work.ts'

const SAVES = 300
const KILLS = 12
/** A save takes about this long, so that kills fall before, into and behind its transaction. */
const LONGEST_ms = 12

const folder = mkdtempSync(join(tmpdir(), 'fingerwright-kills-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const wait = (time_ms: number) => new Promise((resolve) => setTimeout(resolve, time_ms))

it('every acknowledged save is there after the server was killed at random moments during 300 saves', async () => {
  const dice = seeded(41_207)
  const work = new KeptWork()
  const cut = { answered: 0, lost: 0 }

  /** One save into which the server is killed; the next server then holds everything that was acknowledged. */
  async function killInto(server: BuiltServer): Promise<BuiltServer> {
    const saving = work.save(server.address).then(
      () => 'answered' as const,
      () => 'lost' as const,
    )
    await wait(dice.between(0, LONGEST_ms))
    await server.end('SIGKILL')
    cut[await saving]++
    const acknowledged = [...work.steps]
    const next = await startBuiltServer(folder)
    const found = await work.reload(next.address)
    expect(found.slice(0, acknowledged.length)).toEqual(acknowledged)
    expect(found.length - acknowledged.length).toBeLessThanOrEqual(1)
    return next
  }

  // One somewhere in each stretch of saves.
  const stretch = SAVES / KILLS
  const cuts = new Set(Array.from({ length: KILLS }, (_, index) => Math.floor(stretch * (index + dice.between(0, 1)))))
  let server = await startBuiltServer(folder)
  for (let save = 0; save < SAVES; save++) {
    if (cuts.has(save)) server = await killInto(server)
    else expect((await work.save(server.address)).status).toBeLessThan(300)
  }
  await server.end('SIGKILL')
  expect(cut.answered + cut.lost).toBe(KILLS)

  const store = await openStore({ folder, now: () => new Date(0) })
  const database = new Database(store.file, { readonly: true })
  expect(database.pragma('integrity_check', { simple: true })).toBe('ok')
  expect(database.pragma('foreign_key_check')).toEqual([])
  database.close()
  expect(store.draft('heron')?.steps.map(({ said }) => said)).toEqual(work.steps)
  for (const { number, why } of work.revisions) expect(store.revision('heron', number)?.why).toBe(why)
  store.close()
})
