import type { Server, ServerOptions } from 'node:http'

/** How long the server waits for a slow sender. */
export interface Patience {
  /** Until all headers have come, ms. */
  readonly headers_ms: number
  /** Until the whole request has come, ms. */
  readonly request_ms: number
  /** While nothing at all moves on a connection, ms. */
  readonly silence_ms: number
}

/** Ten seconds for headers that fit into a few packets, a minute for the longest body at 50 kB/s, and two for a reader that has stalled. */
export const usualPatience: Patience = { headers_ms: 10_000, request_ms: 60_000, silence_ms: 120_000 }

/** Longest header of a request, all lines together: names, a cookie and what browsers send take 2 kB. */
const HEADERS_bytes = 8 * 1024

/** All header lines are looked at: node:http would drop those past a number without a word, an Origin among them. Their bytes are limited. */
const EVERY_LINE = 0

/** Connections at one time: a browser opens six, and some dozens of people never share one workshop's server. */
const CONNECTIONS = 256

/** How often node:http looks for senders that are too slow, as a share of the shortest patience. */
const LOOKS_PER_PATIENCE = 4

/** What node:http is given when the server is made. */
export function serverOptions({ headers_ms, request_ms }: Patience): ServerOptions {
  return {
    maxHeaderSize: HEADERS_bytes,
    headersTimeout: headers_ms,
    requestTimeout: request_ms,
    connectionsCheckingInterval: Math.min(headers_ms, request_ms) / LOOKS_PER_PATIENCE,
  }
}

/** Sets the limits that node:http takes only once the server is there. */
export function limitConnections(server: Server, { silence_ms }: Patience): void {
  server.maxHeadersCount = EVERY_LINE
  server.maxConnections = CONNECTIONS
  server.setTimeout(silence_ms)
}
