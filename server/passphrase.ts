/**
 * The passphrase that lets a person in, and what is kept of it: a salted hash that costs a guesser memory and time.
 *
 * Source: RFC 7914 (scrypt); OWASP Password Storage Cheat Sheet (cost); NIST SP 800-63B-4, 3.1.1.2 (length, normal form); all from memory.
 */
import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from 'node:crypto'
import * as z from 'zod'

/** Fewest characters. Where a passphrase alone lets a person in, SP 800-63B-4 asks for 15: four short words. */
export const leastPassphrase_characters = 15

/** Fewest different characters: fewer than this are a key held down, which any guesser tries first. */
const LEAST_DIFFERENT = 5

/** Most characters: far past any sentence that a person types, and short of what slows the first hash. */
const MOST_characters = 256

/**
 * What one guess costs: `blocks`·`blockSize`·128 bytes of memory and about half a second of one core. OWASP's first choice:
 * 128 MiB make guessing on graphics cards dear, and a person signing in waits no longer than a breath.
 */
const COST: Cost = { blocks: 2 ** 17, blockSize: 8, lanes: 1 }

/** Most memory that a kept hash may ask for: a file with a greater cost was not written by this program. */
const MOST_MEMORY_bytes = 512 * 2 ** 20

const SALT_bytes = 16
const HASH_bytes = 32

const base64 = (length_bytes: number) =>
  z.base64().refine((text) => Buffer.from(text, 'base64').byteLength === length_bytes, `must be ${length_bytes} bytes`)

/** Parameters of scrypt under their own words: N, r and p of RFC 7914. */
const cost = z.strictObject({
  blocks: z
    .int()
    .min(2)
    .refine((blocks) => Number.isInteger(Math.log2(blocks)), 'must be a power of two'),
  blockSize: z.int().min(1).max(64),
  lanes: z.int().min(1).max(16),
})

type Cost = z.infer<typeof cost>

/** The form of a kept passphrase, as it stands in its file. */
export const keptPassphrase = z.strictObject({
  format: z.literal('fingerwright-passphrase/1'),
  scrypt: cost.refine((asked) => memoryOf(asked) <= MOST_MEMORY_bytes, 'asks for too much memory'),
  salt: base64(SALT_bytes),
  hash: base64(HASH_bytes),
})

/** What is kept of a passphrase; the passphrase cannot be read back from it. */
export type KeptPassphrase = z.infer<typeof keptPassphrase>

/** Why a passphrase is not taken, as the end of a sentence; undefined when it is. */
export function faultOfPassphrase(passphrase: string): string | undefined {
  const characters = [...normal(passphrase)]
  if (characters.length < leastPassphrase_characters) {
    const why = 'it is all that stands between the network and the designs, and shorter ones are guessed'
    return `it has ${characters.length} characters and needs ${leastPassphrase_characters} (${why}); four words that do not belong together will do`
  }
  if (characters.length > MOST_characters) return `it has ${characters.length} characters; ${MOST_characters} are the most`
  if (/\p{Cc}/u.test(passphrase)) return 'it holds a character that cannot be typed into the page, such as a tab or a second line'
  if (new Set(characters).size < LEAST_DIFFERENT) return `it needs ${LEAST_DIFFERENT} different characters`
  return undefined
}

/** What is to be kept of a passphrase, with a salt of its own. Takes about half a second at the usual cost. */
export async function keepPassphrase(passphrase: string, asked: Cost = COST): Promise<KeptPassphrase> {
  const salt = randomBytes(SALT_bytes)
  const hash = await hashed(passphrase, { salt, asked })
  return { format: 'fingerwright-passphrase/1', scrypt: asked, salt: salt.toString('base64'), hash: hash.toString('base64') }
}

/** Whether this is the passphrase that was kept. The comparison takes the same time wherever the hashes begin to differ. */
export async function isPassphrase(passphrase: string, kept: KeptPassphrase): Promise<boolean> {
  const found = await hashed(passphrase, { salt: Buffer.from(kept.salt, 'base64'), asked: kept.scrypt })
  return timingSafeEqual(found, Buffer.from(kept.hash, 'base64'))
}

/** One and the same text however a keyboard put it together: NFKC, as SP 800-63B asks. */
function normal(passphrase: string): string {
  return passphrase.normalize('NFKC')
}

function memoryOf({ blocks, blockSize, lanes }: Cost): number {
  return 128 * blockSize * (blocks + lanes)
}

function hashed(passphrase: string, { salt, asked }: { readonly salt: Buffer; readonly asked: Cost }): Promise<Buffer> {
  // Node refuses a cost that needs exactly the memory it is given.
  const options: ScryptOptions = { N: asked.blocks, r: asked.blockSize, p: asked.lanes, maxmem: 2 * memoryOf(asked) }
  return new Promise((resolve, reject) => {
    scrypt(normal(passphrase), salt, HASH_bytes, options, (error, hash) => (error === null ? resolve(hash) : reject(error)))
  })
}
