// SOURCE standard RFC 9110 (status codes 200, 422, 503), from memory
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { TypesetFault, typesetterAt } from '../typesetting/index.ts'
import { createApp, type Given } from './app.ts'
import { exampleServer } from './test-support/example-server.ts'

const home = join(import.meta.dirname, '..')
const heron = readFileSync(join(home, 'designs/heron.json'), 'utf8')
const said = {
  title: 'Card',
  design: 'Heron',
  foot: 'e 1',
  caution: 'Load it first.',
  ground: 'By calculation.',
  released: [],
  held: ['Bag'],
  never: ['Hang'],
}
const job = { template: 'limits-card', data: said }
const typeset = typesetterAt(home)

const { given, end } = await exampleServer(heron)
await end()
const ask = (body: object, more: Partial<Given> = { typeset }, signal?: AbortSignal) =>
  createApp({ ...given, ...more }).request('http://127.0.0.1/api/documents', {
    method: 'POST',
    ...(signal && { signal }),
    headers: { host: '127.0.0.1', 'content-type': 'application/json' },
    body: JSON.stringify(body),
  })

describe('a document that the page asks for', () => {
  it('is the same bytes as at the command line', async () => {
    const [response, [plain]] = await Promise.all([ask(job), typeset([job])])
    expect([response.status, response.headers.get('content-type')]).toEqual([200, 'application/pdf'])
    expect(Buffer.from(await response.arrayBuffer()).equals(plain)).toBe(true)
  })

  it('is given up when who asked has left', async () => {
    let stopped: AbortSignal | undefined
    const waits: NonNullable<Given['typeset']> = (_, { signal } = {}) => {
      stopped = signal
      return new Promise((_resolve, reject) => signal?.addEventListener('abort', () => reject(signal.reason)))
    }
    const leaving = new AbortController()
    setTimeout(() => leaving.abort(), 20)
    await ask(job, { typeset: waits }, leaving.signal)
    // SOURCE property
    expect(stopped?.aborted).toBe(true)
  })

  it('is refused where its data do not fit, or it is another template; a machine without typesetter says so', async () => {
    const missing = () => Promise.reject(new TypesetFault('no PDF can be made here'))
    const answers = await Promise.all([
      ask({ ...job, data: { title: 'x' } }),
      ask({ ...job, template: '../../secret' }),
      ask(job, { typeset: missing }),
    ])
    expect(answers.map(({ status }) => status)).toEqual([422, 422, 503])
    expect(await answers[0].text()).toContain('limits-card.typ')
  })
})
