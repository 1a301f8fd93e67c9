import { createReadStream } from 'node:fs'
import { designName, documentLimit_bytes } from '../server/index.ts'
import { type Terminal, WrongUse } from './terminal.ts'

/** A design file as it came: `shown` is the place that messages name. */
export interface DesignFile {
  readonly bytes: Uint8Array
  readonly name: string
  readonly shown: string
  /** Name in the store, of a design that was found there. */
  readonly kept?: string
  /** Its number there, or `draft`. */
  readonly revision?: string
}

/**
 * Reads the file that DESIGN names; `-` is the standard input. Reading stops one byte past the limit, which is enough to refuse
 * the file and ends with every file, a device that never ends included.
 *
 * @throws WrongUse when there is no such file, it is a folder or it may not be read. What is wrong inside of the file is for the
 *         engine to say.
 */
export async function readDesignFile(path: string, terminal: Terminal): Promise<DesignFile> {
  if (path === '-')
    return { bytes: await readBounded(terminal.input(), documentLimit_bytes), name: 'design', shown: 'standard input' }
  try {
    return { bytes: await readBounded(createReadStream(path), documentLimit_bytes), name: designName(path), shown: path }
  } catch (error) {
    throw asWrongUse(error, path)
  }
}

/** Reads up to one byte past a limit: enough to see that there is more. */
export async function readBounded(stream: AsyncIterable<Uint8Array>, most_bytes: number): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  let length_bytes = 0
  for await (const chunk of stream) {
    chunks.push(chunk)
    length_bytes += chunk.byteLength
    if (length_bytes > most_bytes) break
  }
  return Buffer.concat(chunks)
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'a part of this path is not a folder',
  EACCES: 'you are not allowed to use it',
  EPERM: 'you are not allowed to use it',
  EROFS: 'this disk is read-only',
  ENOSPC: 'this disk is full',
  EISDIR: 'this is a folder; name a file inside of it',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links go round in a circle',
  EEXIST: 'it exists already and is left as it is; choose another name',
}

/** Turns a fault of the file system into a message for the user; any other fault stays as it is. */
export function asWrongUse(error: unknown, path: string): unknown {
  if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'string') return error
  const reason = REASONS[error.code]
  return reason === undefined ? error : new WrongUse(`${path}: ${reason}`)
}
