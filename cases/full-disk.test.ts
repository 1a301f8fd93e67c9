/**
 * The server's process may write files of a limited size only. Where the limit is reached, the operating system refuses the write
 * half-way, as it does on a full disk, with another number for the reason (EFBIG for ENOSPC). It needs no disk of its own and no
 * rights; SQLite's own answer to a full disk is tried in records/full-store.test.ts.
 */
// SOURCE property (what was acknowledged is there; what was refused is not)
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { openStore } from '../records/index.ts'
import { askJson } from '../server/test-support/asked-json.ts'
import { startBuiltServer } from './doors.ts'
import { KeptWork } from './kept-work.ts'

/** In blocks of 512 bytes, as the shell counts: room for a handful of saves. A process that ignores the signal gets the error instead. */
const LIMIT = "trap '' XFSZ; ulimit -f 600"

const folder = mkdtempSync(join(tmpdir(), 'fingerwright-full-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

it('a disk that takes no more is told at each save, and everything saved before is read on and kept', async () => {
  const work = new KeptWork()
  const small = await startBuiltServer(folder, LIMIT)
  let answer = await work.save(small.address)
  for (let save = 0; answer.status < 300 && save < 100; save++) answer = await work.save(small.address)
  const kept = [...work.steps]
  expect(kept.length).toBeGreaterThan(0)
  for (let again = 0; again < 3; again++) {
    const { status, json } = await work.save(small.address)
    expect(status).toBe(503)
    expect(json.error).toContain(`Not saved. ${folder}`)
    expect(json.error).toContain('What was saved before is kept.')
  }
  expect(await work.reload(small.address)).toEqual(kept)
  expect((await askJson(small.address, ['GET', '/api/designs'])).status).toBe(200)
  await small.end('SIGKILL')

  const roomy = await startBuiltServer(folder)
  expect(await work.reload(roomy.address)).toEqual(kept)
  expect((await work.save(roomy.address)).status).toBeLessThan(300)
  await roomy.end('SIGTERM')
  const store = await openStore({ folder, now: () => new Date(0) })
  for (const { number, why } of work.revisions) expect(store.revision('heron', number)?.why).toBe(why)
  store.close()
})
