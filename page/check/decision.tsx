import { useState } from 'react'
import type { Consequence } from '../../engine/index.ts'
import { type DecisionEntry, decisionWords, foundText, outcomeRows, planRows, readDecisionEntry } from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { momentWords } from '../revisions/moment-words.ts'
import { useUnits } from '../state/units.ts'
import type { KeptDecision } from './bench/bench.ts'
import { correcting } from './bench/correcting.ts'
import { EntryForm, type Form } from './bench/entry-form.tsx'
import { keepEntry } from './bench/who.ts'
import type { FromBench } from './readings.ts'

interface Deciding {
  readonly consequence: Consequence
  readonly serial: string
  /** Absent where nothing is kept. */
  readonly bench: FromBench | undefined
  /** What was decided of it, and stands. */
  readonly decided: KeptDecision | undefined
}

/** A reading that is out of its limits: what each decision comes to, and at the bench which one is taken and why. */
export function Decision({ consequence, serial, bench, decided }: Deciding) {
  const units = useUnits()
  // What was just decided is told until the set is judged anew: then it stands there.
  const [just, setJust] = useState<{ readonly words: string; readonly after: number | undefined }>()
  const said = just !== undefined && just.after === decided?.id ? just.words : ''
  const { characteristic } = consequence.reading
  const [{ words }] = planRows([characteristic])
  const outcomes = outcomeRows(consequence, units)
  const form: Form<'decision' | 'why', DecisionEntry> = {
    label: `Decision on ${words} of ${serial}`,
    fields: [
      { key: 'decision', words: 'Decision', choices: ['', ...outcomes.map(({ disposition }) => disposition)] },
      { key: 'why', words: 'Why', isLong: true },
    ],
    does: 'Decide it so',
    read: (typed) => readDecisionEntry(typed, { serial, characteristic: characteristic.id, outcomes }),
    keep: async (entry) => {
      if (bench !== undefined) await keepEntry(bench.design, entry)
      setJust({
        words: `Decided: ${entry.decision}. It stands with what was calculated on the page of ${serial}.`,
        after: decided?.id,
      })
      return ''
    },
  }
  return (
    <>
      <h3>
        To decide: {words}, found {foundText(consequence.reading, units)}
      </h3>
      <dl>
        {outcomes.map(({ disposition, answer, words: told }) => (
          <div key={disposition}>
            <dt>
              {disposition}: <MarkWithWord answer={answer} />
            </dt>
            <dd>{told}</dd>
          </div>
        ))}
      </dl>
      {decided === undefined || said !== '' ? null : (
        <p>
          {decisionWords(decided)} ({decided.who}, {momentWords(decided.made)}). It is corrected by deciding anew.
        </p>
      )}
      <p role="status">{said}</p>
      {bench === undefined || said !== '' ? null : <EntryForm {...correcting(form, decided?.id)} />}
    </>
  )
}
