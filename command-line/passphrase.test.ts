// SOURCE hand (exit statuses 0 and 64 as `fingerwright --help` states them)
import { chmodSync, existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const folder = testFolder()
const PASSPHRASE = 'four plain words here'

let number = 0
const freshStore = () => join(folder, `store-${number++}`)
const fileIn = (store: string) => join(store, 'passphrase.json')

describe('passphrase from the standard input', () => {
  it.each([PASSPHRASE, `${PASSPHRASE}\n`, `${PASSPHRASE}\r\n`])('is kept as a hash: %j', async (input) => {
    const store = freshStore()
    const { status, output, errors } = await tryCommand(['passphrase', '--store', store], { input })
    expect({ status, errors }).toEqual({ status: 0, errors: '' })
    expect(output).toContain(fileIn(store))
    expect(output).not.toContain(PASSPHRASE)
    expect(readFileSync(fileIn(store), 'utf8')).not.toContain(PASSPHRASE)
    expect(statSync(fileIn(store)).mode & 0o777).toBe(0o600)
  })

  it.each([
    ['too short', 'abcde fghij kl\n', 'needs 15'],
    ['empty', '', '0 characters'],
    ['two lines', `${PASSPHRASE}\n${PASSPHRASE}\n`, 'second line'],
    ['no UTF-8', new Uint8Array([...Buffer.from(PASSPHRASE), 0xff]), 'UTF-8'],
  ])('is refused when it is %s, and the one before stays', async (_what, input, says) => {
    const store = freshStore()
    mkdirSync(store)
    writeFileSync(fileIn(store), 'the one before')
    const { status, output, errors } = await tryCommand(['passphrase', '--store', store], { input })
    expect({ status, output }).toEqual({ status: 64, output: '' })
    expect(errors).toContain(says)
    expect(errors).toContain('left as it was')
    expect(readFileSync(fileIn(store), 'utf8')).toBe('the one before')
  })

  it('goes to the folder that the environment names', async () => {
    const store = freshStore()
    await tryCommand(['passphrase'], { input: PASSPHRASE, environment: { FINGERWRIGHT_STORE: store } })
    expect(existsSync(fileIn(store))).toBe(true)
  })

  it('says so when the folder cannot be used', async () => {
    const file = join(folder, 'a-file')
    writeFileSync(file, '')
    const { status, errors } = await tryCommand(['passphrase', '--store', join(file, 'below')], { input: PASSPHRASE })
    expect(status).toBe(64)
    expect(errors).toContain('not a folder')
  })
})

describe('passphrase typed at a terminal', () => {
  async function typing(...answers: readonly (string | undefined)[]) {
    const store = freshStore()
    const tried = await tryCommand(['passphrase', '--store', store], { typed: answers })
    return { ...tried, isSet: existsSync(fileIn(store)) }
  }

  it('is asked for twice', async () => {
    expect(await typing(PASSPHRASE, PASSPHRASE)).toMatchObject({ status: 0, isSet: true })
  })

  it.each([
    ['the two differ', [PASSPHRASE, `${PASSPHRASE}!`], 'not the same'],
    ['the first is too short', ['short'], 'needs 15'],
    ['the reader ends the first', [undefined], 'left as it was'],
    ['the reader ends the second', [PASSPHRASE, undefined], 'left as it was'],
  ])('is not set when %s', async (_what, answers, says) => {
    const { status, errors, isSet } = await typing(...answers)
    expect({ status, isSet }).toEqual({ status: 64, isSet: false })
    expect(errors).toContain(says)
  })
})

it('a passphrase that others can read is told apart from none', async () => {
  const store = freshStore()
  await tryCommand(['passphrase', '--store', store], { input: PASSPHRASE })
  chmodSync(fileIn(store), 0o644)
  const { status, errors } = await tryCommand(['serve', '--host', '127.0.0.1', '--store', store])
  expect(status).toBe(64)
  expect(errors).toContain('chmod 600')
})
