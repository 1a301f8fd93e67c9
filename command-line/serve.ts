import { existsSync } from 'node:fs'
import { join, resolve } from 'node:path'
import * as z from 'zod'
import { designFilesIn, loadPage, type Port, type Running, shelve, startServer } from '../server/index.ts'
import { readDesignFile } from './design-file.ts'
import { type Terminal, WrongUse } from './terminal.ts'

/** Where the page is looked for first; when another program has it, the next free port is taken. */
const USUAL_PORT = 4117

const portNumber = z
  .string()
  .regex(/^\d{1,5}$/)
  .transform(Number)
  .pipe(z.number().max(65_535))

/** What `serve` was asked for: a design to show first and a port, as typed. */
export interface ServeOptions {
  readonly path: string | undefined
  readonly port: string | undefined
}

/**
 * Serves the page on loopback until the user ends it.
 *
 * @throws WrongUse when the design cannot be opened, the page is not built, or the port asked for is not free
 */
export async function serve({ path, port }: ServeOptions, terminal: Terminal): Promise<void> {
  if (path === '-') throw new WrongUse('serve needs a design in a file')
  if (path !== undefined) await readDesignFile(path, terminal)
  const wanted = wantedPort(port ?? terminal.environment.PORT)
  const files = [...(path === undefined ? [] : [resolve(path)]), ...designFilesIn(join(terminal.home, 'designs'))]
  const given = { shelf: shelve([...new Set(files)]), page: loadPage(builtPage(terminal.home)) }
  const running = await start(() => startServer(given, wanted), wanted)
  terminal.write(`The page is at ${running.address} (Ctrl-C ends it).\n`)
  await terminal.stopped()
  await running.close()
}

function wantedPort(typed: string | undefined): Port {
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

async function start(listen: () => Promise<Running>, { port }: Port): Promise<Running> {
  try {
    return await listen()
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined
    if (code === 'EADDRINUSE') throw new WrongUse(`port ${port} is taken; name another one with --port`)
    if (code === 'EACCES') throw new WrongUse(`port ${port} is not yours to use; name one above 1023 with --port`)
    throw error
  }
}
