import { isIP } from 'node:net'
import {
  loopbackNames,
  type OwnName,
  passphraseFile,
  type Running,
  readOwnName,
  readPassphrase,
  type SignIn,
  UnfitPassphrase,
} from '../server/index.ts'
import { asWrongUse } from './design-file.ts'
import { storeFolder } from './store-folder.ts'
import { type Terminal, WrongUse } from './terminal.ts'

/** Who may come in, as typed: the address to listen on, further names of the server, the store whose passphrase counts. */
export interface DoorOptions {
  readonly host?: string
  readonly name?: readonly string[]
  readonly store?: string
}

/** Where a server listens, under which names it answers, and what a person must know. Without `signIn` it is for this machine only. */
export interface Door {
  readonly address: string
  readonly names: readonly OwnName[]
  readonly signIn?: SignIn
}

/** Addresses that stand for every address of the machine; no browser can ask for them. */
const EVERY_ADDRESS: ReadonlySet<string> = new Set(['0.0.0.0', '::'])

const LOOPBACK = '127.0.0.1'
const IS_LOOPBACK = /^(127\.|::1$)/

/**
 * Opens the server's door as far as it was asked to. As soon as `--host` or `--name` lets others in, they have to sign in.
 *
 * @throws WrongUse for what is no address or no name, and while no passphrase is set
 */
export function openDoor({ host, name: typed = [], store }: DoorOptions, terminal: Terminal): Door {
  if (host === undefined && typed.length === 0) return { address: LOOPBACK, names: loopbackNames }
  const names = typed.map(asOwnName)
  const signIn = { kept: keptPassphrase(store, terminal), now: Date.now }
  if (host === undefined) return { address: LOOPBACK, names: [...loopbackNames, ...names], signIn }
  if (isIP(host) === 0 || host.includes('%')) {
    throw new WrongUse(`--host "${host}": give an IP address of this machine, such as 192.168.1.20; names go with --name`)
  }
  if (!EVERY_ADDRESS.has(host)) return { address: host, names: [asOwnName(host), ...names], signIn }
  if (names.length > 0) return { address: host, names, signIn }
  throw new WrongUse(`--host ${host} is every address of this machine; say with --name which one you will type into the browser`)
}

/** What to type into a browser: the port that was taken under the door's first name, or that name alone where a proxy stands before it. */
export function addressToType(running: Running, { names: [first] }: Pick<Door, 'names'>): string {
  if (first?.scheme === 'https') return `https://${first.host}/`
  const url = new URL(running.address)
  url.hostname = first?.host ?? url.hostname
  return url.href
}

/** What has to be said once about a door: over plain HTTP a listener reads along. Empty where nobody can. */
export function warningOf({ address, names, signIn }: Door): string {
  if (signIn === undefined || IS_LOOPBACK.test(address)) return ''
  const plain = names.filter(({ scheme }) => scheme === 'http').map(({ host }) => host)
  if (plain.length === 0) return ''
  return `Under ${plain.join(', ')} the page goes over the network as plain HTTP: whoever listens there reads the passphrase and the designs.
Leave --host away and lead an SSH tunnel to this machine, or let a proxy speak TLS in front of it: --name https://NAME.\n`
}

function asOwnName(typed: string): OwnName {
  const name = readOwnName(typed)
  if (name !== undefined) return name
  throw new WrongUse(
    `--name "${typed}": give a name or an address without a port, such as bench.example or https://bench.example`,
  )
}

function keptPassphrase(store: string | undefined, terminal: Terminal): SignIn['kept'] {
  const folder = storeFolder(store, terminal)
  const kept = keptIn(folder)
  if (kept !== undefined) return kept
  const command = store === undefined ? 'fingerwright passphrase' : `fingerwright passphrase --store ${store}`
  throw new WrongUse(`this lets others in, and no passphrase is set in ${folder}; set one first: ${command}`)
}

function keptIn(folder: string): SignIn['kept'] | undefined {
  try {
    return readPassphrase(folder)
  } catch (error) {
    if (error instanceof UnfitPassphrase) throw new WrongUse(error.message)
    throw asWrongUse(error, passphraseFile(folder))
  }
}
