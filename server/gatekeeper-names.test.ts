import { describe, expect, it } from 'vitest'
import { loopbackNames, ownNameOf, readOwnName } from './gatekeeper-names.ts'

describe('a name, as typed', () => {
  it.each([
    ['bench.example', 'bench.example', 'http'],
    ['Bench.Example', 'bench.example', 'http'],
    ['https://bench.example', 'bench.example', 'https'],
    ['HTTPS://bench.example/', 'bench.example', 'https'],
    ['http://bench', 'bench', 'http'],
    ['192.168.1.20', '192.168.1.20', 'http'],
    ['fd00:0:0::1', '[fd00::1]', 'http'],
    ['https://[fd00::1]', '[fd00::1]', 'https'],
    ['bücher.example', 'xn--bcher-kva.example', 'http'],
  ])('%s is read as %s over %s, as a browser writes it', (typed, host, scheme) => {
    // SOURCE standard RFC 3492 and 5952 (the forms of names and IPv6 addresses), from memory
    expect(readOwnName(typed)).toEqual({ host, scheme })
  })

  it.each([
    '',
    ' ',
    '*',
    '*.example',
    'bench.example:4117',
    'https://bench.example:8443',
    'https://bench.example/page',
    'bench.example?x',
    'bench.example#x',
    'who@bench.example',
    'who:word@bench.example',
    'ftp://bench.example',
    'https://',
    'a b',
    'cafe:80',
    'https://bench:443',
    'fd00::1%eth0',
    '[fd00::1]:80',
    'a\nb',
    'bench.example,other.example',
  ])('"%s" is refused', (typed) => {
    expect(readOwnName(typed)).toBeUndefined()
  })
})

describe('a Host header', () => {
  const names = [...loopbackNames, { host: '[fd00::1]', scheme: 'http' }, { host: 'bench.example', scheme: 'https' }] as const

  it.each(['localhost', 'LOCALHOST:9000', '127.0.0.1:1', '[fd00::1]', '[FD00::1]:4117', 'bench.example', 'bench.example:8443'])(
    '%s is one of ours',
    (header) => {
      expect(ownNameOf(header, names)).toBeDefined()
    },
  )

  it.each([
    '',
    'evil.example',
    'evil.bench.example',
    'bench.example.evil',
    'bench.example.',
    'bench.example:123456',
    'bench.example:',
    'bench.example@evil.example',
    'who@bench.example',
    '[fd00::2]',
    'fd00::1',
    '[::ffff:127.0.0.1]',
    '127.1',
    '2130706433',
    '0.0.0.0',
    '__proto__',
  ])('"%s" is not', (header) => {
    expect(ownNameOf(header, names)).toBeUndefined()
  })

  it('is judged by the later of two entries for one name', () => {
    expect(ownNameOf('localhost', [...loopbackNames, { host: 'localhost', scheme: 'https' }])?.scheme).toBe('https')
  })
})
