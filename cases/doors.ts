import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { evaluate, readDesign } from '../engine/index.ts'
import { send } from '../server/test-support/raw-request.ts'

const root = join(import.meta.dirname, '..')
const command = join(root, 'build/command/fingerwright.mjs')

if (!existsSync(command)) throw new Error('the command is not built; npm run build does it')

/** What a door says of a design, brought to one form. */
export interface DoorAnswer {
  readonly figures: Readonly<Record<string, { readonly value: unknown; readonly unit: string }>>
  readonly verdicts: Readonly<Record<string, string>>
  readonly problems: readonly string[]
}

/** Straight through the engine; angles are turned into degrees here, by a road of their own. */
export function throughEngine(design: string): DoorAnswer {
  const read = readDesign(readFileSync(join(root, design), 'utf8'), basename(design, '.json'))
  if (read.problems !== undefined) return { figures: {}, verdicts: {}, problems: read.problems.map((problem) => problem.place) }
  const { figures, findings, problems } = evaluate(read.value)
  const entries = figures.map(({ id, value = null, unit }) => {
    const angle = unit === 'rad'
    return [
      id,
      { value: angle && typeof value === 'number' ? (value * 180) / Math.PI : value, unit: angle ? 'deg' : unit },
    ] as const
  })
  return {
    figures: Object.fromEntries(entries),
    verdicts: Object.fromEntries(findings.map((finding) => [finding.requirement.id, finding.verdict])),
    problems: problems.map((problem) => problem.place),
  }
}

/** Through the built command, with its exit status. */
export function throughCommand(design: string): DoorAnswer & { readonly status: number | null } {
  const ended = spawnSync(process.execPath, [command, 'verdict', design, '--json'], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 1e8,
  })
  return { ...fromDocument(ended.stdout), status: ended.status }
}

/** A server of the built command, to be ended by `end`. */
export interface ServedDoor {
  readonly answer: (design: string) => Promise<DoorAnswer>
  readonly end: () => Promise<void>
}

/** Starts the built server on a free port. */
export async function openServer(): Promise<ServedDoor> {
  const store = mkdtempSync(join(tmpdir(), 'fingerwright-cases-'))
  const served = await startBuiltServer(store)
  return {
    answer: async (design) => {
      const path = `/api/evaluate?name=${basename(design, '.json')}`
      const headers = { 'content-type': 'application/json' }
      // A connection for each request: a kept one may have been closed while this process was busy with another door.
      const body = readFileSync(join(root, design))
      return fromDocument((await send(served.address, { method: 'POST', path, headers, body })).text)
    },
    end: async () => {
      await served.end('SIGTERM')
      rmSync(store, { recursive: true, force: true })
    },
  }
}

/** The built server in a process of its own. */
export interface BuiltServer {
  readonly address: string
  /** Sends the signal and waits until the process is gone. */
  readonly end: (signal: 'SIGTERM' | 'SIGKILL') => Promise<void>
}

/**
 * Starts the built server over a store.
 *
 * @param shell what a shell does before it becomes the server, e.g. setting a limit
 */
export async function startBuiltServer(store: string, shell = ''): Promise<BuiltServer> {
  const words = [command, 'serve', '--port', '0', '--store', store]
  const inShell = ['-c', `${shell}\nexec "$@"`, 'sh', process.execPath, ...words]
  const child = spawn('sh', inShell, { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] })
  const address = await addressOf(child)
  return {
    address,
    end: async (signal) => {
      const ended = once(child, 'exit')
      child.kill(signal)
      await ended
    },
  }
}

/** The address that a server prints. Its output is read on to the end: a closed pipe would end the server at its next line. */
function addressOf({ stdout }: ChildProcess): Promise<string> {
  let printed = ''
  return new Promise((found, failed) => {
    stdout?.on('data', (chunk) => {
      printed += chunk
      const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(printed)?.[0]
      if (address !== undefined) found(address)
    })
    stdout?.on('end', () => failed(new Error(`the server ended after printing: ${printed}`)))
  })
}

interface ResultText {
  readonly figures: DoorAnswer['figures']
  readonly findings: readonly { readonly requirement: string; readonly verdict: string }[]
  readonly problems: readonly { readonly place: string }[]
}

function fromDocument(text: string): DoorAnswer {
  const { figures, findings, problems }: ResultText = JSON.parse(text)
  return {
    figures: Object.fromEntries(Object.entries(figures).map(([id, { value, unit }]) => [id, { value, unit }])),
    verdicts: Object.fromEntries(findings.map(({ requirement, verdict }) => [requirement, verdict])),
    problems: problems.map((problem) => problem.place),
  }
}
