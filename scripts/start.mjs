// Installs and builds what is missing, prints the verdict of a design and serves the page. Uses Node's own modules only,
// because nothing is installed yet when it runs for the first time.
import { spawn, spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { buildOrEnd } from './build.mjs'
import { installPackages } from './packages.mjs'

const root = join(import.meta.dirname, '..')
const command = join(root, 'build/command/fingerwright.mjs')
const design = process.argv[2] ?? 'designs/heron.json'

if (!installPackages(root)) process.exit(1)
if (await buildOrEnd(root)) console.log('Built the command and the page.')

console.log()
const verdict = spawnSync(process.execPath, [command, 'verdict', design], { cwd: root, stdio: 'inherit' })
if (verdict.status === 64) process.exit(64)
console.log()

const server = spawn(process.execPath, [command, 'serve', design], {
  cwd: root,
  stdio: 'inherit',
})
for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM'])) process.on(signal, () => server.kill(signal))
endWithNpm(() => server.kill('SIGTERM'))
server.on('exit', (code) => process.exit(code ?? 0))

/**
 * npm does not hand a signal on to what its shell has started: when that shell goes, so does the server.
 *
 * @param {() => void} end
 */
function endWithNpm(end) {
  if (process.env.npm_lifecycle_event !== 'start') return
  const shell = process.ppid
  const watch = setInterval(() => {
    if (process.ppid === shell) return
    clearInterval(watch)
    end()
  }, 500)
}
