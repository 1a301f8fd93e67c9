/**
 * Starts the process that typesets, hands it documents and takes the PDFs back.
 *
 * The typesetter keeps what it has read for as long as its process lives, and a fault in its machine code ends that process: so it works in
 * one of its own, which ends with the last document.
 */
import { fork } from 'node:child_process'
import { join } from 'node:path'
import type { TypesetJob } from '../report/index.ts'
import { TemplateFault, TypesetFault } from './typeset-fault.ts'

/** How a typesetter tells how far it is, and how it is stopped. */
export interface TypesetOptions {
  readonly onDone?: (done_count: number) => void
  /** Ends the work; the promise is then rejected with the signal's reason. */
  readonly signal?: AbortSignal
}

/** A PDF for each document, in their order. The same documents give the same bytes. */
export type Typeset = readonly Uint8Array<ArrayBuffer>[]

/** @throws TypesetFault when the package that typesets is not there or does not load, TemplateFault when a template does not take its data */
export type Typesetter = (jobs: readonly TypesetJob[], options?: TypesetOptions) => Promise<Typeset>

/** What the process answers, one at a time. */
type Answer =
  | { readonly pdf: Uint8Array<ArrayBuffer> }
  | { readonly missing: string }
  | { readonly faults: readonly string[]; readonly template: string }

/** @param home folder of the package, which holds the templates and the process's own file */
export function typesetterAt(home: string): Typesetter {
  return (jobs, options = {}) => (jobs.length === 0 ? Promise.resolve([]) : typesetAll(home, jobs, options))
}

function typesetAll(home: string, jobs: readonly TypesetJob[], { onDone, signal }: TypesetOptions): Promise<Typeset> {
  const process_ = fork(join(home, 'typesetting/typeset-process.mjs'), [], {
    serialization: 'advanced',
    execArgv: [],
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    ...(signal && { signal }),
  })
  const done: Uint8Array<ArrayBuffer>[] = []
  return new Promise<Typeset>((resolve, reject) => {
    process_.on('error', (error) => reject(signal?.aborted === true ? signal.reason : error))
    process_.on('exit', (code) => {
      if (done.length === jobs.length) resolve(done)
      else reject(new Error(`the typesetter ended with ${code} after ${done.length} of ${jobs.length} documents`))
    })
    process_.on('message', (answer: Answer) => {
      if (!('pdf' in answer)) return reject(faultOf(answer))
      done.push(answer.pdf)
      onDone?.(done.length)
    })
    process_.send({ home, jobs })
  }).finally(() => process_.kill())
}

/** A package that is not there is the machine's fault; a template that does not compile is ours, or that of who sent its data. */
function faultOf(answer: Exclude<Answer, { readonly pdf: unknown }>): Error {
  if ('missing' in answer) {
    return new TypesetFault(
      `no PDF can be made here: ${answer.missing}. Needed is the typesetting package built for this machine; npm ci, run in the program’s folder with its optional packages, installs it`,
    )
  }
  return new TemplateFault(`${answer.template}.typ: ${answer.faults.join('; ')}`)
}
