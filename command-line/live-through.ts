import { type Design, type Lived, lifeOf } from '../engine/index.ts'
import { follow } from './follow.ts'
import { type HowFar, progressTeller } from './spread-progress.ts'
import type { Terminal } from './terminal.ts'

/** Works through the life of a finger, tells how far it is and can be stopped there. @returns undefined when it was stopped */
export async function liveThrough(design: Design, terminal: Terminal): Promise<Lived | undefined> {
  const { tell, end } = progressTeller(terminal)
  let isStopped = false
  // Only a reader who sees the progress is waiting; for others Ctrl-C ends the program as it always does.
  if (terminal.tellProgress) void terminal.stopped().then(() => (isStopped = true))
  const lived = await follow(piecesOf(design), { tell, isStopped: () => isStopped })
  end()
  return lived
}

function* piecesOf(design: Design): Generator<HowFar, Lived> {
  const run = lifeOf(design)
  for (let step = run.next(); ; step = run.next()) {
    if (step.done === true) return step.value
    yield { doing: 'wear', done: Math.floor(step.value.closings), of: step.value.of }
  }
}
