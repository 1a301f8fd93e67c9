import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openAnyStore, type Store } from '../../records/index.ts'
import type { Given } from '../app.ts'
import { loadPage, type Place, shelve, startServer } from '../index.ts'

/** A running server over files of its own, and the way to end it. */
export interface ExampleServer {
  readonly address: string
  /** Folder with heron.json (the example), secret.json (never given to the server) page/ and store/. */
  readonly folder: string
  readonly given: Given
  /** Its store, at a moment that stands still. */
  readonly store: Store
  readonly end: () => Promise<void>
}

/** What a test has otherwise than on loopback. */
export type Otherwise = Pick<Given, 'names' | 'signIn' | 'typeset'> & Pick<Place, 'patience' | 'address'>

const PAGE: Readonly<Record<string, string>> = {
  'index.html': '<!doctype html><title>page</title>',
  'sign-in.html': '<!doctype html><title>sign in</title><p><!-- said --></p>',
  'assets/page.js': 'export {}',
  'assets/sign-in.css': 'p { color: black }',
}

/** Starts a server that was given one design, called heron, and a small page. */
export async function exampleServer(design: string, { patience, address, ...otherwise }: Otherwise = {}): Promise<ExampleServer> {
  const folder = mkdtempSync(join(tmpdir(), 'fingerwright-server-'))
  mkdirSync(join(folder, 'page/assets'), { recursive: true })
  for (const [name, text] of Object.entries(PAGE)) writeFileSync(join(folder, 'page', name), text)
  writeFileSync(join(folder, 'heron.json'), design)
  writeFileSync(join(folder, 'secret.json'), '"secret"')
  const store = await openAnyStore({ folder: join(folder, 'store'), now: () => new Date('2031-04-05T06:07:08.009Z') })
  const shelf = shelve([join(folder, 'heron.json')])
  const given = { shelf, page: loadPage(join(folder, 'page')), store, ...otherwise }
  const place = { port: 0, orNext: false, ...(patience && { patience }), ...(address && { address }) }
  const running = await startServer(given, place)
  const end = async () => {
    await running.close()
    store.close()
    rmSync(folder, { recursive: true, force: true })
  }
  return { address: running.address, folder, given, store, end }
}
