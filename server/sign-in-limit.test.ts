// SOURCE hand (5 free tries of an address and one more a minute, 20 of all and one more every 6 s, as sign-in-limit.ts states them)
import { describe, expect, it } from 'vitest'
import { SignInLimit } from './sign-in-limit.ts'

function limited(): { limit: SignInLimit; clock: { ms: number } } {
  const clock = { ms: 1_000_000 }
  return { limit: new SignInLimit(() => clock.ms), clock }
}

/** What each of so many tries of one address has to wait. */
const takes = (limit: SignInLimit, count: number, address = '192.0.2.1') =>
  Array.from({ length: count }, () => limit.take(address))

describe('tries of one address', () => {
  it('are free five times, then one a minute', () => {
    const { limit, clock } = limited()
    expect(takes(limit, 7)).toEqual([0, 0, 0, 0, 0, 60, 60])
    clock.ms += 59_000
    expect(takes(limit, 1)).toEqual([1])
    clock.ms += 1_000
    expect(takes(limit, 2)).toEqual([0, 60])
  })

  it('that are refused do not lengthen the wait', () => {
    const { limit, clock } = limited()
    takes(limit, 500)
    clock.ms += 60_000
    expect(takes(limit, 1)).toEqual([0])
  })

  it('are all free again after five minutes', () => {
    const { limit, clock } = limited()
    takes(limit, 5)
    clock.ms += 300_000
    expect(takes(limit, 6)).toEqual([0, 0, 0, 0, 0, 60])
  })

  it('are free again for who signed in', () => {
    const { limit } = limited()
    takes(limit, 5)
    limit.forgive('192.0.2.1')
    expect(takes(limit, 1)).toEqual([0])
  })

  it('leave other addresses alone', () => {
    const { limit } = limited()
    takes(limit, 6)
    expect(takes(limit, 1, '192.0.2.2')).toEqual([0])
  })

  it.each([
    ['2001:db8:1:2::1', '2001:db8:1:2:ffff:ffff:ffff:ffff'],
    ['2001:db8::1', '2001:db8:0:0:5::'],
    ['::ffff:192.0.2.1', '192.0.2.1'],
    ['fe80::1%eth0', 'fe80::2'],
  ])('%s and %s count as one: one person holds both', (one, other) => {
    const { limit } = limited()
    expect([...takes(limit, 5, one), ...takes(limit, 1, other)]).toEqual([0, 0, 0, 0, 0, 60])
  })

  it.each([
    ['2001:db8:1:2::1', '2001:db8:1:3::1'],
    ['::1', '1::1'],
    ['192.0.2.1', '192.0.2.2'],
  ])('%s and %s count apart', (one, other) => {
    const { limit } = limited()
    takes(limit, 5, one)
    expect(takes(limit, 1, other)).toEqual([0])
  })
})

describe('tries of all addresses together', () => {
  it('are free twenty times, then one every six seconds, whoever signs in', () => {
    const { limit, clock } = limited()
    const fromMany = (count: number, first: number) =>
      Array.from({ length: count }, (_, index) => limit.take(`192.0.2.${first + index}`))
    expect(fromMany(21, 0)).toEqual([...Array<number>(20).fill(0), 6])
    limit.forgive('192.0.2.3')
    expect(fromMany(1, 3)).toEqual([6])
    clock.ms += 6_000
    expect(fromMany(2, 100)).toEqual([0, 6])
  })
})
