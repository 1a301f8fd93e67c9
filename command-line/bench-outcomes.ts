import { marks } from '../report/index.ts'
import { decidingOf, type ToDecide } from '../server/index.ts'
import { wrapped } from './columns.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { refuseUnknown } from './find-design.ts'
import { refusalText } from './refusal-text.ts'
import { lookInStore, type StoreAsked } from './use-store.ts'

/** Prints what each decision about a reading comes to. @throws WrongUse when the store cannot be used */
export async function printOutcomes(asked: ToDecide, place: StoreAsked): Promise<ExitStatus> {
  const { terminal } = place
  const found = await lookInStore(place, (store) => {
    refuseUnknown(store, asked.design)
    return decidingOf(store, asked)
  })
  if (found.value === undefined) {
    terminal.writeError(refusalText(asked.serial, found.problems))
    return exitStatus.refused
  }
  const lines = found.value.outcomes.map(({ disposition, answer, words }) =>
    wrapped(`${disposition}: ${marks[answer].character} ${marks[answer].word}. ${words}`),
  )
  terminal.write(`${lines.join('\n\n')}\n`)
  return exitStatus.met
}
