import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { sourceStamp } from './stamp.mjs'

/**
 * Builds the command into build/command and the page into build/page, unless the sources are those of the last build.
 *
 * @param {string} root
 * @returns {Promise<boolean>} whether something had to be built
 */
export async function build(root) {
  const stampFile = join(root, 'build/stamp.txt')
  const stamp = sourceStamp(root)
  if (existsSync(stampFile) && readFileSync(stampFile, 'utf8') === stamp) return false
  rmSync(stampFile, { force: true })
  mkdirSync(join(root, 'build'), { recursive: true })
  await Promise.all([buildCommand(root), buildPage(root)])
  writeFileSync(stampFile, stamp)
  return true
}

/**
 * Builds, or ends this process with status 1 after saying what is wrong with the sources.
 *
 * @param {string} root
 * @returns {Promise<boolean>} whether something had to be built
 */
export async function buildOrEnd(root) {
  try {
    return await build(root)
  } catch (error) {
    console.error(`The build failed.\n${error instanceof Error ? error.message : error}`)
    process.exit(1)
  }
}

/** @param {string} root */
async function buildCommand(root) {
  const esbuild = await import('esbuild')
  // Names of pieces carry a hash of their content, so that old ones would stay.
  rmSync(join(root, 'build/command'), { recursive: true, force: true })
  await esbuild.build({
    absWorkingDir: root,
    entryPoints: [{ in: 'command-line/main.ts', out: 'fingerwright' }],
    outdir: 'build/command',
    outExtension: { '.js': '.mjs' },
    bundle: true,
    // The store comes in a file of its own, which a verdict on a file does not load.
    splitting: true,
    platform: 'node',
    // Holds a part in machine code, which is loaded when a store is opened.
    external: ['better-sqlite3'],
    format: 'esm',
    target: 'node20',
    minifySyntax: true,
    legalComments: 'none',
    logLevel: 'silent',
    banner: {
      // commander is CommonJS and asks for node: modules by require, which an ES module has not. A package in the bundle may import createRequire too.
      js: "#!/usr/bin/env node\nimport { createRequire as requireOfBundle } from 'node:module'\nconst require = requireOfBundle(import.meta.url)",
    },
  })
}

/** @param {string} root */
async function buildPage(root) {
  // Under a test runner, or with a name of its own in the shell, React would be built as for its developers: a quarter slower.
  process.env.NODE_ENV = 'production'
  const vite = await import('vite')
  // The page comes from the same machine, so the size of its files costs no waiting.
  const quiet = { chunkSizeWarningLimit: 4000, rolldownOptions: { checks: { pluginTimings: false } } }
  await vite.build({ root: join(root, 'page'), logLevel: 'warn', build: quiet })
}
