import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { getRequestListener } from '@hono/node-server'
import { createApp, type Given } from './app.ts'
import { limitConnections, type Patience, serverOptions, usualPatience } from './connection-limits.ts'

/** Unless it is told another one, the server listens here: what it hands out is nobody's business but this machine's. */
const LOOPBACK = '127.0.0.1'

/** Ports tried after the first one before giving up: more servers than that on one machine are forgotten ones. */
const MOST_PORTS_TRIED = 20

/** A running server. */
export interface Running {
  /** e.g. `http://127.0.0.1:4117/` */
  readonly address: string
  readonly close: () => Promise<void>
}

/** Where to listen; `orNext` tries the following ports when this one is taken. Port 0 lets the machine choose. */
export interface Place {
  readonly port: number
  readonly orNext: boolean
  /** IP address to listen on; loopback when it is left out. */
  readonly address?: string
  readonly patience?: Patience
}

/**
 * Starts a server, on loopback unless it is told another address.
 *
 * @throws the error of the last port tried when none is free (EADDRINUSE, EACCES) or the address is not this machine's (EADDRNOTAVAIL)
 */
export async function startServer(given: Given, place: Place): Promise<Running> {
  const { port, orNext, address = LOOPBACK, patience = usualPatience } = place
  const server = createServer(serverOptions(patience), getRequestListener(createApp(given).fetch))
  limitConnections(server, patience)
  const last = orNext ? Math.min(port + MOST_PORTS_TRIED, 65_535) : port
  for (let tried = port; ; tried++) {
    const error = await listen(server, { port: tried, host: address })
    if (error === undefined) return running(server)
    if (error.code !== 'EADDRINUSE' || tried >= last) throw error
  }
}

function listen(
  server: Server,
  at: { readonly port: number; readonly host: string },
): Promise<NodeJS.ErrnoException | undefined> {
  return new Promise((resolve) => {
    const refused = (error: NodeJS.ErrnoException) => resolve(error)
    server.once('error', refused)
    server.listen(at, () => {
      server.off('error', refused)
      resolve(undefined)
    })
  })
}

function running(server: Server): Running {
  const { address, family, port } = server.address() as AddressInfo
  return {
    address: `http://${family === 'IPv6' ? `[${address}]` : address}:${port}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}
