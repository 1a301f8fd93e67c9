// A process that typesets the documents of one message and ends. It is plain JavaScript that runs as it stands, from the sources and beside the bundle.
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'

/** @typedef {{ home: string, jobs: readonly { template: string, data: unknown }[] }} Work */

const FACES = [
  ...['Regular', 'It', 'Semibold', 'Bold'].map((cut) => `source-serif/TTF/SourceSerif4-${cut}.ttf`),
  ...['Regular', 'It', 'Semibold', 'Bold'].map((cut) => `source-sans/TTF/SourceSans3-${cut}.ttf`),
]

process.once('message', async (/** @type {Work} */ work) => {
  const loaded = await load()
  if ('missing' in loaded) await tell(loaded)
  else await typeset(loaded, work)
  process.disconnect()
})

/** The package has a part in machine code, which may not be there for this machine. */
async function load() {
  try {
    const { NodeCompiler } = await import('@myriaddreamin/typst-ts-node-compiler')
    const { resolve } = createRequire(import.meta.url)
    return { NodeCompiler, fontBlobs: FACES.map((face) => readFileSync(resolve(face))) }
  } catch (error) {
    return { missing: error instanceof Error ? error.message.split('\n')[0] : String(error) }
  }
}

/**
 * @param {Exclude<Awaited<ReturnType<typeof load>>, { missing: string }>} loaded
 * @param {Work} work
 */
async function typeset({ NodeCompiler, fontBlobs }, { home, jobs }) {
  const folder = join(home, 'report/typeset')
  const compiler = NodeCompiler.create({ workspace: folder, fontArgs: [{ fontBlobs }] })
  for (const { template, data } of jobs) {
    const inputs = { data: JSON.stringify(data) }
    const compiled = compiler.compile({ mainFilePath: join(folder, `${template}.typ`), inputs })
    // A face that is not found is a warning only, and would be replaced silently.
    const found = compiled.takeError() ?? compiled.takeWarnings()
    if (found !== null) return tell({ template, faults: compiler.fetchDiagnostics(found).map(placed) })
    await tell({ pdf: Uint8Array.from(compiler.pdf(/** @type {NonNullable<typeof compiled.result>} */ (compiled.result))) })
  }
}

/** @param {{ message: string, range?: { start: { line: number } } | null }} diagnostic */
function placed({ message, range }) {
  return range === undefined || range === null ? message : `line ${range.start.line + 1}: ${message}`
}

/**
 * @param {object} answer
 * @returns {Promise<void>} when the answer is on its way
 */
function tell(answer) {
  return new Promise((sent) => process.send?.(answer, undefined, undefined, () => sent()))
}
