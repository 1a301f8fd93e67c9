import type { Consequence } from '../../engine/index.ts'
import { foundText, outcomeRows, planRows, readDecisionEntry } from '../../report/index.ts'
import { MarkWithWord } from '../parts/mark.tsx'
import { useUnits } from '../state/units.ts'
import { EntryForm, type FormField } from './bench/entry-form.tsx'
import { keepEntry } from './bench/who.ts'
import type { FromBench } from './readings.ts'

interface Deciding {
  readonly consequence: Consequence
  readonly serial: string
  /** Absent where nothing is kept. */
  readonly bench: FromBench | undefined
}

/** A reading that is out of its limits: what each decision comes to, and at the bench which one is taken and why. */
export function Decision({ consequence, serial, bench }: Deciding) {
  const units = useUnits()
  const { characteristic } = consequence.reading
  const [{ words }] = planRows([characteristic])
  const outcomes = outcomeRows(consequence, units)
  const fields: readonly FormField<'decision' | 'why'>[] = [
    { key: 'decision', words: 'Decision', choices: ['', ...outcomes.map(({ disposition }) => disposition)] },
    { key: 'why', words: 'Why', isLong: true },
  ]
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
      {bench === undefined ? null : (
        <EntryForm
          label={`Decision on ${words} of ${serial}`}
          fields={fields}
          does="Decide it so"
          read={(typed) => readDecisionEntry(typed, { serial, characteristic: characteristic.id, outcomes })}
          keep={async (entry) => {
            await keepEntry(bench.design, entry)
            return `Decided: ${entry.decision}. It stands with what was calculated on the page of ${serial}.`
          }}
        />
      )}
    </>
  )
}
