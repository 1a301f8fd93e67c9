// SOURCE standard NIST SP 800-63B-4 (15 characters), RFC 7914 (scrypt), from memory; the bounds beside them are stated in passphrase.ts
import { scryptSync } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { faultOfPassphrase, isPassphrase, keepPassphrase, keptPassphrase } from './passphrase.ts'
import { passphraseCheck } from './passphrase-check.ts'
import { cheap, passphrase } from './test-support/example-sign-in.ts'

describe('a passphrase', () => {
  it.each(['abcde fghij klm', `${'x'.repeat(252)}abcd`, 'żółta kaczka 12', '⚙️ hammer and anvil', '  two spaces each  '])(
    'is taken: "%s"',
    (text) => {
      expect(faultOfPassphrase(text)).toBeUndefined()
    },
  )

  it.each([
    ['one character too short', 'abcde fghij kl', '14 characters and needs 15'],
    ['empty', '', '0 characters'],
    // Fourteen letters, each of two code units: their number, not their storage, counts.
    ['short in letters that take two units', '𝒳'.repeat(14), '14 characters'],
    ['one character too long', `${'x'.repeat(253)}abcd`, '257 characters'],
    ['of two lines', 'abcde fghij\nklmno', 'cannot be typed'],
    ['with a tab', 'abcde fghij\tklmno', 'cannot be typed'],
    ['of four different characters', 'abcdabcdabcdabcd', '5 different'],
  ])('is refused when it is %s', (_what, text, says) => {
    expect(faultOfPassphrase(text)).toContain(says)
  })
})

describe('what is kept of it', () => {
  it('knows the passphrase again, and nothing near it', async () => {
    const kept = await keepPassphrase(passphrase, cheap)
    expect(await isPassphrase(passphrase, kept)).toBe(true)
    for (const near of ['', ` ${passphrase}`, `${passphrase} `, passphrase.toUpperCase(), passphrase.slice(0, -1), '__proto__']) {
      expect(await isPassphrase(near, kept), near).toBe(false)
    }
  })

  it('knows it however the keyboard put its letters together', async () => {
    const kept = await keepPassphrase('caf\u00e9 on the corner', cheap)
    expect(await isPassphrase('cafe\u0301 on the corner', kept)).toBe(true)
  })

  it('is compared in a time that says nothing: no clock can show it in a test, so the source is read', () => {
    const source = readFileSync(join(import.meta.dirname, 'passphrase.ts'), 'utf8')
    expect(source.match(/return timingSafeEqual\(found, /g)).toHaveLength(1)
    expect(source).not.toMatch(/(found|hash)[^\n]*[!=]==? *(kept|found)|\.equals\(|\.compare\(/)
  })

  it('differs each time, and does not hold the passphrase', async () => {
    const [one, other] = [await keepPassphrase(passphrase, cheap), await keepPassphrase(passphrase, cheap)]
    expect(one.salt).not.toBe(other.salt)
    expect(one.hash).not.toBe(other.hash)
    expect(JSON.stringify(one)).not.toContain(passphrase)
  })

  it('is scrypt at the usual cost of 128 MiB', async () => {
    // SOURCE standard OWASP Password Storage Cheat Sheet (N = 2^17, r = 8, p = 1), from memory; other-method: node's scrypt with those
    const kept = await keepPassphrase(passphrase)
    expect(kept.scrypt).toEqual({ blocks: 131_072, blockSize: 8, lanes: 1 })
    const cost = { N: 131_072, r: 8, p: 1, maxmem: 2 ** 28 }
    const hash = scryptSync(passphrase, Buffer.from(kept.salt, 'base64'), 32, cost)
    expect(kept.hash).toBe(hash.toString('base64'))
    expect(keptPassphrase.parse(JSON.parse(JSON.stringify(kept)))).toEqual(kept)
  })

  it.each([
    ['a cost that takes all memory', { scrypt: { blocks: 2 ** 20, blockSize: 8, lanes: 1 } }],
    ['a cost that is no power of two', { scrypt: { blocks: 1000, blockSize: 8, lanes: 1 } }],
    ['a short salt', { salt: 'AAAA' }],
    ['an empty hash', { hash: '' }],
    ['a hash that is no base64', { hash: '?'.repeat(44) }],
    ['another format', { format: 'fingerwright-passphrase/2' }],
    ['a further key', { hint: 'the usual' }],
  ])('is not taken with %s', async (_what, change) => {
    const kept = await keepPassphrase(passphrase, cheap)
    expect(keptPassphrase.safeParse({ ...kept, ...change }).success).toBe(false)
  })
})

it('checks asked for at once are answered in turn, each with its own answer', async () => {
  const check = passphraseCheck(await keepPassphrase(passphrase, cheap))
  const order: string[] = []
  const noting = async (tried: string) => {
    const answer = await check(tried)
    order.push(tried)
    return answer
  }
  expect(await Promise.all([noting('one'), noting(passphrase), noting('three')])).toEqual([false, true, false])
  expect(order).toEqual(['one', passphrase, 'three'])
})
