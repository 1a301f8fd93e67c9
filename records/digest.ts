import { createHash } from 'node:crypto'

/** SHA-256 of a text, in hexadecimal digits: by it a file is known again without being kept. */
export function digest(text: string): string {
  return createHash('sha256').update(text).digest('hex')
}
