/** The answer to Check in one plain sentence: whether the parts came right, and whether these parts hold and let go. */
import { type Conformity, type MeasuredFinger, sentence } from '../../engine/index.ts'
import { verdictSentence } from '../sentences/verdict-sentence.ts'
import { asSentence, inside } from '../sentences/words.ts'

/** What Check asks. */
export const checkAsks = 'Did the parts come right, and will these parts hold and let go?'

/** A measured set with its serial number. */
export interface CheckedSet extends MeasuredFinger {
  readonly serial: string
}

/** `Set A-003: 11 readings are within their limits, 1 is outside. Built of what was measured: closed, pin topFar stands 7.9° short …` */
export function checkSentence(set: CheckedSet): string {
  const { serial, conformities, unmeasured_count, evaluation } = set
  const counts = (['within', 'outside', 'undecided'] as const).flatMap((kind) => countedWords(kind, conformities))
  const left = unmeasured_count === 0 ? '' : `; ${unmeasured_count} of the plan were not measured and count as drawn`
  const built = evaluation === undefined ? `no finger can be built of it: ${whyNot(set)}` : inside(verdictSentence(evaluation))
  return `Set ${serial}: ${counts.join(', ')}${left}. ${asSentence(`built of what was measured: ${built}`)}`
}

/** The first problem; the others are mostly of its kind. */
function whyNot({ problems }: CheckedSet): string {
  const [first, ...more] = problems.map((problem) => sentence('', problem))
  return more.length === 0 ? first : `${first} And ${more.length} more`
}

const WORDS: Readonly<Record<Conformity, string>> = {
  within: 'within the limits',
  outside: 'outside of them',
  undecided: 'too near to a limit for the gauge',
}

function countedWords(kind: Conformity, all: readonly Conformity[]): readonly string[] {
  const count = all.filter((one) => one === kind).length
  if (count === 0) return []
  return [`${count} ${count === 1 ? 'reading is' : 'readings are'} ${WORDS[kind]}`]
}
