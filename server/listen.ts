import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { getRequestListener } from '@hono/node-server'
import { createApp, type Given } from './app.ts'

/** The server never listens on another address: what it hands out is nobody's business but this machine's. */
const LOOPBACK = '127.0.0.1'

/** Ports tried after the first one before giving up: more servers than that on one machine are forgotten ones. */
const MOST_PORTS_TRIED = 20

/** A running server. */
export interface Running {
  /** e.g. `http://127.0.0.1:4117/` */
  readonly address: string
  readonly close: () => Promise<void>
}

/** The port to listen on; `orNext` tries the following ones when it is taken. 0 lets the machine choose. */
export interface Port {
  readonly port: number
  readonly orNext: boolean
}

/**
 * Starts a server on loopback.
 *
 * @throws the error of the last port tried (code EADDRINUSE or EACCES) when none is free
 */
export async function startServer(given: Given, { port, orNext }: Port): Promise<Running> {
  const server = createServer(getRequestListener(createApp(given).fetch))
  const last = orNext ? Math.min(port + MOST_PORTS_TRIED, 65_535) : port
  for (let tried = port; ; tried++) {
    const error = await listen(server, tried)
    if (error === undefined) return running(server)
    if (error.code !== 'EADDRINUSE' || tried >= last) throw error
  }
}

function listen(server: Server, port: number): Promise<NodeJS.ErrnoException | undefined> {
  return new Promise((resolve) => {
    const refused = (error: NodeJS.ErrnoException) => resolve(error)
    server.once('error', refused)
    server.listen(port, LOOPBACK, () => {
      server.off('error', refused)
      resolve(undefined)
    })
  })
}

function running(server: Server): Running {
  const { port } = server.address() as AddressInfo
  return {
    address: `http://${LOOPBACK}:${port}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}
