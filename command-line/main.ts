import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { isMainThread } from 'node:worker_threads'
import { askHidden } from './ask-hidden.ts'
import { runCommandLine } from './program.ts'
import { serveShares } from './spread-worker.ts'
import type { Terminal } from './terminal.ts'

/** The nearest folder above this file that holds the package: the same from the sources and from the bundle. */
function homeFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url))
  while (!existsSync(join(folder, 'package.json')) && dirname(folder) !== folder) folder = dirname(folder)
  return folder
}

// A reader that has seen enough (`| head`) closes the pipe: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
  process.exit()
})

const terminal: Terminal = {
  write: (text) => process.stdout.write(text),
  writeError: (text) => process.stderr.write(text),
  input: () => process.stdin,
  ...(process.stdin.isTTY === true
    ? { askHidden: (question) => askHidden(question, { input: process.stdin, output: process.stderr }) }
    : {}),
  // Back to the beginning of the line, and clear to its end.
  ...(process.stderr.isTTY === true ? { tellProgress: (text: string) => process.stderr.write(`\r\x1b[K${text}`) } : {}),
  workerFile: new URL(import.meta.url),
  colour: process.stdout.isTTY === true && !process.env.NO_COLOR && process.env.TERM !== 'dumb',
  home: homeFolder(),
  environment: process.env,
  now: () => new Date(),
  stopped: () =>
    new Promise((resolve) => {
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve())
    }),
}

if (isMainThread) process.exitCode = await runCommandLine(process.argv.slice(2), terminal)
else serveShares()
