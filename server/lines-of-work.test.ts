import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as soon } from 'node:timers/promises'
import { Hono } from 'hono'
import { expect, it } from 'vitest'
import { addShopPack } from './add-shop-pack.ts'
import { linesOfWork } from './lines-of-work.ts'

it('work that is answered in lines tells its steps, then what came of it', async () => {
  const app = new Hono()
  addShopPack(app, undefined)
  const body = readFileSync(join(import.meta.dirname, '../designs/heron.json'), 'utf8')
  const ask = (headers: Record<string, string>) =>
    app.request('/api/shop-pack?name=heron&revision=3', {
      method: 'POST',
      body,
      headers: { 'Content-Type': 'application/json', ...headers },
    })
  const lines = (await (await ask({ Accept: 'application/x-ndjson' })).text()).trimEnd().split('\n')
  const told = lines.map((line) => JSON.parse(line))
  // SOURCE property: the pack of the last line is the one that comes without lines
  const steps = told.slice(0, -1)
  const done = steps.map((step) => step.done)
  expect(new Set(steps.map(({ of }) => of))).toEqual(new Set([100]))
  expect(done).toEqual(done.toSorted((one, other) => one - other))
  expect([steps[0].doing, done[0], steps.at(-1).doing]).toEqual(['drawings', 0, 'checksums and zip'])
  // SOURCE hand: heron has six parts and seven pins, each a solid that is a step of its own
  expect(steps.filter(({ doing }) => doing === 'solids')).toHaveLength(6 + 7)
  const whole = Buffer.from(await (await ask({})).arrayBuffer())
  expect(Buffer.from(told.at(-1).zip, 'base64').equals(whole)).toBe(true)
  expect(told.at(-1).left.join()).toContain('PDF')
})

it('work is stopped when nobody reads on', async () => {
  let reason: unknown
  const answer = linesOfWork(async (tell, signal) => {
    tell({ done: 0 })
    await soon(5)
    reason = signal.aborted
    signal.throwIfAborted()
    return {}
  })
  const reader = answer.body?.getReader()
  await reader?.read()
  await reader?.cancel()
  await soon(20)
  // SOURCE property
  expect(reason).toBe(true)
})
