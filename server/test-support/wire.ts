import { connect } from 'node:net'

/** Bytes to be sent as they are. */
export interface Sending {
  readonly pieces: readonly (Uint8Array | string)[]
  /** Whether the sender leaves its side of the connection open after the last piece, as if more were to come. */
  readonly staysOpen?: boolean
}

/**
 * Sends bytes to a server piece by piece and reads until the server has closed the connection.
 *
 * @returns what the server sent, as Latin-1 text; a connection that it cut off is no fault of the test
 */
export function overTheWire(address: string, { pieces, staysOpen = false }: Sending): Promise<string> {
  const { hostname, port } = new URL(address)
  return new Promise((resolve, reject) => {
    const socket = connect({ host: hostname, port: Number(port), allowHalfOpen: true, noDelay: true })
    let received = ''
    socket.setEncoding('latin1')
    socket.on('data', (text: string) => {
      received += text
    })
    socket.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'ECONNRESET' && error.code !== 'EPIPE') reject(error)
    })
    socket.on('end', () => socket.end())
    socket.on('close', () => resolve(received))
    for (const piece of pieces) socket.write(piece)
    if (!staysOpen) socket.end()
  })
}

/** The statuses in what a server sent, in their order. */
export function statusesOf(received: string): readonly number[] {
  return [...received.matchAll(/^HTTP\/1\.1 (\d{3}) /gm)].map((head) => Number(head[1]))
}
