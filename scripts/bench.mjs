// Bundles the rates and runs them: what is timed is what ships, not what a development loader makes of the sources.
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const root = join(import.meta.dirname, '..')
const folder = join(root, 'build')
await build({
  absWorkingDir: root,
  entryPoints: {
    bench: 'bench/run.ts',
    'bench-worker': 'bench/verdict-worker.ts',
    'bench-share-worker': 'bench/share-worker.ts',
  },
  outdir: folder,
  outExtension: { '.js': '.mjs' },
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  logLevel: 'warning',
})
await import(pathToFileURL(join(folder, 'bench.mjs')).href)
