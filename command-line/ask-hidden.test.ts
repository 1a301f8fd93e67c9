import { PassThrough, Writable } from 'node:stream'
import { expect, it } from 'vitest'
import { askHidden } from './ask-hidden.ts'

/** Types keys at a question and gives what came of it, and what stood on the screen. */
async function typing(keys: string): Promise<{ answer: string | undefined; screen: string }> {
  let screen = ''
  const output = new Writable({
    write: (text, _encoding, done) => {
      screen += text
      done()
    },
  })
  const input = new PassThrough()
  const asked = askHidden('Passphrase: ', { input, output })
  input.write(keys)
  return { answer: await asked, screen }
}

it.each([
  ['four plain words\n', 'four plain words'],
  ['four plain words\r', 'four plain words'],
  ['fout\u007fr plain\n', 'four plain'],
  ['wrong\u0015right\n', 'right'],
  ['\n', ''],
  ['żółta\n', 'żółta'],
])('%j is taken as it would be in any line, and never shown', async (keys, answer) => {
  expect(await typing(keys)).toEqual({ answer, screen: 'Passphrase: \n' })
})

it.each(['half\u0003', '\u0004'])('%j ends the question without an answer', async (keys) => {
  expect(await typing(keys)).toEqual({ answer: undefined, screen: 'Passphrase: \n' })
})

it('a second question is answered after the first', async () => {
  const input = new PassThrough()
  const output = new PassThrough()
  const first = askHidden('', { input, output })
  input.write('one\n')
  expect(await first).toBe('one')
  const second = askHidden('', { input, output })
  input.write('two\n')
  expect(await second).toBe('two')
})
