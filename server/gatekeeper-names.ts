import { isIPv6 } from 'node:net'

/** A name under which the server answers, and whether somebody in front of it speaks TLS for that name. */
export interface OwnName {
  /** As a browser writes it into the Host header, without a port: `bench.example`, `192.168.1.20`, `[fd00::1]`. */
  readonly host: string
  readonly scheme: 'http' | 'https'
}

/** Names of this machine for itself. */
export const loopbackNames: readonly OwnName[] = [
  { host: '127.0.0.1', scheme: 'http' },
  { host: 'localhost', scheme: 'http' },
]

const TYPED = /^(?:(https?):\/\/)?([^/]+)\/?$/i
const HOST = /^(\[[0-9a-f:.]+\]|[^\s/:]+)$/i
const HOST_HEADER = /^([a-z0-9._-]+|\[[0-9a-f:.]+\])(?::\d{1,5})?$/i

/**
 * Reads a name as it was typed: `bench.example`, `192.168.1.20`, `fd00::1`, or with `https://` before it where a proxy speaks TLS.
 *
 * @returns the name as browsers write it; undefined for what is no name, or has a port or a path
 */
export function readOwnName(typed: string): OwnName | undefined {
  const [, scheme = 'http', named = ''] = TYPED.exec(typed) ?? []
  const host = isIPv6(named) ? `[${named}]` : named
  const address = `${scheme.toLowerCase()}://${host}/`
  if (!HOST.test(host) || !URL.canParse(address)) return undefined
  const { protocol, hostname, href } = new URL(address)
  // A user or a question in the name would stand in the address too.
  if (href !== `${protocol}//${hostname}/` || !HOST_HEADER.test(hostname)) return undefined
  return { host: hostname, scheme: protocol === 'https:' ? 'https' : 'http' }
}

/**
 * Which of the server's names a Host header holds. The port is free, because it may have been forwarded; of two entries for one
 * name the later one counts.
 */
export function ownNameOf(header: string, names: readonly OwnName[]): OwnName | undefined {
  const host = HOST_HEADER.exec(header)?.[1]?.toLowerCase()
  return names.findLast((name) => name.host === host)
}
