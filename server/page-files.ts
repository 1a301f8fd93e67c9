import { readdirSync, readFileSync, statSync } from 'node:fs'
import { extname, join } from 'node:path'

/** One file of the page, ready to be sent. */
export interface PageFile {
  readonly bytes: Uint8Array<ArrayBuffer>
  readonly type: string
}

/** The built page by address (`/`, `/assets/page.js`). Held in memory, so that no address can reach any other file. */
export type PageFiles = ReadonlyMap<string, PageFile>

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.txt': 'text/plain; charset=utf-8',
}

/**
 * Takes the built page into memory.
 *
 * @param folder where the build wrote it
 * @throws Error when the folder or its index.html is missing: the page has not been built
 */
export function loadPage(folder: string): PageFiles {
  const files = new Map<string, PageFile>()
  for (const path of pathsUnder(folder, '')) {
    const type = TYPES[extname(path)]
    if (type !== undefined) files.set(path, { bytes: new Uint8Array(readFileSync(join(folder, path))), type })
  }
  const start = files.get('/index.html')
  if (start === undefined) throw new Error(`no index.html in ${folder}`)
  files.set('/', start)
  return files
}

function pathsUnder(folder: string, path: string): string[] {
  return readdirSync(join(folder, path)).flatMap((name) => {
    const inner = `${path}/${name}`
    return statSync(join(folder, inner)).isDirectory() ? pathsUnder(folder, inner) : [inner]
  })
}
