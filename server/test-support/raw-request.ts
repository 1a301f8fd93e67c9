import { request } from 'node:http'

/** A request as it goes over the wire: nothing is tidied up, unlike with fetch. */
export interface RawRequest {
  readonly method?: string
  readonly path: string
  readonly headers?: Readonly<Record<string, string>>
  readonly body?: Uint8Array | string
  /** Sends the body in pieces without saying how long it is. */
  readonly chunked?: boolean
}

/** What came back. */
export interface RawAnswer {
  readonly status: number
  readonly headers: Readonly<Record<string, string | string[] | undefined>>
  readonly text: string
}

/**
 * Sends one request to a server on this machine. An answer before the end of a long body counts as the answer, also where the server then
 * closes the connection upon what it never read.
 */
export function send(address: string, { method = 'GET', path, headers = {}, body, chunked }: RawRequest): Promise<RawAnswer> {
  const { hostname, port } = new URL(address)
  const isUnread = method === 'GET' && body !== undefined
  return new Promise((resolve, reject) => {
    const length = chunked === true || body === undefined ? {} : { 'content-length': String(Buffer.byteLength(body)) }
    const sent = request({ hostname, port, method, path, headers: { ...length, ...headers }, agent: false }, (answer) => {
      const chunks: Buffer[] = []
      answer.on('data', (chunk: Buffer) => chunks.push(chunk))
      const came = (): void => {
        resolve({ status: answer.statusCode ?? 0, headers: answer.headers, text: Buffer.concat(chunks).toString('utf8') })
        sent.destroy()
      }
      answer.on('end', came)
      answer.on('error', (error) => (isUnread ? came() : reject(error)))
    })
    sent.on('error', reject)
    sent.end(body)
  })
}
