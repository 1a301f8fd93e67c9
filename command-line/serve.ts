import { existsSync } from 'node:fs'
import { join, resolve } from 'node:path'
import * as z from 'zod'
import { openAnyStore } from '../records/index.ts'
import { designFilesIn, loadPage, type Place, type Running, shelve, startServer } from '../server/index.ts'
import { typesetterAt } from '../typesetting/index.ts'
import { readDesignFile } from './design-file.ts'
import { addressToType, type DoorOptions, openDoor, warningOf } from './serve-door.ts'
import { storeFolder } from './store-folder.ts'
import { type Terminal, WrongUse } from './terminal.ts'

/** Where the page is looked for first; when another program has it, the next free port is taken. */
const USUAL_PORT = 4117

const portNumber = z
  .string()
  .regex(/^\d{1,5}$/)
  .transform(Number)
  .pipe(z.number().max(65_535))

/** What `serve` was asked for, as typed: a design to show first, a port, and who else may come in. */
export interface ServeOptions extends DoorOptions {
  readonly path: string | undefined
  readonly port?: string
}

/**
 * Serves the page until the user ends it; on loopback, unless others are let in.
 *
 * @throws WrongUse when the design cannot be opened, the page is not built, the place asked for is not free, or others would be let in
 *         without a passphrase
 */
export async function serve({ path, port, ...asked }: ServeOptions, terminal: Terminal): Promise<void> {
  if (path === '-') throw new WrongUse('serve needs a design in a file')
  if (path !== undefined) await readDesignFile(path, terminal)
  const door = openDoor(asked, terminal)
  const wanted = { ...wantedPort(port ?? terminal.environment.PORT), address: door.address }
  const files = [...(path === undefined ? [] : [resolve(path)]), ...designFilesIn(join(terminal.home, 'designs'))]
  const page = loadPage(builtPage(terminal.home))
  const store = await openAnyStore({ folder: storeFolder(asked.store, terminal), now: terminal.now })
  const given = { shelf: shelve([...new Set(files)]), page, store, typeset: typesetterAt(terminal.home), ...door }
  try {
    const running = await start(() => startServer(given, wanted), wanted)
    // One piece: whoever only waits for the address may close the pipe behind it.
    const kept = store.notKept === undefined ? `What is saved is kept in ${store.file}.\n` : ''
    terminal.write(`The page is at ${addressToType(running, door)} (Ctrl-C ends it).\n${kept}${warningOf(door)}`)
    if (store.notKept !== undefined) terminal.writeError(`Nothing can be saved now. ${store.notKept}\n`)
    for (const note of store.notes) terminal.writeError(`${note}\n`)
    await terminal.stopped()
    await running.close()
  } finally {
    store.close()
  }
}

function wantedPort(typed: string | undefined): Place {
  if (typed === undefined || typed === '') return { port: USUAL_PORT, orNext: true }
  const number = portNumber.safeParse(typed)
  if (!number.success) throw new WrongUse(`port "${typed}": a port is a whole number from 0 to 65535`)
  return { port: number.data, orNext: false }
}

function builtPage(home: string): string {
  const folder = join(home, 'build/page')
  if (!existsSync(join(folder, 'index.html'))) throw new WrongUse('the page is not built yet; npm start builds it')
  return folder
}

async function start(listen: () => Promise<Running>, { port, address }: Place): Promise<Running> {
  try {
    return await listen()
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined
    if (code === 'EADDRINUSE') throw new WrongUse(`port ${port} is taken; name another one with --port`)
    if (code === 'EACCES') throw new WrongUse(`port ${port} is not yours to use; name one above 1023 with --port`)
    if (code === 'EADDRNOTAVAIL') throw new WrongUse(`--host ${address}: this is no address of this machine`)
    throw error
  }
}
