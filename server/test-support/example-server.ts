import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { loadPage, shelve, startServer } from '../index.ts'

/** A running server over files of its own, and the way to end it. */
export interface ExampleServer {
  readonly address: string
  /** Folder with heron.json (the example), secret.json (never given to the server) and page/. */
  readonly folder: string
  readonly end: () => Promise<void>
}

/** Starts a server that was given one design, called heron, and a small page. */
export async function exampleServer(design: string): Promise<ExampleServer> {
  const folder = mkdtempSync(join(tmpdir(), 'fingerwright-server-'))
  mkdirSync(join(folder, 'page/assets'), { recursive: true })
  writeFileSync(join(folder, 'page/index.html'), '<!doctype html><title>page</title>')
  writeFileSync(join(folder, 'page/assets/page.js'), 'export {}')
  writeFileSync(join(folder, 'heron.json'), design)
  writeFileSync(join(folder, 'secret.json'), '"secret"')
  const given = { shelf: shelve([join(folder, 'heron.json')]), page: loadPage(join(folder, 'page')) }
  const running = await startServer(given, { port: 0, orNext: false })
  const end = async () => {
    await running.close()
    rmSync(folder, { recursive: true, force: true })
  }
  return { address: running.address, folder, end }
}
