// Bundles the rates and runs them: what is timed is what ships, not what a development loader makes of the sources.
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const root = join(import.meta.dirname, '..')
const outfile = join(root, 'build/bench.mjs')
await build({
  absWorkingDir: root,
  entryPoints: ['bench/run.ts'],
  outfile,
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  logLevel: 'warning',
})
await import(pathToFileURL(outfile).href)
