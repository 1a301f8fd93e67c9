// SOURCE hand (twelve hours are 43,200 s; the lives and numbers are stated in sessions.ts)
import { describe, expect, it } from 'vitest'
import { Sessions, sessionLife_s } from './sessions.ts'

function begun(): { sessions: Sessions; clock: { ms: number }; token: string } {
  const clock = { ms: 5_000 }
  const sessions = new Sessions(() => clock.ms)
  return { sessions, clock, token: sessions.begin() }
}

describe('a session', () => {
  it('is known by its token and by no other', () => {
    const { sessions, token } = begun()
    expect(sessions.knows(token)).toBe(true)
    for (const other of [undefined, '', token.slice(1), `${token}A`, token.toLowerCase(), '__proto__', 'constructor']) {
      expect(sessions.knows(other)).toBe(false)
    }
  })

  it('has a token of 256 bits that is another one each time', () => {
    const { sessions } = begun()
    const tokens = Array.from({ length: 50 }, () => sessions.begin())
    expect(new Set(tokens).size).toBe(50)
    for (const token of tokens) expect(Buffer.from(token, 'base64url')).toHaveLength(32)
  })

  it('ends after a working day, however busy', () => {
    const { sessions, clock, token } = begun()
    expect(sessionLife_s).toBe(43_200)
    clock.ms += 43_200_000 - 1
    expect(sessions.knows(token)).toBe(true)
    clock.ms += 1
    expect(sessions.knows(token)).toBe(false)
  })

  it('ends when it is ended, and no other does', () => {
    const { sessions, token } = begun()
    const other = sessions.begin()
    sessions.end(token)
    sessions.end('nobody')
    sessions.end(undefined)
    expect(sessions.knows(token)).toBe(false)
    expect(sessions.knows(other)).toBe(true)
  })

  it('ends, as the oldest, when the hundred-and-first begins', () => {
    const { sessions, token } = begun()
    const second = sessions.begin()
    for (let more = 2; more < 100; more++) sessions.begin()
    expect(sessions.knows(token)).toBe(true)
    sessions.begin()
    expect(sessions.knows(token)).toBe(false)
    expect(sessions.knows(second)).toBe(true)
  })
})
